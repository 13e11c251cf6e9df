import {
  isNegative,
  type Money,
  moneyOf,
  roundToMinorUnit,
  subtractMoney,
  sumMoney,
  timesDecimal,
  zeroMoney,
} from '../money/index.ts';
import type { ListedLine } from './list-lines.ts';
import type { Shown } from './shown.ts';
import type { Discount, PriceInput } from './types.ts';

/**
 * The lines that a discount is on: those of its class, or all.
 *
 * @source common practice, no source
 */
export const isDiscounted = (discount: Discount | undefined, { item }: ListedLine): boolean =>
  discount !== undefined &&
  (discount.marginClass === undefined || discount.marginClass === item.marginClass);

/**
 * What a discount takes off, as shown: never more than the price of what it is on.
 *
 * @source common practice, no source
 */
export function discountOf(
  lines: readonly ListedLine[],
  { discount, rules: { currency } }: PriceInput,
  terms: Shown,
): Money {
  if (!discount) return zeroMoney(currency);
  const price = sumMoney(
    lines.filter((line) => isDiscounted(discount, line)).map(({ shown }) => shown),
    currency,
  );
  if ('share' in discount) return roundToMinorUnit(timesDecimal(price, discount.share));
  const amount = terms.of(moneyOf(discount.amount, currency));
  return isNegative(subtractMoney(price, amount)) ? price : amount;
}
