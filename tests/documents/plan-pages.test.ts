import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { csvText } from '../../src/documents/yard/csv.ts';
import { indexView, orderPageView } from '../../src/documents/index.ts';
import { planPageView } from '../../src/documents/yard/plan-page.ts';
import { purchasesCsv, purchasesView } from '../../src/documents/yard/purchases.ts';
import { overviewOrders, planShop, type ShopPlan } from '../../src/plan/index.ts';
import { type IsoDate, parseDecimal, ZERO } from '../../src/units/index.ts';
import { cellsOf, picturesOf, rowOf, rowsOf, saidBy, wordsOf } from './letters.ts';
import { loaded } from '../demonstration/workspace.ts';

const TODAY = '2026-11-26' as IsoDate;
const yard = loaded.catalogue?.yard.value ?? expect.fail('the demonstration has a yard');
const made = planShop(loaded.orders, yard, TODAY);
const plan: ShopPlan = 'notComputed' in made ? expect.fail(made.notComputed) : made;
const overview = overviewOrders(loaded.orders, yard.quoteDays, TODAY, plan ? { plan } : {});
const across = { plan, overview, yard };

const csvRows = (text: string): readonly Readonly<Record<string, string>>[] =>
  parse(text, { columns: true, record_delimiter: '\r\n' });

/** A plan whose only purchases are these, in this order. */
const buying = (lines: readonly (readonly [string, string])[]): ShopPlan => ({
  ...plan,
  purchases: [
    {
      supplier: 'tern-composites',
      lines: lines.map(([code, quantity], index) => ({
        code,
        quantity: parseDecimal(quantity) ?? ZERO,
        needBy: `2027-01-0${index + 1}` as IsoDate,
        orderBy: `2026-12-2${index + 1}` as IsoDate,
        late: false,
        orders: ['DC-2605'],
      })),
    },
  ],
});

describe('the page of the plan', () => {
  const view = planPageView({ ...across, fontCss: '' });

  it('has a row for every order that is planned, and flags those that are late and no other', () => {
    const late = plan.orders.filter(({ daysLate = 0 }) => daysLate > 0);
    expect(late.length).toBeGreaterThan(0);
    expect(rowsOf(view, 'orders').map(({ cells }) => cells[0])).toEqual(
      plan.orders.map(({ number }) => number),
    );
    const flagged = rowsOf(view, 'orders').filter(({ kind }) => kind === 'flag');
    expect(flagged.map(({ cells }) => cells[0])).toEqual(late.map(({ number }) => number));
  });

  it('draws every accepted order and every offer, with the day that can be promised', () => {
    const [chart] = picturesOf(view, 'chart');
    for (const { number } of [...plan.orders, ...plan.offers]) expect(chart?.alt).toContain(number);
    const svg = decodeURIComponent(chart?.src ?? '');
    expect(svg).toContain('If accepted today');
    for (const { number } of plan.offers) expect(svg).toContain(number);
  });

  it('answers what can be promised for every enquiry and quote', () => {
    expect(rowsOf(view, 'offers').map(({ cells }) => cells[0])).toEqual([
      'DC-2606',
      'DC-2608',
      'DC-2609',
    ]);
    for (const { cells } of rowsOf(view, 'offers')) expect(cells[3]).toMatch(/^\d+ \w+ 2027$/);
  });

  it('tells in words every order, its dates and who is in which mould', () => {
    const alt = picturesOf(view, 'chart')[0]?.alt ?? '';
    for (const { number } of plan.orders) expect(alt).toContain(number);
    expect(alt).toContain('DC-2605 is in the {mould} of the Curlew 560 from 26 November 2026');
    expect(alt).toContain('promised for 20 November 2026');
  });

  it('says why when there is no plan', () => {
    const without = planPageView({ ...across, plan: { notComputed: 'nobody works' }, fontCss: '' });
    expect(without.parts.map(saidBy)).toEqual(['not computed: nobody works']);
  });
});

