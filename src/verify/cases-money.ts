import {
  currencyOf,
  minorUnits,
  moneyOf,
  parseMoney,
  roundToMinorUnit,
  shareOut,
  timesDecimal,
} from '../money/index.ts';
import { priceOrder, type PriceRules, sellingPrice } from '../price/index.ts';
import { type Decimal, parseDecimal, parsePercent, ZERO } from '../units/index.ts';
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const GST = 'A New Tax System (Goods and Services Tax) Act 1999 (Australia)';
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

/** Tax on lines of fixed prices before tax, through the same function that prices an order. */
function taxOn(
  prices: readonly string[],
  rate: string,
  rounding: PriceRules['taxRounding'],
): number {
  if (!AUD) return Number.NaN;
  const price = priceOrder({
    items: prices.map((fixed, index) => ({
      key: String(index),
      marginClass: 'any',
      materials: [],
      hours: [],
      fixedPrice: moneyOf(decimal(fixed), AUD),
    })),
    rules: {
      currency: AUD,
      rates: {},
      overhead: ZERO,
      margins: {},
      marginFloor: ZERO,
      wastage: {},
      taxRate: parsePercent(rate) ?? ZERO,
      taxRounding: rounding,
    },
    charges: [],
    payments: [],
  });
  return Number(minorUnits(price.tax)) / 100;
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

const taxed = (
  name: string,
  wanted: number,
  rate: string,
  prices: readonly string[],
  rounding: PriceRules['taxRounding'] = 'document',
): Row => [name, wanted, 'AUD', () => taxOn(prices, rate, rounding), 0];
const THREE = ['33.33', '33.33', '33.33'];
const shared = (
  name: string,
  wanted: number,
  amount: string,
  weights: readonly string[],
  index: number,
): Row => [name, wanted, 'cents', () => share(amount, weights, index), 0];

const money = casesIn('money');

/** Rounding, tax and sharing out, to the cent. */
export const MONEY_CASES: readonly PublishedCase[] = [
  ...money(
    `${GST} s 9-90, total invoice rule`,
    taxed('GST on three lines of 33.33, total invoice rule', 10, '10%', THREE),
  ),
  ...money(
    `${GST} s 9-90, taxable supply rule`,
    taxed('GST on three lines of 33.33, taxable supply rule', 9.99, '10%', THREE, 'line'),
  ),
  ...money(
    `${GST} s 9-70: 10 % of the value`,
    taxed('GST on 59536.36', 5953.64, '10%', ['59536.36']),
  ),
  ...money(
    `${GST} s 9-90: 0.5 cent is rounded up`,
    taxed('GST of exactly half a cent rounds up', 0.01, '10%', ['0.05']),
  ),
  ...money(
    'EN 16931-1, BR-CO-17: category tax = base x rate, rounded to two decimals',
    taxed('VAT at 19 % on three nets of 33.34', 19, '19%', ['33.34', '33.34', '33.34']),
    taxed('Tax at 10 % on nets 3703.70, 100.00, 20.20', 382.39, '10%', [
      '3703.70',
      '100.00',
      '20.20',
    ]),
  ),
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
