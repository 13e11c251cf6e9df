import type { PartLaminate } from '../schema/index.ts';
import { kilograms } from '../units/index.ts';
import type { BuildItem, ItemLayUp } from './build.ts';
import { massOfParts } from './parts.ts';

/**
 * The lay-up of an item with what is in the item's mass beside it: parts of its list that are no material of the lay-up.
 *
 * Consumables count when the item's mass is the sum of its parts, and not in a mass that somebody weighed: gloves and
 * discs do not stay in the boat.
 */
export function layUpOfItem(
  laminate: PartLaminate | undefined,
  { parts, massGiven }: Pick<BuildItem, 'parts' | 'massGiven'>,
): { readonly layUp?: ItemLayUp } {
  if (!laminate) return {};
  const laid = new Set([laminate.resin, ...laminate.panels.flatMap(({ layers }) => layers)]);
  const others = parts.filter(
    ({ code, materialClass }) => !laid.has(code) && !(massGiven && materialClass === 'consumable'),
  );
  return { layUp: { laminate, rest: kilograms(massOfParts(others)) } };
}
