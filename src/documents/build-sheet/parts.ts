import { type Build, type BuildPart, isWhole, stageOfPart, toFetch } from '../../resolve/index.ts';
import type { Stage } from '../../schema/index.ts';
import {
  addDecimals,
  compareDecimals,
  type Decimal,
  decimalToNumber,
  type Formatter,
  ONE,
  partUnitText,
  timesRoundedUp,
  ZERO,
} from '../../units/index.ts';
import type { PickedPart } from './types.ts';

/** Materials whose batch is written down: what the laminate is made of. */
const TRACED: ReadonlySet<string> = new Set(['gelcoat', 'fabric', 'core', 'resin']);

/**
 * The materials to fetch for a stage, one row a code, in the order of their codes.
 *
 * Quantities have the yard's allowance in them and are rounded up: whole pieces, else tenths, and hundredths of
 * what is less than one.
 */
export function partsOfStage(
  { items, yard }: Build,
  stage: Stage,
  format: Formatter,
): readonly PickedPart[] {
  const needed = new Map<string, { readonly part: BuildPart; readonly quantity: Decimal }>();
  for (const item of items) {
    for (const part of item.parts) {
      if (stageOfPart(item, part) !== stage) continue;
      const before = needed.get(part.code)?.quantity ?? ZERO;
      const quantity = addDecimals(before, toFetch(part, yard));
      needed.set(part.code, { part, quantity });
    }
  }
  return [...needed.values()]
    .filter(({ quantity }) => quantity.amount > 0n)
    .toSorted((a, b) => (a.part.code < b.part.code ? -1 : 1))
    .map(({ part, quantity }) => pickedPart(part, quantity, format));
}

function pickedPart(part: BuildPart, quantity: Decimal, format: Formatter): PickedPart {
  const places = placesOf(quantity, part);
  const fetched = roundUp(quantity, places);
  return {
    code: part.code,
    description: part.description,
    quantity: format.number(decimalToNumber(fetched), places),
    unit: partUnitText(part.unit, compareDecimals(fetched, ONE) === 0),
    traced: TRACED.has(part.materialClass),
  };
}

function placesOf(quantity: Decimal, part: BuildPart): number {
  if (isWhole(part)) return 0;
  return compareDecimals(quantity, ONE) < 0 ? 2 : 1;
}

/** The next number of so many places that is not less; `value` is not below zero. */
function roundUp(value: Decimal, places: number): Decimal {
  const scale = BigInt(places);
  return { amount: timesRoundedUp(value, { amount: 1n, scale }), scale };
}
