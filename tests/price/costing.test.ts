import { describe, expect, it } from 'vitest';
import { currencyOf, moneyOf } from '../../src/money/index.ts';
import { costOrder, loadedRate, type PriceItem, type PriceRules } from '../../src/price/index.ts';
import { decimalToShortText } from '../../src/units/index.ts';
import { AUD, decimal, money, text } from '../money-words.ts';

const USD = currencyOf('USD') ?? AUD;
const RULES: PriceRules = {
  currency: AUD,
  rates: {
    laminate: { wage: decimal('33.00'), onCosts: decimal('0.25'), productive: decimal('0.80') },
    wiring: decimal('58'),
  },
  overhead: decimal('0'),
  margins: {},
  marginFloor: decimal('0'),
  wastage: { resin: decimal('0.10') },
  taxRate: decimal('0.10'),
  taxRounding: 'document',
};
const item = (key: string, changes: Partial<PriceItem> = {}): PriceItem => ({
  key,
  marginClass: 'hull',
  materials: [],
  hours: [],
  ...changes,
});
const resin = (quantity: string, changes: Partial<PriceItem['materials'][number]> = {}) => ({
  code: 'R-1',
  supplier: 'near',
  materialClass: 'resin',
  quantity: decimal(quantity),
  unitCost: money('9.80'),
  ...changes,
});
const cost = (items: readonly PriceItem[], changes: Partial<PriceRules> = {}) =>
  costOrder(items, { ...RULES, ...changes });

describe('materials', () => {
  const DRUM = { pack: decimal('20'), buy: 'whole' } as const;
  // 10 kg and 5 kg with 10 % of wastage are 16.5 kg: one drum of 20 kg, 3.5 kg of it left, 34.30.
  const two = [
    item('deck', { materials: [resin('10', DRUM)] }),
    item('shell', { materials: [resin('5', DRUM)] }),
  ];

  it('bought in whole packs charge what is left of the last one to those that use them', () => {
    const { lines, purchases } = cost(two);
    expect(lines.map((line) => [line.materials, line.packs].map(text))).toEqual([
      ['107.80', '22.87'],
      ['53.90', '11.43'],
    ]);
    const [drum] = purchases;
    expect(drum && [drum.used, drum.bought].map(decimalToShortText)).toEqual(['16.5', '20']);
    expect(drum?.packs).toBe(1n);
    expect(drum && text(drum.cost)).toBe('196.00');
  });

  it('that fill their packs exactly leave nothing', () => {
    const full = cost([item('a', { materials: [resin('40', DRUM)] })], { wastage: {} });
    expect(full.lines.map(({ packs }) => text(packs))).toEqual(['0.00']);
    expect(full.purchases[0]?.packs).toBe(2n);
  });

  it('in packs that are shared cost what is used', () => {
    const [line] = cost([item('a', { materials: [resin('10', { pack: decimal('20') })] })]).lines;
    expect(line && text(line.cost)).toBe('107.80');
  });

  it('of another currency are paid at the rate with its buffer', () => {
    const abroad = resin('2', { unitCost: moneyOf(decimal('99.99'), USD), materialClass: 'any' });
    const { lines } = cost([item('a', { materials: [abroad] })], {
      exchange: { USD: { rate: decimal('1.5312'), buffer: decimal('0.03') } },
    });
    // 2 x 99.99 x 1.5312 x 1.03 = 315.395...
    expect(lines.map((line) => text(line.materials))).toEqual(['315.40']);
  });
});

describe('freight', () => {
  const far = resin('30', { code: 'F-1', supplier: 'far', materialClass: 'any' });
  const items = [
    item('a', { materials: [resin('10'), far] }),
    item('b', { materials: [resin('20')] }),
    item('c'),
  ];
  it('is a share of what is bought, or an amount an order shared by value', () => {
    const { lines } = cost(items, {
      freight: { near: { perOrder: decimal('100') }, far: { share: decimal('0.05') } },
    });
    // near: 107.80 and 215.60 of 323.40; far: 294.00 x 5 %.
    expect(lines.map(({ freight }) => text(freight))).toEqual(['48.03', '66.67', '0.00']);
  });
  it('is nothing from a supplier that nothing is bought from', () => {
    const { lines } = cost([item('c')], { freight: { near: { perOrder: decimal('100') } } });
    expect(lines.map((line) => text(line.cost))).toEqual(['0.00']);
  });
});

describe('labour', () => {
  const WAGE = { wage: decimal('33.00'), onCosts: decimal('0.25'), productive: decimal('0.80') };
  it('is loaded with on-costs and unproductive hours', () => {
    // 33.00 x 1.25 / 0.80 = 51.5625
    expect(text(loadedRate(WAGE, AUD))).toBe('51.56');
  });
  it('multiplies the rate that is shown, by hours with learning and rework', () => {
    const hours = [
      { stage: 'laminate', hours: decimal('20') },
      { stage: 'wiring', hours: decimal('4') },
    ];
    const [line] = cost([item('a', { hours })], {
      learning: { laminate: decimal('1.3') },
      rework: decimal('0.05'),
      overhead: decimal('31'),
    }).lines;
    // 20 x 1.3 x 1.05 = 27.3 h at 51.56, 4 x 1.05 = 4.2 h at 58; 31.5 h of overhead at 31.
    expect(line && decimalToShortText(line.hours)).toBe('24');
    expect(line && decimalToShortText(line.costedHours)).toBe('31.5');
    expect(line && [line.labour, line.overhead].map(text)).toEqual(['1651.19', '976.50']);
  });
  it('and materials bear overhead as a share', () => {
    const [line] = cost(
      [
        item('a', {
          materials: [resin('10')],
          hours: [{ stage: 'wiring', hours: decimal('1') }],
          otherCost: money('400'),
        }),
      ],
      { overheadShare: decimal('0.15') },
    ).lines;
    // (107.80 + 58.00) x 15 %; what is charged for the moulds bears none.
    expect(line && [line.overhead, line.cost].map(text)).toEqual(['24.87', '590.67']);
  });
});
