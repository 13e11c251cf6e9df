import { describe, expect, it } from 'vitest';
import { computeFigures } from '../../src/figures/index.ts';
import { moneyToText } from '../../src/money/index.ts';
import { OPTIONS, ORDER, PARTS, YARD } from '../read/samples.ts';
import { resolveSample } from '../resolve/invented.ts';

interface Regime {
  readonly locale: string;
  readonly currency: string;
  readonly tax: string;
  /** Fixed price of the seat, chosen so that the tax ends in part of a cent. */
  readonly seat: string;
}

/** A whole workspace of one country, from its files to its figures. */
function priced({ locale, currency, tax, seat }: Regime, order = '') {
  const { build, findings } = resolveSample({
    'catalogue/yard.yaml': YARD.replace(/tax:\n(?: {2}.*\n)+/, `tax:\n${tax}`)
      .replace('en-AU', locale)
      .replace('currency: AUD', `currency: ${currency}`),
    'catalogue/options/seats.yaml': OPTIONS.replace(
      'name: Seat, class: fit-out',
      `name: Seat, class: fit-out, price: ${seat}`,
    ).replace('name: Rod holder, class: fit-out', 'name: Rod holder, class: fit-out, price: 12.35'),
    'catalogue/parts/acme-parts.csv': PARTS.replaceAll(',AUD,', `,${currency},`),
    'orders/t-1.yaml': ORDER + order,
  });
  if (!build) throw new Error(findings.map(({ received }) => received).join());
  const { price } = computeFigures(build, []);
  const { taxable, tax: due, driveAway, toPay } = price;
  return [taxable, due, driveAway, toPay].map(moneyToText);
}

// In each: hull 3124.67 (worked out), four rod holders 49.40 and a seat (fixed), registration 120.50 outside the tax.
const AU: Regime = {
  locale: 'en-AU',
  currency: 'AUD',
  seat: '33.38',
  tax: `  name: GST
  rate: 10%
  pricesInclude: true
  rounding: document
  zeroRated: A New Tax System (Goods and Services Tax) Act 1999 (Cth), Subdiv 38-E
  source: A New Tax System (Goods and Services Tax) Act 1999 (Cth), s 9-70 and s 9-90
`,
};
const NZ: Regime = {
  locale: 'en-NZ',
  currency: 'NZD',
  seat: '33.43',
  tax: `  name: GST
  rate: 15%
  pricesInclude: true
  rounding: document
  fractions: half-down
  source: Goods and Services Tax Act 1985 (NZ), s 8 and s 19O
`,
};
const UK: Regime = {
  locale: 'en-GB',
  currency: 'GBP',
  seat: '33.36',
  tax: `  name: VAT
  rate: 20%
  pricesInclude: true
  rounding: document
  fractions: down
  source: HMRC Notice 700, paragraph 17.5 (VATREC12010)
`,
};
const US: Regime = {
  locale: 'en-US',
  currency: 'USD',
  seat: '33.33',
  tax: `  name: Sales tax
  rate: 8.25%
  pricesInclude: false
  rounding: line
  tradeIn: reduces-tax
  source: An invented state's sales tax code
`,
};

describe('a workspace of each country, from its files to its drive-away price', () => {
  it('Australia: 10 %, the whole rounded once, half a cent up', () => {
    // 3207.45 x 10 % = 320.745
    expect(priced(AU)).toEqual(['3207.45', '320.75', '3648.70', '3648.70']);
  });
  it('Australia: an export bears no tax', () => {
    expect(priced(AU, 'zeroRated: { reason: Shipped by us to Fiji. }\n')).toEqual([
      '3207.45',
      '0.00',
      '3327.95',
      '3327.95',
    ]);
  });
  it('New Zealand: 15 %, half a cent dropped', () => {
    // 3207.50 x 15 % = 481.125
    expect(priced(NZ)).toEqual(['3207.50', '481.12', '3809.12', '3809.12']);
  });
  it('United Kingdom: 20 %, the invoice’s tax down to a whole penny', () => {
    // 3207.43 x 20 % = 641.486
    expect(priced(UK)).toEqual(['3207.43', '641.48', '3969.41', '3969.41']);
  });
  it('United States: a state’s rate on top, by line, less what a trade-in takes off', () => {
    // 257.785 -> 257.79, 2.750 -> 2.75, 4.076 -> 4.08; the trade-in takes 264.61 - 182.11 off.
    const order = 'tradeIn: { name: An old skiff, value: 1000 }\n';
    expect(priced(US, order)).toEqual(['3207.40', '182.12', '3510.02', '2510.02']);
    expect(priced(US)).toEqual(['3207.40', '264.62', '3592.52', '3592.52']);
  });
  it('an export needs a law that allows it', () => {
    expect(() => priced(NZ, 'zeroRated: { reason: Away. }\n')).toThrow('an export without GST');
  });
});
