import { type Currency, currencyOf, type Money, minorUnits, moneyOf } from '../money/index.ts';
import { type Price, priceOrder, type PriceRules } from '../price/index.ts';
import { type Decimal, parseDecimal, parsePercent, ZERO } from '../units/index.ts';
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const GST = 'A New Tax System (Goods and Services Tax) Act 1999 (Australia)';
const ATO = `${GST} s 9-70; Tax Office media release 2000/36: one eleventh of the total, half a cent up`;
const NZ_EXAMPLE =
  'Inland Revenue (New Zealand), Calculating GST, 16 August 2010: its worked example, as printed';
const NZ_HALF =
  'Goods and Services Tax Act 1985 (New Zealand) s 19O: half a cent or less is dropped';
const UK_HALF = 'HMRC VATREC12030: 0.5 of a penny or more is rounded up, less is rounded down';
const UK_DOWN =
  'HMRC VATREC12010, on Notice 700 paragraph 17.5: an invoice’s VAT may be rounded down';
const US = 'derived: a sales tax of 8.25 % on top, each line rounded half up';

interface Sale {
  readonly currency: string;
  readonly rate: string;
  readonly prices: readonly string[];
  readonly rules?: Partial<PriceRules>;
  readonly discount?: string;
  readonly charge?: string;
  readonly tradeIn?: string;
  readonly paid?: string;
}

const decimal = (text = ''): Decimal => parseDecimal(text) ?? ZERO;

function sell(sale: Sale, currency: Currency): Price {
  return priceOrder({
    items: sale.prices.map((fixed, index) => ({
      key: String(index),
      marginClass: 'any',
      materials: [],
      hours: [],
      fixedPrice: moneyOf(decimal(fixed), currency),
    })),
    rules: {
      currency,
      rates: {},
      overhead: ZERO,
      margins: {},
      marginFloor: ZERO,
      wastage: {},
      taxRate: parsePercent(sale.rate) ?? ZERO,
      taxRounding: 'document',
      ...sale.rules,
    },
    charges: [{ name: 'Charge', amount: moneyOf(decimal(sale.charge), currency), taxed: false }],
    ...(sale.discount !== undefined && { discount: { amount: decimal(sale.discount) } }),
    ...(sale.tradeIn !== undefined && {
      tradeIn: { name: 'Trade-in', value: decimal(sale.tradeIn) },
    }),
    paid: [decimal(sale.paid)],
    payments: [],
  });
}

const sale = (
  name: string,
  published: number,
  sold: Sale,
  figure: (price: Price) => Money = ({ tax }) => tax,
): Row => [
  name,
  published,
  sold.currency,
  () => {
    const currency = currencyOf(sold.currency);
    return currency && Number(minorUnits(figure(sell(sold, currency)))) / 100;
  },
  0,
];

/** Prices agreed with the tax in them; a fixed price is not rounded further. */
const withTax = { rounding: { to: 1n, way: 'nearest', tax: 'after', on: 'line' } } as const;
const nz = { currency: 'NZD', rate: '15%' };
const uk = { currency: 'GBP', rate: '20%' };
const us = { currency: 'USD', rate: '8.25%', rules: { taxRounding: 'line' } } as const;
/** Lines of 3 x 1234.565, 99.995 and 2 x 10.10, each rounded to cents, less 23.90, plus 50.00 outside the tax. */
const invoice = {
  currency: 'EUR',
  rate: '10%',
  prices: ['3703.695', '99.995', '20.20'],
  discount: '23.90',
  charge: '50.00',
  paid: '1000.00',
};

const gst = { currency: 'AUD', rate: '10%' };
const three = { ...gst, prices: ['33.33', '33.33', '33.33'] };
const four = { ...gst, prices: ['11.22', '11.22', '11.22', '11.22'] };

const money = casesIn('money');
const rule = (name: string, ...row: Parameters<typeof sale>): readonly PublishedCase[] =>
  money(`EN 16931-1, ${name}, as the published UBL schematron words it`, sale(...row));

