import { describe, expect, it } from 'vitest';
import { currencyOf, moneyOf } from '../../src/money/index.ts';
import { type PriceInput, priceOrder, sensitivity } from '../../src/price/index.ts';
import { decimalToShortText } from '../../src/units/index.ts';
import { AUD, decimal, money, text } from '../money-words.ts';

const USD = currencyOf('USD') ?? AUD;
// Resin 1000.00; display 400 USD x 1.50 = 600.00; 40 h at 50 and 30 of overhead = 3200.00; sold at 6000.00.
const INPUT: PriceInput = {
  items: [
    {
      key: 'boat',
      marginClass: 'hull',
      materials: [
        {
          code: 'R',
          supplier: 's',
          materialClass: 'resin',
          quantity: decimal('100'),
          unitCost: money('10'),
        },
        {
          code: 'D',
          supplier: 's',
          materialClass: 'electronics',
          quantity: decimal('1'),
          unitCost: moneyOf(decimal('400'), USD),
        },
      ],
      hours: [{ stage: 'laminate', hours: decimal('40') }],
      fixedPrice: money('6000'),
    },
  ],
  rules: {
    currency: AUD,
    rates: { laminate: decimal('50') },
    overhead: decimal('30'),
    margins: { hull: decimal('0.2') },
    marginFloor: decimal('0.1'),
    wastage: {},
    exchange: { USD: { rate: decimal('1.5'), buffer: decimal('0') } },
    taxRate: decimal('0.1'),
    taxRounding: 'document',
  },
  charges: [],
  payments: [],
};
const WHAT_IF = {
  overruns: [decimal('0.1'), decimal('0.2'), decimal('0.3')],
  materials: { resin: decimal('0.15') },
  exchange: decimal('0.1'),
};

describe('the margin of 1200.00, when things go otherwise', () => {
  const then = sensitivity(INPUT, priceOrder(INPUT), WHAT_IF);

  it('hours overrun by 10, 20 and 30 %', () => {
    expect(then.overruns.map(({ margin }) => text(margin))).toEqual(['880.00', '560.00', '240.00']);
    expect(
      then.overruns.map(({ marginShare }) => marginShare && decimalToShortText(marginShare)),
    ).toEqual(['0.146667', '0.093333', '0.04']);
  });
  it('resin rises by 15 %, another currency by 10 %', () => {
    expect(then.materials.map((one) => [one.materialClass, text(one.margin)])).toEqual([
      ['resin', '1050.00'],
    ]);
    expect(then.exchange.map((one) => [one.currency, text(one.margin)])).toEqual([
      ['USD', '1140.00'],
    ]);
  });
  it('is used up by 15 hours more', () => {
    // 1200.00 / 80.00 an hour
    expect(then.breakEven).toMatchObject({ share: { amount: 375_000n, scale: 6n } });
    expect('hours' in then.breakEven && decimalToShortText(then.breakEven.hours)).toBe('15');
  });
  it('says why there is no break-even', () => {
    const none = { ...INPUT, items: INPUT.items.map((item) => ({ ...item, hours: [] })) };
    expect(sensitivity(none, priceOrder(none), WHAT_IF).breakEven).toEqual({
      notComputed: 'no hour of this order costs anything',
    });
    const cheap = {
      ...INPUT,
      items: INPUT.items.map((item) => ({ ...item, fixedPrice: money('1') })),
    };
    expect(sensitivity(cheap, priceOrder(cheap), WHAT_IF).breakEven).toEqual({
      notComputed: 'there is no margin to use up',
    });
  });
});
