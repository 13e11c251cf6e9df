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

const money = (
  name: string,
  source: string,
  published: number,
  ours: () => number,
  unit = 'AUD',
): PublishedCase => ({
  area: 'money',
  name,
  source,
  published,
  unit,
  tolerance: 0,
  ours,
});

/** Rounding, tax and sharing out, to the cent. */
export const MONEY_CASES: readonly PublishedCase[] = [
  money(
    'GST on three lines of 33.33, total invoice rule',
    `${GST} s 9-90, total invoice rule`,
    10,
    () => taxOn(['33.33', '33.33', '33.33'], '10%', 'document'),
  ),
  money(
    'GST on three lines of 33.33, taxable supply rule',
    `${GST} s 9-90, taxable supply rule`,
    9.99,
    () => taxOn(['33.33', '33.33', '33.33'], '10%', 'line'),
  ),
  money('GST on 59536.36', `${GST} s 9-70: 10 % of the value`, 5953.64, () =>
    taxOn(['59536.36'], '10%', 'document'),
  ),
  money('GST of exactly half a cent rounds up', `${GST} s 9-90: 0.5 cent is rounded up`, 0.01, () =>
    taxOn(['0.05'], '10%', 'document'),
  ),
  money(
    'VAT at 19 % on three nets of 33.34',
    'EN 16931-1, BR-CO-17: category tax = base x rate, rounded to two decimals',
    19,
    () => taxOn(['33.34', '33.34', '33.34'], '19%', 'document'),
  ),
  money('Tax at 10 % on nets 3703.70, 100.00, 20.20', 'EN 16931-1, BR-CO-17', 382.39, () =>
    taxOn(['3703.70', '100.00', '20.20'], '10%', 'document'),
  ),
  money('1.005 in whole cents', 'derived: exactly half a cent, away from zero', 1.01, () =>
    rounded('1.005'),
  ),
  money('-1.005 in whole cents', 'derived: exactly half a cent, away from zero', -1.01, () =>
    rounded('-1.005'),
  ),
  money('1234.565 x 3 in whole cents', 'derived: 3703.695', 3703.7, () => product('1234.565', '3')),
  money(
    '100.00 over three equal shares, the first',
    HAMILTON,
    3334,
    () => share('100.00', ['1', '1', '1'], 0),
    'cents',
  ),
  money(
    '1.01 over 5, 3 and 2, the first',
    HAMILTON,
    51,
    () => share('1.01', ['5', '3', '2'], 0),
    'cents',
  ),
  money(
    '100.01 over 3333, 3333 and 3334, the last',
    HAMILTON,
    3335,
    () => share('100.01', ['3333', '3333', '3334'], 2),
    'cents',
  ),
  money(
    '0.07 over five equal shares, the third',
    HAMILTON,
    1,
    () => share('0.07', ['1', '1', '1', '1', '1'], 2),
    'cents',
  ),
  money('A cost of 42000 at a margin of 30 % sells at', MARGIN, 60_000, () => sold('42000', '30%')),
  money(
    'A value of 12345678901234.56 keeps its cents',
    'derived: beyond 2^53 hundredths of a cent a float loses them',
    12345678901234.56,
    () => cents('12345678901234.56'),
  ),
];
