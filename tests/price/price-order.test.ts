import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AUD, decimal, money, text } from '../money-words.ts';
import {
  priceOrder,
  type PriceInput,
  type PriceItem,
  type PriceRules,
  sellingPrice,
} from '../../src/price/index.ts';

const RULES: PriceRules = {
  currency: AUD,
  rates: { 'fit-out': decimal('52.50'), wiring: decimal('58') },
  overhead: decimal('38'),
  margins: { hull: decimal('0.28'), electrical: decimal('0.30') },
  marginFloor: decimal('0.20'),
  wastage: { resin: decimal('0.10') },
  taxRate: decimal('0.10'),
  taxRounding: 'document',
};

const BATTERY: PriceItem = {
  key: 'battery',
  marginClass: 'electrical',
  materials: [
    {
      code: 'B-1',
      supplier: 's',
      materialClass: 'battery',
      quantity: decimal('2'),
      unitCost: money('219.95'),
    },
  ],
  hours: [{ stage: 'wiring', hours: decimal('1.25') }],
};

const input = (changes: Partial<PriceInput> = {}): PriceInput => ({
  items: [BATTERY],
  rules: RULES,
  charges: [{ name: 'Registration', amount: money('145.20'), taxed: false }],
  payments: [
    { name: 'Deposit', when: 'order', share: decimal('0.3') },
    { name: 'Balance', when: 'handover', share: decimal('0.7') },
  ],
  ...changes,
});

const cents = fc.integer({ min: 0, max: 50_000_00 }).map((value) => (value / 100).toFixed(2));
const quantity = fc.integer({ min: 0, max: 99_999 }).map((value) => (value / 1000).toFixed(3));
const item = fc.record({
  cost: cents,
  quantity,
  hours: quantity,
  resin: fc.boolean(),
  hull: fc.boolean(),
});
const orders = fc.array(item, { minLength: 1, maxLength: 12 }).map((items) =>
  items.map(({ cost, quantity: used, hours, resin, hull }, index): PriceItem => ({
    key: String(index),
    marginClass: hull ? 'hull' : 'electrical',
    materials: [
      {
        code: String(index),
        supplier: 's',
        materialClass: resin ? 'resin' : 'timber',
        quantity: decimal(used),
        unitCost: money(cost),
      },
    ],
    hours: [{ stage: 'fit-out', hours: decimal(hours) }],
  })),
);
describe('the price of an order', () => {
  it('is materials, labour and overhead over one less the margin, worked by hand', () => {
    // 2 x 219.95 = 439.90; 1.25 h x 58 = 72.50; 1.25 h x 38 = 47.50; cost 559.90; / 0.70 = 799.857
    const [line] = priceOrder(input()).lines;
    expect(
      line && [line.materials, line.labour, line.overhead, line.cost, line.price].map(text),
    ).toEqual(['439.90', '72.50', '47.50', '559.90', '799.86']);
  });

  it('adds wastage of the class of material to what is bought', () => {
    const resin = {
      ...BATTERY,
      hours: [],
      materials: [
        {
          code: 'R-1',
          supplier: 's',
          materialClass: 'resin',
          quantity: decimal('3.5'),
          unitCost: money('9.99'),
        },
      ],
    };
    expect(text(priceOrder(input({ items: [resin] })).cost)).toBe(
      new Decimal('3.5').times('1.1').times('9.99').toFixed(2, Decimal.ROUND_HALF_UP),
    );
  });

  it('is the fixed price where there is one, and then shows the real margin', () => {
    const price = priceOrder(input({ items: [{ ...BATTERY, fixedPrice: money('500') }] }));
    expect(text(price.taxable)).toBe('500.00');
    expect(text(price.margin)).toBe('-59.90');
    expect(price.belowFloor).toBe(true);
  });

  it('counts what is neither part nor hour, such as the wear of the moulds', () => {
    expect(
      text(priceOrder(input({ items: [{ ...BATTERY, otherCost: money('100.10') }] })).cost),
    ).toBe('660.00');
  });

  it('keeps charges outside the tax', () => {
    const price = priceOrder(input());
    expect([price.tax, price.charges, price.driveAway].map(text)).toEqual([
      '79.99',
      '145.20',
      '1025.05',
    ]);
  });

  it('adds the tax to a charge that is taxed, within the tax of the whole, and to no other', () => {
    const charges = [
      { name: 'Registration', amount: money('145.20'), taxed: false },
      { name: 'Weighbridge', amount: money('38.05'), taxed: true },
    ];
    // 799.86 before tax: 79.986 is 79.99; with the 38.05 it is 83.791, of which 3.80 are the charge's.
    const price = priceOrder(input({ charges }));
    expect([price.tax, price.charges, price.chargesTax, price.driveAway].map(text)).toEqual([
      '79.99',
      '183.25',
      '3.80',
      '1066.90',
    ]);
    expect(price.chargeLines.map(({ tax, withTax }) => [text(tax), text(withTax)])).toEqual([
      ['0.00', '145.20'],
      ['3.80', '41.85'],
    ]);
  });

  it('takes a discount no larger than the price', () => {
    const price = priceOrder(input({ discount: { amount: decimal('99999') } }));
    expect([price.taxable, price.tax, price.driveAway].map(text)).toEqual([
      '0.00',
      '0.00',
      '145.20',
    ]);
    expect(price.marginShare).toBeUndefined();
  });

  it('has a margin on the selling price, not a markup on the cost', () => {
    expect(text(sellingPrice(money('42000'), decimal('0.30')))).toBe('60000.00');
  });
});

describe('the price of any order', () => {
  it('has the tax that another library’s decimals give', () => {
    fc.assert(
      fc.property(orders, (items) => {
        const price = priceOrder(input({ items }));
        expect(text(price.tax)).toBe(
          new Decimal(text(price.taxable)).times('0.1').toFixed(2, Decimal.ROUND_HALF_UP),
        );
      }),
      { numRuns: 100 },
    );
  });
});
