import { describe, expect, it } from 'vitest';
import { figuresData, type Figures } from '../../src/figures/index.ts';
import { driftOf, type IssuedQuote, openIssued } from '../../src/issued/index.ts';
import { written } from '../../src/issued/form/texts.ts';
import { currencyCode, currencyOf } from '../../src/money/index.ts';
import { byNumber, figuresOf } from '../demonstration/workspace.ts';
import { sealedOf, sentOf } from './sent.ts';

/** Every name of a field in data, however deep. */
function namesIn(data: unknown): readonly string[] {
  if (typeof data !== 'object' || data === null) return [];
  const names = Array.isArray(data) ? [] : Object.keys(data);
  return [...names, ...Object.values(data).flatMap(namesIn)];
}

/** The keys of the rows that would cost something else today; or why nobody knows. */
function changed(quote: IssuedQuote, today: Figures) {
  const drift = driftOf(quote, today);
  return 'rows' in drift ? drift.rows.map(({ key }) => key) : drift.notComputed;
}

/** What the demonstration has nowhere: the first boat of its hull, a discount on a class, an export. */
const RARE = figuresOf(
  'curlew-560',
  `firstOfKind: true
zeroRated: { reason: Shipped abroad. }
discount: { share: 5%, class: fit-out, reason: A friend. }
options: [anchor-locker]
extras:
  - { name: Ladder, class: fit-out, cost: 300.00, mass: 4 kg, at: { x: 1 m, z: 0.5 m } }
`,
);
const ALL = [...byNumber, ['what is rare', RARE] as const];

describe('a quote as it is sealed', () => {
  it.each(ALL)('%s: its file gives the price that the order has', (_, figures) => {
    expect(changed(sentOf(figures), figures)).toEqual([]);
  });

  it.each(ALL)('%s: its file has nothing that the form does not name', (_, figures) => {
    const sealed = sealedOf(figures);
    expect(written(openIssued(sealed))).toEqual(sealed);
  });

  it('between them has every field that the form may leave out', () => {
    const names = new Set(ALL.flatMap(([, figures]) => namesIn(sealedOf(figures)['pricing'])));
    const optional = ['pack', 'buy', 'other', 'fixed', 'rework', 'rounding', 'nth'];
    for (const name of [...optional, 'discount', 'wage', 'amount', 'share', 'perOrder'])
      expect([...names]).toContain(name);
  });

  it('keeps every figure as figures.json has it', () => {
    expect(sealedOf(RARE)['figures']).toEqual(figuresData(RARE));
  });

  it('has none of the words that the program has for itself', () => {
    const { figures: _, view: __, ...asked } = sealedOf(RARE);
    const names = new Set(namesIn(asked));
    const own =
      'build place at mass kind group priceWithTax marginClass materialClass unitCost otherCost fixedPrice';
    for (const name of [...own.split(' '), 'scale', 'calculator', 'exponent', '$money', '$decimal'])
      expect([...names]).not.toContain(name);
  });

  it.each([
    ['another format', { format: 'orlop issued quote 3' }],
    ['no price', { price: undefined }],
    ['prices in another currency than its own', { currency: 'NZD' }],
    ['rows that are no list', { rows: {} }],
    ['a revision of none', { revision: 0 }],
  ])('is not read with %s', (_, change) => {
    expect(openIssued({ ...sealedOf(RARE), ...change })).toBeUndefined();
  });
});

describe('what a sent quote would cost today is not computed', () => {
  it('when the shop works in another currency now', () => {
    const currency = currencyOf('NZD');
    if (!currency) throw new Error('no currency');
    const today = { ...RARE, build: { ...RARE.build, currency } };
    expect(changed(sentOf(RARE), today)).toBe('the quote is in AUD, and prices now in NZD');
  });
  it('when a currency has no rate any more', () => {
    const abroad = byNumber.find(([, { build }]) =>
      build.items.some(({ parts }) => parts.some((one) => currencyCode(one.unitCost) === 'USD')),
    )?.[1];
    if (!abroad) throw new Error('no order has a part in USD');
    const today = { ...abroad, build: { ...abroad.build, exchange: {} } };
    expect(changed(sentOf(abroad), today)).toBe('there is no rate for USD');
  });
});