/** Worked examples of tax authorities, and the sums of the European invoice standard. */
export const TAX_CASES: readonly PublishedCase[] = [
  ...money(
    `${GST} s 9-90, total invoice rule`,
    sale('GST on three lines of 33.33, total invoice rule', 10, three),
  ),
  ...money(
    `${GST} s 9-90, taxable supply rule`,
    sale('GST on three lines of 33.33, taxable supply rule', 9.99, {
      ...three,
      rules: { taxRounding: 'line' },
    }),
  ),
  ...money(
    `${GST} s 9-70: 10 % of the value`,
    sale('GST on 59536.36', 5953.64, { ...gst, prices: ['59536.36'] }),
  ),
  ...money(
    `${GST} s 9-90: 0.5 cent is rounded up`,
    sale('GST of exactly half a cent rounds up', 0.01, { ...gst, prices: ['0.05'] }),
  ),
  ...money(
    'EN 16931-1, BR-CO-17: category tax = base x rate, rounded to two decimals',
    sale('VAT at 19 % on three nets of 33.34', 19, {
      currency: 'AUD',
      rate: '19%',
      prices: ['33.34', '33.34', '33.34'],
    }),
    sale('Tax at 10 % on nets 3703.70, 100.00, 20.20', 382.39, {
      ...gst,
      prices: ['3703.70', '100.00', '20.20'],
    }),
  ),
  ...money(
    ATO,
    // The value whose price with tax is 65490.00.
    sale('GST within 65490.00', 5953.64, { ...four, prices: ['59536.36'], rules: withTax }),
    sale('GST within four prices of 12.34 together', 4.49, { ...four, rules: withTax }),
    sale('GST within the same, each rounded', 4.48, {
      ...four,
      rules: { ...withTax, taxRounding: 'line' },
    }),
  ),
  ...money(
    NZ_EXAMPLE,
    sale('GST at 15 % on 1500.00', 225, { ...nz, prices: ['1500.00'] }),
    sale(
      'the price of that with its GST',
      1725,
      { ...nz, prices: ['1500.00'] },
      ({ boatWithTax }) => boatWithTax,
    ),
    sale('3/23 of 1725.00', 225, { ...nz, prices: ['1500.00'], rules: withTax }),
  ),
  ...money(
    NZ_HALF,
    sale('GST of exactly half a cent, dropped', 0.01, {
      ...nz,
      prices: ['0.10'],
      rules: { taxRule: 'half-down' },
    }),
    sale('GST of 0.516 cents, more than half', 0.02, {
      ...nz,
      prices: ['0.11'],
      rules: { taxRule: 'half-down' },
    }),
  ),
  ...money(
    UK_HALF,
    sale('VAT of 641.486', 641.49, { ...uk, prices: ['3207.43'] }),
    sale('VAT of 641.484', 641.48, { ...uk, prices: ['3207.42'] }),
  ),
  ...money(
    UK_DOWN,
    sale('VAT of 641.486, rounded down', 641.48, {
      ...uk,
      prices: ['3207.43'],
      rules: { taxRule: 'down' },
    }),
  ),
  ...money(
    'Value Added Tax Act 1994 (UK): one sixth at 20 %',
    sale('VAT within 120.00', 20, { ...uk, prices: ['100.00'], rules: withTax }),
  ),
  ...money(
    US,
    sale('Sales tax by line on 3124.67, 33.33 and 49.40', 264.62, {
      ...us,
      prices: ['3124.67', '33.33', '49.40'],
    }),
  ),
  ...rule(
    'BR-CO-10',
    'BT-106, sum of line nets 3703.70, 100.00 and 20.20',
    3823.9,
    invoice,
    (price) => price.listPrice,
  ),
  ...rule('BR-CO-11', 'BT-107, sum of allowances', 23.9, invoice, ({ discount }) => discount),
  ...rule('BR-CO-12', 'BT-108, sum of charges', 50, invoice, ({ charges }) => charges),
  ...rule(
    'BR-CO-13',
    'BT-109 less BT-108: 3823.90 - 23.90 is taxed',
    3800,
    invoice,
    (price) => price.taxable,
  ),
  ...rule('BR-CO-14, BR-CO-17', 'BT-110 of the one category, 10 % of 3800.00', 380, invoice),
  ...rule('BR-CO-15', 'BT-112, 3850.00 + 380.00', 4230, invoice, ({ driveAway }) => driveAway),
  ...rule('BR-CO-16', 'BT-115, less 1000.00 paid', 3230, invoice, ({ toPay }) => toPay),
  ...rule(
    'BR-CO-16',
    'BT-115, less a trade-in of 500.00 as well, which is a payment',
    2730,
    { ...invoice, tradeIn: '500.00' },
    ({ toPay }) => toPay,
  ),
];
