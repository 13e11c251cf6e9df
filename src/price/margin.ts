import {
  divideToMinorUnit,
  minorUnits,
  type Money,
  roundToMinorUnit,
  timesDecimal,
} from '../money/index.ts';
import {
  addDecimals,
  type Decimal,
  divideHalfAway,
  ONE,
  subtractDecimals,
} from '../units/index.ts';

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
 * The price with a markup on the cost: cost x (1 + markup).
 *
 * @param markup - a fraction of the cost
 * @returns whole minor units, half away from zero
 * @source derived: markup = (price - cost) / cost
 */
export function markedUpPrice(cost: Money, markup: Decimal): Money {
  return roundToMinorUnit(timesDecimal(cost, addDecimals(ONE, markup)));
}

/**
 * The markup on cost that a margin on the selling price is: margin / (1 - margin).
 *
 * @param margin - 0 to below 1
 * @returns six places, half away from zero
 * @source derived: both are the same money over another base
 */
export function markupOfMargin(margin: Decimal): Decimal {
  return quotient(margin, subtractDecimals(ONE, margin));
}

/**
 * The margin on the selling price that a markup on cost is: markup / (1 + markup).
 *
 * @param markup - above -1
 * @returns six places, half away from zero
 * @source derived: both are the same money over another base
 */
export function marginOfMarkup(markup: Decimal): Decimal {
  return quotient(markup, addDecimals(ONE, markup));
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

function quotient(top: Decimal, bottom: Decimal): Decimal {
  const dividend = top.amount * 10n ** (bottom.scale + PLACES);
  return { amount: divideHalfAway(dividend, bottom.amount * 10n ** top.scale), scale: PLACES };
}
