import {
  currencyOf,
  minorUnits,
  parseMoney,
  roundToMinorUnit,
  shareOut,
  timesDecimal,
} from '../money/index.ts';
import { sellingPrice } from '../price/index.ts';
import { type Decimal, parseDecimal, parsePercent, ZERO } from '../units/index.ts';
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const HAMILTON = 'Hamilton’s method of apportionment (largest remainder), worked by hand';
const MARGIN = 'derived: price = cost / (1 - margin on the selling price)';

const AUD = currencyOf('AUD');
const GBP = currencyOf('GBP');

function decimal(text: string): Decimal {
  return parseDecimal(text) ?? ZERO;
}

function cents(text: string): number {
  const money = AUD && parseMoney(text, AUD);
  return money ? Number(minorUnits(money)) / 100 : Number.NaN;
}

function share(amount: string, weights: readonly string[], index: number): number {
  const money = GBP && parseMoney(amount, GBP);
  const shares = money ? shareOut(money, weights.map(decimal)) : [];
  const one = shares[index];
  return one ? Number(minorUnits(one)) : Number.NaN;
}

function sold(cost: string, margin: string): number {
  const money = AUD && parseMoney(cost, AUD);
  return money
    ? Number(minorUnits(sellingPrice(money, parsePercent(margin) ?? ZERO))) / 100
    : Number.NaN;
}

function rounded(text: string): number {
  const money = AUD && parseMoney(text, AUD);
  return money ? Number(minorUnits(roundToMinorUnit(money))) / 100 : Number.NaN;
}

function product(a: string, b: string): number {
  const money = AUD && parseMoney(a, AUD);
  return money
    ? Number(minorUnits(roundToMinorUnit(timesDecimal(money, decimal(b))))) / 100
    : Number.NaN;
}

const shared = (
  name: string,
  wanted: number,
  amount: string,
  weights: readonly string[],
  index: number,
): Row => [name, wanted, 'cents', () => share(amount, weights, index), 0];

const money = casesIn('money');

/** Rounding and sharing out, to the cent. */
export const MONEY_CASES: readonly PublishedCase[] = [
  ...money(
    'derived: exactly half a cent, away from zero',
    ['1.005 in whole cents', 1.01, 'AUD', () => rounded('1.005'), 0],
    ['-1.005 in whole cents', -1.01, 'AUD', () => rounded('-1.005'), 0],
  ),
  ...money('derived: 3703.695', [
    '1234.565 x 3 in whole cents',
    3703.7,
    'AUD',
    () => product('1234.565', '3'),
    0,
  ]),
  ...money(
    HAMILTON,
    shared('100.00 over three equal shares, the first', 3334, '100.00', ['1', '1', '1'], 0),
    shared('1.01 over 5, 3 and 2, the first', 51, '1.01', ['5', '3', '2'], 0),
    shared(
      '100.01 over 3333, 3333 and 3334, the last',
      3335,
      '100.01',
      ['3333', '3333', '3334'],
      2,
    ),
    shared('0.07 over five equal shares, the third', 1, '0.07', ['1', '1', '1', '1', '1'], 2),
  ),
  ...money(MARGIN, [
    'A cost of 42000 at a margin of 30 % sells at',
    60_000,
    'AUD',
    () => sold('42000', '30%'),
    0,
  ]),
  ...money('derived: beyond 2^53 hundredths of a cent a float loses them', [
    'A value of 12345678901234.56 keeps its cents',
    12345678901234.56,
    'AUD',
    () => cents('12345678901234.56'),
    0,
  ]),
];
