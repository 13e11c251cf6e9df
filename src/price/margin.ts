import { divideToMinorUnit, minorUnits, type Money } from '../money/index.ts';
import { type Decimal, divideHalfAway, ONE, subtractDecimals } from '../units/index.ts';

const PLACES = 6n;

/**
 * The price at which a margin is earned on the selling price: cost / (1 - margin).
 *
 * @param margin - a fraction of the selling price, 0 to below 1
 * @returns whole minor units, half away from zero
 * @source derived: margin = (price - cost) / price
 */
export function sellingPrice(cost: Money, margin: Decimal): Money {
  return divideToMinorUnit(cost, subtractDecimals(ONE, margin));
}

/**
 * part / whole to six places, half away from zero; undefined when the whole is zero.
 *
 * @source derived: a quotient
 */
export function shareOfMoney(part: Money, whole: Money): Decimal | undefined {
  const bottom = minorUnits(whole);
  if (bottom === 0n) return undefined;
  return {
    amount: divideHalfAway(minorUnits(part) * 10n ** PLACES, bottom),
    scale: PLACES,
  };
}
