/**
 * Exact decimals for what meets money: rates, hours, quantities, percentages. A decimal is
 * `amount / 10^scale` in bigint, so that no binary fraction ever touches a price.
 */
export interface Decimal {
  readonly amount: bigint;
  readonly scale: bigint;
}

export const ZERO: Decimal = { amount: 0n, scale: 0n };
export const ONE: Decimal = { amount: 1n, scale: 0n };

/** Reads "12.5" or "-3"; undefined when the text is not a plain decimal of at most 18 places. */
export function parseDecimal(text: string): Decimal | undefined {
  const match = /^([+-]?)(\d+)(?:\.(\d{1,18}))?$/.exec(text.trim());
  if (!match) return undefined;
  const [, sign, whole = '0', fraction = ''] = match;
  const amount = BigInt(whole + fraction);
  return { amount: sign === '-' ? -amount : amount, scale: BigInt(fraction.length) };
}

/** Reads "12.5 %" as 0.125; undefined when the percent sign or the number is missing. */
export function parsePercent(text: string): Decimal | undefined {
  const match = /^(.*)%$/.exec(text.trim());
  const number = match ? parseDecimal(match[1] ?? '') : undefined;
  return number && { amount: number.amount, scale: number.scale + 2n };
}

/**
 * A measured quantity (an area, a length) as a decimal, rounded half away from zero.
 *
 * @param value - finite; a measure, never an amount of money
 * @param places - decimals kept, 0 to 12
 */
export function decimalOfMeasure(value: number, places: number): Decimal {
  const scaled = Math.sign(value) * Math.round(Number(`${Math.abs(value).toFixed(12)}e${places}`));
  return { amount: BigInt(scaled), scale: BigInt(places) };
}

/** a + b, exact. */
export function addDecimals(a: Decimal, b: Decimal): Decimal {
  const scale = a.scale > b.scale ? a.scale : b.scale;
  return { amount: raise(a, scale) + raise(b, scale), scale };
}

/** The sum, exact; an empty list is zero. */
export function sumDecimals(values: readonly Decimal[]): Decimal {
  return values.reduce(addDecimals, ZERO);
}

/** a - b, exact. */
export function subtractDecimals(a: Decimal, b: Decimal): Decimal {
  return addDecimals(a, { amount: -b.amount, scale: b.scale });
}

/** a x b, exact. */
export function multiplyDecimals(a: Decimal, b: Decimal): Decimal {
  return { amount: a.amount * b.amount, scale: a.scale + b.scale };
}

/** Below zero, zero or above zero as a is less than, equal to or more than b. */
export function compareDecimals(a: Decimal, b: Decimal): -1 | 0 | 1 {
  const difference = subtractDecimals(a, b).amount;
  if (difference === 0n) return 0;
  return difference < 0n ? -1 : 1;
}

/** Rounds half away from zero to a number of places. */
export function roundDecimal(value: Decimal, places: number): Decimal {
  const scale = BigInt(places);
  if (value.scale <= scale) return { amount: raise(value, scale), scale };
  return { amount: divideHalfAway(value.amount, 10n ** (value.scale - scale)), scale };
}

/**
 * How many of a size it takes to hold a value, the last of them not always full; `value` is not below zero.
 *
 * @param size - above 0
 * @returns the least whole number that is not below value / size
 */
export function timesRoundedUp(value: Decimal, size: Decimal): bigint {
  const top = value.amount * 10n ** size.scale;
  const bottom = size.amount * 10n ** value.scale;
  return (top + bottom - 1n) / bottom;
}

/** Integer division rounded half away from zero; `divisor` is not 0. */
export function divideHalfAway(dividend: bigint, divisor: bigint): bigint {
  const negative = dividend < 0n !== divisor < 0n;
  const top = dividend < 0n ? -dividend : dividend;
  const bottom = divisor < 0n ? -divisor : divisor;
  const quotient = (2n * top + bottom) / (2n * bottom);
  return negative ? -quotient : quotient;
}

/** The decimal as a number for physics (a quantity of kilograms), never for money. */
export function decimalToNumber(value: Decimal): number {
  return Number(decimalToText(value));
}

/** Plain text without exponent: "12.50" keeps its scale. */
export function decimalToText(value: Decimal): string {
  const negative = value.amount < 0n;
  const digits = (negative ? -value.amount : value.amount)
    .toString()
    .padStart(Number(value.scale) + 1, '0');
  const point = digits.length - Number(value.scale);
  const text = value.scale === 0n ? digits : `${digits.slice(0, point)}.${digits.slice(point)}`;
  return negative ? `-${text}` : text;
}

/** Plain text without trailing zeros: 12.50 gives "12.5", 3.000 gives "3". */
export function decimalToShortText(value: Decimal): string {
  const text = decimalToText(value);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** "12.5 %" of a fraction, with every decimal that it has. */
export const percentText = ({ amount, scale }: Decimal): string =>
  `${decimalToShortText({ amount: amount * 100n, scale })}\u00A0%`;

function raise(value: Decimal, scale: bigint): bigint {
  return value.amount * 10n ** (scale - value.scale);
}