describe('the plan on other pages', () => {
  it('stands on the index beside the promise, late orders said to be late', () => {
    const index = indexView({
      ...across,
      fontCss: '',
      findings: [],
      sources: new Map(),
      unread: [],
      documents: new Map(),
    });
    expect(rowOf(index, 'plan', 'DC-2604').slice(3, 5)).toEqual([
      '20 November 2026',
      expect.stringMatching(/^\d+ days late$/),
    ]);
    const flagged = rowsOf(index, 'plan').filter(({ cells }) =>
      cells.some((cell) => typeof cell === 'object' && cell.flag !== undefined),
    );
    expect(flagged.map(cellsOf).map(([number]) => number)).toEqual(['DC-2604']);
  });

  it('stands on the page of the order stage by stage, and is said to be none where it is none', () => {
    const planOf = (number: string) => {
      const state = overview.orders.find(({ entry }) => entry.order.value.number === number);
      const page = state && orderPageView(state, '');
      if (!page) throw new Error(`${number} has no page`);
      return page;
    };
    const stages = plan.orders.find(({ number }) => number === 'DC-2605')?.stages.size ?? 0;
    expect(stages).toBeGreaterThan(1);
    // She has no trailer: a stage without work has no line.
    const rows = rowsOf(planOf('DC-2605'), 'plan');
    expect(rows).toHaveLength(stages - 1);
    expect(rows.map(({ cells }) => cells[0])).not.toContain('Trailer');
    expect(rows.map(({ cells }) => cells[0])).toContain('Engine');
    expect(wordsOf(planOf('DC-2609'), 'plan')[0]).toContain('Not in the plan');
  });
});

describe('the purchases', () => {
  it('are the same on the page and in the data', () => {
    const view = purchasesView(across);
    const suppliers = view.parts.filter(({ id }) => id !== 'shelf');
    const onPage = suppliers.flatMap(({ id }) => rowsOf(view, id));
    const data = csvRows(purchasesCsv(across));
    expect(data.length).toBeGreaterThan(20);
    expect(data.map(({ code }) => code)).toEqual(onPage.map(({ cells }) => cells[0]));
  });

  it('leave out what the order calls bought, and keep the resin that it does not', () => {
    const codes = csvRows(purchasesCsv(across)).map(({ code }) => code);
    expect(codes).toContain('TC-0101');
    expect(codes).not.toContain('TC-0415');
  });

  it('buy what the shelf does not hold, and say what it does', () => {
    const rows = csvRows(purchasesCsv(across));
    const resin = rows.filter(({ code }) => code === 'TC-0101');
    const taken = rowOf(purchasesView(across), 'shelf', 'TC-0101');
    // A Curlew takes 44.9 kg and 8 % wastage; 14 kg lie on the shelf.
    expect(taken[2]).toBe('14 kg');
    expect(resin.map(({ quantity }) => quantity)).toEqual(['34.5']);
  });

  it('name a one-off item that has only a cost', () => {
    const rows = csvRows(purchasesCsv(across));
    expect(rows.filter(({ supplier }) => supplier === 'one-off')).toMatchObject([
      { code: 'DC-2605/1', description: 'Line reel bracket by the tow post', quantity: '1' },
    ]);
  });

  it('buy whole pieces and packs of all lines together, not of each', () => {
    const bought = csvRows(
      purchasesCsv({
        ...across,
        plan: buying([
          ['TC-0601', '2.4'],
          ['TC-0601', '0.5'],
          ['TC-0601', '0.2'],
          ['TC-0102', '12'],
          ['TC-0102', '7.999'],
          ['TC-0102', '0.002'],
        ]),
      }),
    );
    expect(bought.map(({ quantity }) => quantity)).toEqual(['3', '0', '1', '12', '8', '0.01']);
    expect(bought.map(({ packs }) => packs)).toEqual(['', '', '', '1', '0', '1']);
  });

  it('are the head alone when nothing is left to order', () => {
    const nothing = { ...across, plan: { ...plan, purchases: [] } };
    expect(purchasesCsv(nothing).split('\r\n')).toHaveLength(2);
    expect(purchasesView(nothing).parts.map(saidBy)[0]).toBe('Nothing is left to order.');
  });
});

it('a table as text is read back as it was, whatever stands in its fields', () => {
  const rows = [
    ['plain', 'a,b', 'say "so"'],
    ['two\r\nlines', '', ' spaced '],
  ];
  expect(csvText(rows)).toBe('plain,"a,b","say ""so"""\r\n"two\r\nlines",, spaced \r\n');
  expect(parse(csvText(rows), { record_delimiter: '\r\n' })).toEqual(rows);
});
