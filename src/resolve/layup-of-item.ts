import type { ListedPart, PartLaminate } from '../schema/index.ts';
import { kilograms } from '../units/index.ts';
import type { BuildPart, ItemLayUp } from './build.ts';
import { massOfParts } from './parts.ts';

/**
 * The lay-up of an item with what is in the item's mass beside it: parts of its list that are no material of the lay-up.
 *
 * Consumables count when the item's mass is the sum of its parts, and not in a mass that somebody weighed: gloves and
 * discs do not stay in the boat.
 *
 * @param weighed - true when the catalogue gives the item's mass
 */
export function layUpOfItem(
  laminate: PartLaminate | undefined,
  used: readonly BuildPart[],
  parts: ReadonlyMap<string, ListedPart>,
  weighed: boolean,
): { readonly layUp?: ItemLayUp } {
  if (!laminate) return {};
  const laid = new Set([laminate.resin, ...laminate.panels.flatMap(({ layers }) => layers)]);
  const others = used.filter(
    ({ code, materialClass }) => !laid.has(code) && !(weighed && materialClass === 'consumable'),
  );
  return { layUp: { laminate, rest: kilograms(massOfParts(others, parts)) } };
}
