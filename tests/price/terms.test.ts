import { describe, expect, it } from 'vitest';
import {
  type PriceInput,
  type PriceItem,
  priceOrder,
  type PriceRounding,
  type PriceRules,
  sellingPrice,
} from '../../src/price/index.ts';
import { decimalToShortText } from '../../src/units/index.ts';
import { AUD, decimal, money, text } from '../money-words.ts';

const RULES: PriceRules = {
  currency: AUD,
  rates: {},
  overhead: decimal('0'),
  margins: { hull: decimal('0.28'), electrical: decimal('0.30') },
  marginFloor: decimal('0.20'),
  wastage: {},
  taxRate: decimal('0.10'),
  taxRounding: 'document',
};
const item = (key: string, cost: string, changes: Partial<PriceItem> = {}): PriceItem => ({
  key,
  marginClass: 'hull',
  materials: [],
  hours: [],
  otherCost: money(cost),
  ...changes,
});
const ITEMS = [
  item('shell', '7000.00'),
  item('lights', '333.33', { marginClass: 'electrical' }),
  item('radio', '400.00', { marginClass: 'electrical', fixedPrice: money('480.00') }),
];
const price = ({
  rules,
  ...changes
}: Partial<Omit<PriceInput, 'rules'>> & { readonly rules?: Partial<PriceRules> } = {}) =>
  priceOrder({
    items: ITEMS,
    charges: [{ name: 'Registration', amount: money('120.55'), taxed: false }],
    payments: [{ name: 'All', when: 'order', share: decimal('1') }],
    ...changes,
    rules: { ...RULES, ...rules },
  });

describe('margin', () => {
  it('is a share of the selling price, not of the cost', () => {
    // Cost 42,000: a margin of 30 % of the price sells at 60,000; a markup of 30 % of the cost would at 54,600.
    expect(text(sellingPrice(money('42000'), decimal('0.30')))).toBe('60000.00');
  });

  it('of each line is the real one, and a fixed price shows what it earns', () => {
    const { lines } = price();
    expect(
      lines.map(({ fixed, marginShare }) => [
        fixed,
        marginShare && decimalToShortText(marginShare),
      ]),
    ).toEqual([
      [false, '0.28'],
      [false, '0.300006'],
      [true, '0.166667'],
    ]);
  });

  it('of a class is held against its target', () => {
    const { classes } = price({ discount: { share: decimal('0.01'), marginClass: 'hull' } });
    // Hull: 9722.22 less 97.22; electrical: 476.19 and 480.00 at a cost of 733.33.
    expect(
      classes.map((one) => [one.marginClass, text(one.net), text(one.margin), one.belowTarget]),
    ).toEqual([
      ['hull', '9625.00', '2625.00', true],
      ['electrical', '956.19', '222.86', true],
    ]);
  });
});

describe('rounding of the prices that a customer sees', () => {
  const rounded = (rounding: Omit<PriceRounding, 'way'> & Partial<PriceRounding>) =>
    price({ rules: { rounding: { way: 'nearest', ...rounding } } });

  it('of each line before tax leaves fixed prices alone and shows the difference', () => {
    const { lines, lineRounding, taxable } = rounded({ to: 5n, tax: 'before', on: 'line' });
    expect(lines.map((line) => [line.calculated, line.rounding, line.price].map(text))).toEqual([
      ['9722.22', '-2.22', '9720.00'],
      ['476.19', '-1.19', '475.00'],
      ['480.00', '0.00', '480.00'],
    ]);
    expect([lineRounding, taxable].map(text)).toEqual(['-3.41', '10675.00']);
  });

  it('of each line with its tax has the tax in the round price', () => {
    const { lines, tax, boatWithTax } = rounded({ to: 10n, tax: 'after', on: 'line' });
    // 10694.44 -> 10690, 523.81 -> 520, 528.00 as fixed; a eleventh of 11738.00 is tax.
    expect(lines.map((line) => text(line.priceWithTax))).toEqual(['10690.00', '520.00', '528.00']);
    expect([tax, boatWithTax].map(text)).toEqual(['1067.09', '11738.00']);
  });

  it('up never goes down', () => {
    const { lines } = rounded({ to: 10n, tax: 'before', on: 'line', way: 'up' });
    expect(lines.map((line) => text(line.price))).toEqual(['9730.00', '480.00', '480.00']);
  });

  it('of the drive-away price leaves the charges and moves the boat', () => {
    const { rounding, driveAway, charges, boatWithTax } = rounded({
      to: 10n,
      tax: 'after',
      on: 'total',
    });
    // 10694.44 + 523.81 + 528.00 + 120.55 = 11866.80
    expect([driveAway, charges, boatWithTax].map(text)).toEqual(['11870.00', '120.55', '11749.45']);
    expect([rounding.before, rounding.tax, rounding.withTax].map(text)).toEqual([
      '2.91',
      '0.29',
      '3.20',
    ]);
  });

  it('of the whole before tax taxes the round price', () => {
    const { rounding, taxable, tax } = rounded({ to: 10n, tax: 'before', on: 'total' });
    expect([rounding.before, taxable, tax].map(text)).toEqual(['1.59', '10680.00', '1068.00']);
  });
});

