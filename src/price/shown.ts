import {
  type Currency,
  fractionOfMoney,
  isNegative,
  type Money,
  roundToMinorUnit,
  timesDecimal,
  zeroMoney,
} from '../money/index.ts';
import { addDecimals, ONE } from '../units/index.ts';
import type { PriceRules } from './types.ts';

/**
 * The terms that prices are agreed in. Where they are rounded with the tax in them, the tax is the part of the price
 * that it makes up: rate / (1 + rate). Else it is added: rate.
 */
export interface Shown {
  readonly withTax: boolean;
  /** An amount before tax, as it is shown. */
  readonly of: (before: Money) => Money;
  /** The tax on or in an amount that is shown, rounded once by the rule of the tax. */
  readonly taxOf: (shown: Money) => Money;
}

/**
 * The terms of a workspace.
 *
 * @source A New Tax System (Goods and Services Tax) Act 1999 (Australia) s 9-70: the tax is 10 % of the value, and the
 * value 10/11 of the price
 */
export function shownTerms({ rounding, taxRate, taxRule = 'half-up' }: PriceRules): Shown {
  const withTax = rounding?.tax === 'after';
  const withRate = addDecimals(ONE, taxRate);
  return {
    withTax,
    of: (before) => roundToMinorUnit(withTax ? timesDecimal(before, withRate) : before),
    taxOf: (shown) => fractionOfMoney(shown, taxRate, withTax ? withRate : ONE, taxRule),
  };
}

/**
 * The amount, or zero when it is below.
 *
 * @source derived: the larger of the two
 */
export function atLeastNothing(amount: Money, currency: Currency): Money {
  return isNegative(amount) ? zeroMoney(currency) : amount;
}
