import {
  currencyOf,
  type Currency,
  type Money,
  moneyToText,
  parseMoney,
} from '../src/money/index.ts';
import { type Decimal, parseDecimal } from '../src/units/index.ts';

/** What a test means when it writes money and decimals as text. */
function there<T>(value: T | undefined, written: string): T {
  if (value === undefined) throw new Error(`"${written}" is not what the test means`);
  return value;
}

export const AUD: Currency = there(currencyOf('AUD'), 'AUD');
export const decimal = (written: string): Decimal => there(parseDecimal(written), written);
export const money = (written: string): Money => there(parseMoney(written, AUD), written);
export const text = (amount: Money): string => moneyToText(amount);
