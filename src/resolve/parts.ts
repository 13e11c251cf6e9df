import { currencyOf, type Money, moneyOf } from '../money/index.ts';
import type { Driver, Hull, ListedPart, Stage } from '../schema/index.ts';
import {
  type Decimal,
  decimalToNumber,
  type Kilograms,
  kilograms,
  multiplyDecimals,
} from '../units/index.ts';
import type { BuildHours, BuildPart } from './build.ts';
import { driverFactor } from './hull-coordinates.ts';

interface Use {
  readonly part: string;
  readonly quantity: Decimal;
  readonly per?: Driver | undefined;
  readonly stage?: Stage | undefined;
}

interface Work {
  readonly stage: Stage;
  readonly hours: Decimal;
  readonly per?: Driver | undefined;
}

/**
 * The parts that a count of items takes, from the price lists of a day; a part that no list has is left out (the
 * catalogue's check says so).
 */
export function resolveParts(
  uses: readonly Use[],
  count: number,
  hull: Hull,
  parts: ReadonlyMap<string, ListedPart>,
): readonly BuildPart[] {
  return uses.flatMap(({ part, quantity, per, stage }) => {
    const listed = parts.get(part);
    const unitCost = listed && costOf(listed);
    if (!listed || !unitCost) return [];
    const factor = driverFactor(per ?? 'count', count, hull.dimensions);
    return [
      {
        code: part,
        supplier: listed.supplier,
        description: listed.value.description,
        materialClass: listed.value.class,
        unit: listed.value.unit,
        unitMass: listed.value.mass,
        quantity: multiplyDecimals(quantity, factor),
        unitCost,
        priceDate: listed.value.price_date,
        ...(stage && { stage }),
        ...(listed.value.pack && { pack: listed.value.pack }),
        ...(listed.value.buy && { buy: listed.value.buy }),
      },
    ];
  });
}

/** The hours that a count of items takes, stage by stage. */
export function resolveHours(
  work: readonly Work[],
  count: number,
  hull: Hull,
): readonly BuildHours[] {
  return work.map(({ stage, hours, per }) => ({
    stage,
    hours: multiplyDecimals(hours, driverFactor(per ?? 'count', count, hull.dimensions)),
  }));
}

/**
 * Mass of the parts that are used, kg: it stands in for an item's own mass when none is given. What is fetched for the
 * water trial is used up there.
 */
export const massOfParts = (used: readonly BuildPart[]): Kilograms =>
  kilograms(
    used
      .filter(({ stage }) => stage !== 'water-trial')
      .reduce((sum, { unitMass = 0, quantity }) => sum + decimalToNumber(quantity) * unitMass, 0),
  );

function costOf(part: ListedPart): Money | undefined {
  const currency = currencyOf(part.value.currency);
  return currency && moneyOf(part.value.cost, currency);
}
