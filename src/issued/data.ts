import {
  type Currency,
  currencyCode,
  currencyOf,
  exactText,
  isMoney,
  type Money,
  parseMoney,
} from '../money/index.ts';
import { type Decimal, decimalToText, parseDecimal } from '../units/index.ts';

export type Data =
  null | boolean | number | string | readonly Data[] | { readonly [key: string]: Data };

const MONEY = '$money';
const DECIMAL = '$decimal';
const CURRENCY = '$currency';

/**
 * A computed value as plain data: money and decimals as exact text, so that reading it again gives the same
 * value to the last digit. What is not there (undefined) and functions are left out; a number that is not finite
 * is kept as its word.
 */
export function toData(value: unknown): Data {
  if (isMoney(value)) return { [MONEY]: exactText(value), currency: currencyCode(value) };
  if (isCurrency(value)) return { [CURRENCY]: value.code };
  if (isDecimal(value)) return { [DECIMAL]: decimalToText(value) };
  if (Array.isArray(value)) return value.map(toData);
  if (isRecord(value)) {
    const kept = Object.entries(value).filter(
      ([, part]) => part !== undefined && typeof part !== 'function',
    );
    return Object.fromEntries(kept.map(([key, part]) => [key, toData(part)]));
  }
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : `${value}`;
  return typeof value === 'bigint' ? `${value}` : null;
}

/** The value that `toData` made data of; amounts that cannot be read stay as they are written. */
export function fromData(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(fromData);
  if (!isRecord(data)) return data;
  const { [MONEY]: money, [DECIMAL]: decimal, [CURRENCY]: code, currency } = data;
  if (typeof code === 'string') return currencyOf(code) ?? data;
  if (typeof money === 'string' && typeof currency === 'string')
    return readMoney(money, currency) ?? data;
  if (typeof decimal === 'string') return parseDecimal(decimal) ?? data;
  return Object.fromEntries(Object.entries(data).map(([key, part]) => [key, fromData(part)]));
}

/** True for an object that is no list. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** True for an exact decimal. */
export function isDecimal(value: unknown): value is Decimal {
  return (
    isRecord(value) && typeof value['amount'] === 'bigint' && typeof value['scale'] === 'bigint'
  );
}

function isCurrency(value: unknown): value is Currency {
  return isRecord(value) && 'code' in value && 'exponent' in value;
}

function readMoney(text: string, code: string): Money | undefined {
  const currency = currencyOf(code);
  return currency && parseMoney(text, currency);
}
