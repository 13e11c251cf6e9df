import { z } from 'zod';
import {
  type Currency,
  currencyCode,
  currencyOf,
  exactText,
  isMoney,
  type Money,
  parseMoney,
} from '../../money/index.ts';
import { type Decimal, decimalToText, parseDecimal, parseIsoDate } from '../../units/index.ts';

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

/** A value of ours that stands in a file as text. */
const asText = <T>(read: (text: string) => T | undefined, expected: string) =>
  z.string().transform((text, context) => {
    const value = read(text);
    if (value !== undefined) return value;
    context.addIssue({ code: 'custom', message: expected });
    return z.NEVER;
  });

/** "0.28", exact: trailing zeros are kept. */
export const decimal = asText(parseDecimal, 'a plain decimal');

/** "147339.51 AUD", exact: finer than a cent where the amount is. */
export const money = asText((text): Money | undefined => {
  const [amount = '', code = ''] = text.split(' ');
  const known = currencyOf(code);
  return known && parseMoney(amount, known);
}, 'an amount and its currency, such as 12.50 AUD');

/** "AUD" */
export const currency = asText<Currency>(currencyOf, 'an ISO 4217 code such as AUD');

/** "2026-03-21" */
export const day = asText(parseIsoDate, 'a day written YYYY-MM-DD');

/** What the texts above were read from; what is not there is left out. */
export function written(value: unknown): unknown {
  if (isMoney(value)) return `${exactText(value)} ${currencyCode(value)}`;
  if (isDecimal(value)) return decimalToText(value);
  if (Array.isArray(value)) return value.map(written);
  if (!isRecord(value)) return value;
  const { code, exponent } = value;
  if (exponent !== undefined && code !== undefined) return code;
  const kept = Object.entries(value).filter(([, part]) => part !== undefined);
  return Object.fromEntries(kept.map(([name, part]) => [name, written(part)]));
}

/** Every text that is found in data, by its dotted name: { "rates.laminate": "54" }. */
export function textsByName(
  data: unknown,
  textOf: (value: unknown) => string | undefined,
  name = '',
): Readonly<Record<string, string>> {
  const text = textOf(data);
  if (text !== undefined) return { [name]: text };
  if (!isRecord(data)) return {};
  return Object.fromEntries(
    Object.entries(data).flatMap(([key, part]) =>
      Object.entries(textsByName(part, textOf, name === '' ? key : `${name}.${key}`)),
    ),
  );
}
