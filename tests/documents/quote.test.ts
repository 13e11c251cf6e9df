import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Letter } from '../../src/documents/index.ts';
import { customerFigures } from '../../src/figures/index.ts';
import { quoteView } from '../../src/documents/quote/quote.ts';
import { parseIsoDate } from '../../src/units/index.ts';
import { minorUnits } from '../../src/money/index.ts';
import {
  factsOf,
  marksOf,
  methodsOf,
  panelOf,
  rowOf,
  rowsOf,
  saidIn,
  signersOf,
  underOf,
  wordsOf,
} from './letters.ts';
import { type Invented, inventedFigures, type InventedItem, SECRETS } from './invented-build.ts';

const quote = (wanted: Invented = {}): Letter =>
  quoteView(customerFigures(inventedFigures(wanted)), { fontCss: '' });

/** Cents of a printed amount: "−$1,250.05" gives -125005. Nothing printed gives nothing. */
function cents(printed: string): bigint {
  if (printed === '') return 0n;
  const [, minus, dollars, rest] = /^([−-]?)\$([\d,]+)\.(\d\d)$/.exec(printed) ?? [];
  if (dollars === undefined) throw new Error(`not an amount: ${printed}`);
  const amount = BigInt(dollars.replaceAll(',', '') + rest);
  return minus === '' ? amount : -amount;
}

/** @throws Error for what is no day */
function dayOf(text: string) {
  const day = parseIsoDate(text);
  if (!day) throw new Error(text);
  return day;
}

const total = (amounts: readonly string[]): bigint =>
  amounts.reduce((all, amount) => all + cents(amount), 0n);

const amountOf = (view: Letter, label: RegExp): string => rowOf(view, 'sums', label)[1] ?? '';

const itemsTotal = (view: Letter): bigint =>
  total(
    rowsOf(view, 'included')
      .filter(({ kind }) => kind !== 'includes')
      .map(({ kind, cells }) => saidIn(cells[kind === 'group' ? 1 : 2])),
  );

const finalPrice = (view: Letter): string => panelOf(view).value;

const money = (most: number) =>
  fc.integer({ min: 0, max: most }).map((value) => (value / 100).toFixed(2));
const option = fc.record<InventedItem>({
  kind: fc.constantFrom('option', 'extra', 'outboard', 'trailer'),
  group: fc.constantFrom('Seats', 'Electrical'),
  name: fc.constant('Thing'),
  price: money(2_000_000),
  quantity: fc.integer({ min: 1, max: 4 }),
});
const anyOrder = fc
  .record({
    items: fc.tuple(money(5_000_000), money(2_000_000), fc.array(option, { maxLength: 12 })),
    showPrices: fc.constantFrom('items', 'groups'),
    pricesInclude: fc.boolean(),
    taxRounding: fc.constantFrom('document', 'line'),
    taxRate: fc.constantFrom('0%', '10%', '15%', '7.25%'),
    charges: fc.array(money(50_000), { maxLength: 4 }),
    shares: fc.constantFrom(['100%'], ['10%', '40%', '50%'], ['33.3%', '33.3%', '33.4%']),
    discount: fc.option(fc.constantFrom({ share: '3%' }, { share: '12.5%' }, { amount: '199.99' })),
  })
  .map(({ items: [shell, structure, more], discount, ...rest }): Invented => ({
    ...rest,
    showPrices: rest.showPrices === 'items' ? 'items' : 'groups',
    taxRounding: rest.taxRounding === 'line' ? 'line' : 'document',
    items: [
      { kind: 'shell', group: 'Hull', name: 'Shell', price: shell },
      { kind: 'structure', group: 'Hull', name: 'Structure', price: structure },
      ...more,
    ],
    order: discount ? { discount: { ...discount, reason: 'Agreed' } } : {},
  }));

describe('the quote’s printed amounts', () => {
  it('add up to the cent, from the items to the drive-away price', () => {
    fc.assert(
      fc.property(anyOrder, (wanted) => {
        const view = quote(wanted);
        const off = cents(amountOf(view, /^Discount$/));
        const charges = total(
          rowsOf(view, 'sums')
            .map(({ cells }) => cells.map(saidIn))
            .flatMap(([label = '', amount = '']) => (label.startsWith('Charge ') ? [amount] : [])),
        );
        const boat = cents(amountOf(view, /^Boat and equipment with/));
        const tax = wanted.pricesInclude ? 0n : cents(amountOf(view, /^GST$/));
        expect(itemsTotal(view) + off + tax).toBe(boat);
        expect(boat + charges).toBe(cents(finalPrice(view)));
        const paid = rowsOf(view, 'payments').map(({ cells }) => saidIn(cells[1]));
        expect(total(paid.slice(0, -1))).toBe(cents(finalPrice(view)));
        expect(paid.at(-1)).toBe(finalPrice(view));
      }),
    );
  });

  it('are those of the figures, with tax or before it', () => {
    const figures = inventedFigures();
    const view = quoteView(customerFigures(figures), { fontCss: '' });
    expect(cents(finalPrice(view))).toBe(minorUnits(figures.price.driveAway));
    const before = quote({ pricesInclude: false });
    expect(itemsTotal(before)).toBe(minorUnits(figures.price.listPrice));
    expect(finalPrice(before)).toBe(finalPrice(view));
  });

  it('name the tax and the charges that the drive-away price has in it', () => {
    const [includes = ''] = panelOf(quote()).words;
    expect(includes).toContain('GST of $1,848.59');
    expect(includes).toContain('charges of $263.50');
    expect(panelOf(quote({ charges: [] })).words.join()).not.toContain('charges');
  });

  it('leave the items unpriced when the shop shows only the total', () => {
    const view = quote({ showPrices: 'total' });
    expect(itemsTotal(view)).toBe(0n);
    expect(JSON.stringify(view)).not.toContain('Price with GST');
    expect(JSON.stringify(quote())).toContain('Price with GST');
    expect(finalPrice(view)).toBe(finalPrice(quote()));
  });

  it('state a discount with its reason', () => {
    const view = quote({ order: { discount: { amount: '100.00', reason: 'Second boat' } } });
    expect(amountOf(view, /^Discount$/)).toBe('−$110.00');
    expect(underOf(view, 'sums', 'Discount')).toBe('Second boat');
  });
});

