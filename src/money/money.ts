import * as currencies from 'dinero.js/bigint/currencies';
import {
  add,
  type Dinero,
  dinero,
  halfAwayFromZero,
  isNegative,
  isZero,
  multiply,
  subtract,
  toDecimal,
  toSnapshot,
  transformScale,
} from 'dinero.js/bigint';
import { type Decimal, divideHalfAway, parseDecimal, withMinus } from '../units/index.ts';

/** An amount in whole minor units of one currency, or finer while a line is being worked out. */
export type Money = Dinero<bigint>;
export type Currency = ReturnType<typeof currencyOf> & object;

/** The ISO 4217 currency of a code; undefined when there is none, or when its parts are not tenths. */
export function currencyOf(code: string): (typeof currencies)[keyof typeof currencies] | undefined {
  const table: Readonly<Record<string, (typeof currencies)[keyof typeof currencies]>> = currencies;
  const currency = Object.hasOwn(table, code) ? table[code] : undefined;
  return currency && currency.base === 10n ? currency : undefined;
}

/** ISO 4217 code of the currency that an amount is in. */
export function currencyCode(money: Money): string {
  return toSnapshot(money).currency.code;
}

/** No money at all, in a currency. */
export function zeroMoney(currency: Currency): Money {
  return dinero({ amount: 0n, currency });
}

/** An exact decimal as money, keeping its scale: "12.345" stays 12.345 until a named rounding. */
export function moneyOf(decimal: Decimal, currency: Currency): Money {
  const scale = decimal.scale > currency.exponent ? decimal.scale : currency.exponent;
  return dinero({ amount: decimal.amount * 10n ** (scale - decimal.scale), currency, scale });
}

/** Reads "1250.50" in a currency; undefined when the text is not a plain decimal. */
export function parseMoney(text: string, currency: Currency): Money | undefined {
  const decimal = parseDecimal(text);
  return decimal && moneyOf(decimal, currency);
}

/** The sum, exact; an empty list is zero of the currency. */
export function sumMoney(amounts: readonly Money[], currency: Currency): Money {
  return amounts.reduce((total, amount) => add(total, amount), zeroMoney(currency));
}

/** money x decimal, exact: the scale grows, nothing is rounded. */
export function timesDecimal(money: Money, factor: Decimal): Money {
  return multiply(money, { amount: factor.amount, scale: factor.scale });
}

/** Rounds to whole minor units, half away from zero: the one house rounding, used once a line. */
export function roundToMinorUnit(money: Money): Money {
  const { scale, currency } = toSnapshot(money);
  if (scale === currency.exponent) return money;
  return transformScale(money, currency.exponent, halfAwayFromZero);
}

/**
 * money / decimal in whole minor units, half away from zero.
 *
 * @param divisor - not zero
 */
export function divideToMinorUnit(money: Money, divisor: Decimal): Money {
  const { amount, scale, currency } = toSnapshot(money);
  const top = amount * 10n ** (divisor.scale + currency.exponent);
  const bottom = divisor.amount * 10n ** scale;
  return dinero({ amount: divideHalfAway(top, bottom), currency });
}

/** Whole minor units as an integer; rounds first when the amount is finer. */
export function minorUnits(money: Money): bigint {
  return toSnapshot(roundToMinorUnit(money)).amount;
}

/** Plain decimal text for data files: "1250.50". */
export function moneyToText(money: Money): string {
  return toDecimal(roundToMinorUnit(money));
}

/** "$1,250.50", "−$120.00": in the locale's own form, from the exact text: no float is made. */
export function formatMoney(money: Money, locale: string): string {
  const { currency } = toSnapshot(money);
  const text = moneyToText(money) as Intl.StringNumericLiteral;
  return withMinus(formatOf(locale, currency.code, Number(currency.exponent)).format(text));
}

const formats = new Map<string, Intl.NumberFormat>();

function formatOf(locale: string, currency: string, digits: number): Intl.NumberFormat {
  const key = `${locale} ${currency} ${digits}`;
  const format =
    formats.get(key) ??
    new Intl.NumberFormat(locale, {
      style: 'currency',
      currency,
      currencyDisplay: 'narrowSymbol',
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    });
  formats.set(key, format);
  return format;
}

export { add as addMoney, isNegative, isZero, subtract as subtractMoney };

/** True for an amount of money, whatever else an object may be. */
export function isMoney(value: unknown): value is Money {
  return typeof value === 'object' && value !== null && 'calculator' in value && 'toJSON' in value;
}

/** The exact amount as plain decimal text, finer than a minor unit when it is finer: "12.345". */
export function exactText(money: Money): string {
  return toDecimal(money);
}