describe('a package', () => {
  const keys = ['lights', 'radio'];
  it('at a price spreads its saving over its lines', () => {
    const { lines, savings, taxable } = price({
      packages: [{ name: 'P', keys, price: decimal('900') }],
    });
    expect(lines.map((line) => [line.saving, line.price].map(text))).toEqual([
      ['0.00', '9722.22'],
      ['27.98', '448.21'],
      ['28.21', '451.79'],
    ]);
    expect([savings, taxable].map(text)).toEqual(['56.19', '10622.22']);
  });
  it('with a share off takes it off the sum', () => {
    const { savings } = price({ packages: [{ name: 'P', keys, share: decimal('0.1') }] });
    expect(text(savings)).toBe('95.62');
  });
  it('that costs more than its parts saves nothing', () => {
    expect(text(price({ packages: [{ name: 'P', keys, price: decimal('5000') }] }).savings)).toBe(
      '0.00',
    );
  });
});

describe('a discount on a class', () => {
  it('is shared by the lines of the class alone', () => {
    const off = { amount: decimal('100'), marginClass: 'electrical' };
    const { lines, discount } = price({ discount: off });
    expect(lines.map((line) => text(line.discount))).toEqual(['0.00', '49.80', '50.20']);
    expect(text(discount)).toBe('100.00');
  });
  it('takes no more than the class costs', () => {
    const off = { amount: decimal('5000'), marginClass: 'electrical' };
    expect(text(price({ discount: off }).discount)).toBe('956.19');
  });
});

describe('a trade-in', () => {
  const tradeIn = { name: 'Old boat', value: decimal('2000') };
  it('is a payment: it changes what is to pay, and neither price nor tax', () => {
    const [without, having] = [price(), price({ tradeIn })];
    expect([having.driveAway, having.tax].map(text)).toEqual(
      [without.driveAway, without.tax].map(text),
    );
    expect(having.payments.map(({ kind, amount }) => [kind, text(amount)])).toEqual([
      ['trade-in', '2000.00'],
      ['stage', '9866.80'],
    ]);
    expect(text(having.toPay)).toBe('9866.80');
  });
  it('lowers the tax where the law says so', () => {
    const { tax, tradeInTax, driveAway } = price({ tradeIn, rules: { tradeInReducesTax: true } });
    // 10678.41 - 2000.00 = 8678.41 is taxed.
    expect([tax, tradeInTax, driveAway].map(text)).toEqual(['867.84', '200.00', '11666.80']);
  });
  it('worth more than the boat pays for the boat', () => {
    const { payments, toPay } = price({ tradeIn: { name: 'Ship', value: decimal('50000') } });
    expect(payments.map(({ amount }) => text(amount))).toEqual(['11866.80', '0.00']);
    expect(text(toPay)).toBe('0.00');
  });
});

describe('payments', () => {
  const payments = [
    { name: 'Deposit', when: 'With the order', event: 'order', amount: decimal('2000') },
    { name: 'Hull', when: 'Hull out', event: 'release', share: decimal('0.5') },
    { name: 'Rest', when: 'Handover', event: 'handover', share: decimal('0.5') },
  ];
  it('are fixed amounts, then shares of the rest, and know what has been paid', () => {
    const { paid, toPay, ...having } = price({
      payments,
      paid: [decimal('2000'), decimal('1000')],
    });
    expect(having.payments.map((one) => [one.event, text(one.amount), text(one.paid)])).toEqual([
      ['order', '2000.00', '2000.00'],
      ['release', '4933.40', '1000.00'],
      ['handover', '4933.40', '0.00'],
    ]);
    expect([paid, toPay].map(text)).toEqual(['3000.00', '8866.80']);
  });
  it('ask no fixed amount that is not due', () => {
    const tradeIn = { name: 'Old boat', value: decimal('11000') };
    const { payments: due } = price({ payments, tradeIn });
    expect(due.map(({ amount }) => text(amount))).toEqual(['11000.00', '866.80', '0.00', '0.00']);
  });
});