describe('the quote’s standing', () => {
  const kindOf = (order: Invented['order'] = {}) => {
    const view = quote({ order });
    return [panelOf(view).standing.kind, signersOf(view).length];
  };

  it('is a draft while there is no quote date, and nobody signs it', () => {
    expect(kindOf({ status: 'enquiry', dates: { enquiry: '2026-02-02' } })).toEqual(['draft', 0]);
  });

  it('is an offer once it is issued, until its last day, which it names; a draft before', () => {
    const view = quoteView(customerFigures(inventedFigures()), { fontCss: '', revision: 1 });
    const { standing } = panelOf(view);
    expect([standing.kind, signersOf(view).length]).toEqual(['offer', 2]);
    expect(standing.sentence).toContain('13 April 2026');
    expect(kindOf()).toEqual(['draft', 0]);
  });

  it('never says that a live figure is agreed', () => {
    const dates = { enquiry: '2026-02-02', quoted: '2026-03-14', accepted: '2026-03-20' };
    expect(kindOf({ status: 'building', dates })).toEqual(['draft', 0]);
  });

  it('is closed, and not to be signed, when the order is closed', () => {
    expect(kindOf({ status: 'closed' })).toEqual(['closed', 0]);
  });
});

describe('what the customer reads', () => {
  it('keeps groups in the order of the items and gives the hull one price', () => {
    const view = quote();
    const rows = rowsOf(view, 'included');
    const said = (row: (typeof rows)[number] | undefined) => row?.cells.map(saidIn);
    const groups = rows.filter(({ kind }) => kind === 'group').map((row) => said(row)?.[0]);
    expect(groups).toEqual(['Coot 400', 'Seats', 'Electrical', 'One-off items']);
    expect(said(rows[0])).toEqual(['Coot 400', '$19,030.16']);
    expect(rows[1]?.cells[1]).toMatchObject({
      list: ['Self-draining floor', 'Two rowlock sockets'],
    });
    expect(said(rows[3])?.[1]).toBe('2 × Bow seat');
  });

  it('leads from every rating and computed figure to who confirms it', () => {
    const view = quote();
    const methods = methodsOf(view);
    for (const { label, marks } of marksOf(view, 'figures').slice(2)) {
      for (const mark of marks.split(', ')) {
        const how = methods.find((one) => one.mark === mark)?.text;
        expect(`${label}: ${how}`).toMatch(/confirms? |Verify by|Check the plates/);
      }
    }
    const used = marksOf(view, 'figures').flatMap(({ marks }) => marks.split(', '));
    expect(new Set(used.filter((mark) => mark !== '')).size).toBe(methods.length);
  });

  it('names no method on page one, and prints what the customer said as theirs', () => {
    const view = quote();
    const { told, lead } = view;
    expect(JSON.stringify([factsOf(view, 'page-one'), panelOf(view), lead])).not.toMatch(
      /Savitsky|ISO|Archimedes|hydrostatic/,
    );
    expect(told).toBe('To sample shallow lakes.');
  });

  it('gives the day of delivery: as promised, else as the plan offers it, else none', () => {
    const delivery = {
      day: dayOf('2026-09-01'),
      asOf: dayOf('2026-03-14'),
      waits: [{ cause: 'mould', name: 'coot', hours: 90 }],
    } as const;
    const of = (wanted: Invented, offered?: typeof delivery) => {
      const view = quoteView(customerFigures(inventedFigures(wanted)), {
        fontCss: '',
        delivery: offered,
      });
      return factsOf(view, 'page-one')[0];
    };
    const promised = { dates: { enquiry: '2026-02-02', promised: '2026-08-01' } };
    expect(of({ order: promised }, delivery)).toMatchObject({ value: '1 August 2026' });
    expect(of({}, delivery)?.value).toBe('1 September 2026');
    expect(of({}, delivery)?.detail).toBe(
      'if you order now, by our plan of 14 March 2026; depends on a free {mould}',
    );
    expect(of({})?.value).toBe('to be agreed');
  });

  it('says so when outboard and trailer are not in the price', () => {
    expect(wordsOf(quote(), 'not-included', 'list')).toEqual(['An outboard', 'A trailer', 'Fuel']);
  });

  it('contains nothing that is for the yard only', () => {
    const text = JSON.stringify(quote());
    expect(SECRETS.filter((secret) => text.includes(secret))).toEqual([]);
  });

  it('never prints a value that is missing', () => {
    expect(JSON.stringify(quote())).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  });
});
