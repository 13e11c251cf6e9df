import { addMoney, type Money, roundToUnits, subtractMoney, zeroMoney } from '../money/index.ts';
import type { TaxedAmount } from './result-types.ts';
import type { Shown } from './shown.ts';
import type { PriceRules } from './types.ts';

/**
 * What rounding the whole adds or takes off: the taxable price before tax, or the drive-away price after it, whose
 * charges cannot change.
 *
 * @param whole - as shown, after discount
 * @param beside - what the drive-away price holds beside it: charges less tax that is not due
 * @source common practice, no source
 */
export function roundTotal(
  whole: Money,
  beside: Money,
  { rounding, taxRounding, currency }: PriceRules,
  { withTax, taxOf }: Shown,
): TaxedAmount {
  const none = zeroMoney(currency);
  if (rounding?.on !== 'total') return { before: none, tax: none, withTax: none };
  const rounded = withTax ? addMoney(whole, beside) : whole;
  const off = subtractMoney(roundToUnits(rounded, rounding.to, rounding.way), rounded);
  const tax =
    taxRounding === 'line' ? taxOf(off) : subtractMoney(taxOf(addMoney(whole, off)), taxOf(whole));
  return withTax
    ? { before: subtractMoney(off, tax), tax, withTax: off }
    : { before: off, tax, withTax: addMoney(off, tax) };
}
