import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Plan, planOrders, promiseAfter } from '../../src/plan/index.ts';
import { anyShop, day, faultsOf, order, shop, stage } from './shop.ts';

const EMPTY: Plan = { orders: [], moulds: [], refused: [], tries: -1, sequence: [] };
const planned = (input: Parameters<typeof planOrders>[0]): Plan => {
  const plan = planOrders(input);
  return 'notComputed' in plan ? EMPTY : plan;
};

const inMould = (hours: number) => [
  stage('laminate', hours, { mould: 'dunlin mould', crew: [{ trade: 'laminator', people: 1 }] }),
  stage('cure', 48, { mould: 'dunlin mould', passes: 'always', after: ['laminate'] }),
];

describe('a plan of any orders', () => {
  it('puts no two orders in one mould, no stage before its predecessor, nobody at two places', () => {
    fc.assert(
      fc.property(anyShop, (input) => {
        const plan = planned(input);
        expect(plan.refused).toEqual([]);
        expect(plan.orders).toHaveLength(input.orders.length);
        expect(faultsOf(plan, input)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('is never made worse by more tries, and tries no more than it may', () => {
    fc.assert(
      fc.property(anyShop, (input) => {
        const late = (plan: Plan): number =>
          plan.orders.reduce((sum, { daysLate = 0 }) => sum + Math.max(0, daysLate), 0);
        const rule = planned({ ...input, tries: 0 });
        const searched = planned({ ...input, tries: 25 });
        expect(rule.tries).toBe(0);
        expect(searched.tries).toBeLessThanOrEqual(25);
        expect(late(searched)).toBeLessThanOrEqual(late(rule));
      }),
      { numRuns: 30 },
    );
  });

  it('is the same each time', () => {
    fc.assert(
      fc.property(anyShop, (input) => {
        expect(planOrders(input)).toEqual(planOrders(input));
      }),
      { numRuns: 20 },
    );
  });
});

const promised = (
  input: Parameters<typeof planOrders>[0],
  wanted: Parameters<typeof promiseAfter>[2],
  days: number,
) => promiseAfter(planned(input), input, wanted, days);

describe('a date to promise', () => {
  it('moves none of the planned orders, and clashes with none', () => {
    fc.assert(
      fc.property(anyShop, (input) => {
        const [asked, ...accepted] = input.orders;
        const wanted = order('new', asked?.stages ?? [], { release: day(0) });
        const before = { ...input, orders: accepted };
        const promise = promised(before, wanted, 5);
        const added = 'planned' in promise ? [promise.planned] : [];
        expect(added).toHaveLength(1);
        expect(faultsOf({ orders: [...planned(before).orders, ...added] }, before)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps days in hand and tells what binds', () => {
    const promise = promised(shop([order('2611', inMould(8))]), order('new', inMould(8)), 3);
    expect(promise).toMatchObject({
      promise: day(8),
      planned: { finishes: day(5), binds: [{ cause: 'mould', name: 'dunlin mould', hours: 63 }] },
    });
  });

  it('is not given for an order that cannot be planned', () => {
    expect(promised(shop([]), order('new', [stage('a', 1, { after: ['b'] })]), 0)).toEqual({
      notComputed: 'a: waits for b, which is not a stage of the order',
    });
    const held = order('2611', inMould(8), { inMoulds: ['dunlin mould'] });
    const alsoHeld = order('new', inMould(8), { inMoulds: ['dunlin mould'] });
    expect(promised(shop([held]), alsoHeld, 0)).toHaveProperty('notComputed');
  });
});

describe('the rule', () => {
  it('places the sooner promised first, the unpromised last, and who is in a mould before all', () => {
    const plan = planned(
      shop([
        order('none', inMould(8)),
        order('later', inMould(8), { promised: day(50) }),
        order('sooner', inMould(8), { promised: day(40) }),
        order('begun', inMould(8), { inMoulds: ['dunlin mould'] }),
      ]),
    );
    expect(plan.sequence).toEqual(['begun', 'sooner', 'later', 'none']);
    expect(plan.moulds.map(({ order: number }) => number)).toEqual(plan.sequence);
    expect(plan.moulds[0]?.start).toBe(0);
  });

  it('lets a cure run through the night and the weekend, and work rest', () => {
    const friday = day(4);
    const [one] = planned(shop([order('2611', inMould(8), { release: friday })])).orders;
    expect(one?.stages.map(({ start, end }) => [start, end])).toEqual([
      [4 * 24 + 7, 4 * 24 + 15],
      [4 * 24 + 15, 6 * 24 + 15],
    ]);
    expect(one?.finishes).toBe(day(6));
  });

  it('keeps the mould while the order waits in it', () => {
    const slow = order('slow', [
      stage('gelcoat', 4, { mould: 'teal mould' }),
      stage('laminate', 4, {
        mould: 'teal mould',
        after: ['gelcoat'],
        parts: [{ name: 'core', arrives: day(9) }],
      }),
    ]);
    const plan = planned(
      shop([slow, order('next', [stage('gelcoat', 4, { mould: 'teal mould' })])]),
    );
    expect(plan.moulds).toEqual([
      { mould: 'teal mould', order: 'slow', start: 7, end: 9 * 24 + 11 },
      { mould: 'teal mould', order: 'next', start: 9 * 24 + 11, end: 9 * 24 + 15 },
    ]);
    expect(plan.orders[0]?.binds).toEqual([{ cause: 'part', name: 'core', hours: 9 * 24 - 11 }]);
  });

  it('names the trade that an order waits for, and how late it makes it', () => {
    const fitting = [stage('fit-out', 16, { crew: [{ trade: 'fitter', people: 1 }] })];
    const plan = planned(
      shop([
        order('2611', fitting, { promised: day(1) }),
        order('2612', fitting, { promised: day(2) }),
      ]),
    );
    expect(plan.orders.map(({ daysLate }) => daysLate)).toEqual([0, 1]);
    expect(plan.orders[1]?.binds).toMatchObject([{ cause: 'trade', name: 'fitter' }]);
  });

  it('refuses, with a reason, what can never be planned, and plans the rest', () => {
    const bad = [
      order('circle', [stage('a', 1, { after: ['b'] }), stage('b', 1, { after: ['a'] })]),
      order('twice', [stage('a', 1), stage('a', 1)]),
      order('crowd', [stage('a', 1, { crew: [{ trade: 'fitter', people: 2 }] })]),
      order('no such trade', [stage('a', 1, { crew: [{ trade: 'painter', people: 1 }] })]),
      order('long sitting', [stage('a', 9, { oneSitting: true })]),
      order('endless', [stage('a', Number.POSITIVE_INFINITY)]),
      order('no hours', [stage('a', Number.NaN)]),
      order('never out', [stage('a', 1)], { inMoulds: ['teal mould'] }),
    ];
    const plan = planned(shop([...bad, order('sound', [stage('a', 1)])]));
    expect(plan.refused.map(({ order: { number } }) => number)).toEqual(
      bad.map(({ number }) => number),
    );
    expect(plan.orders.map(({ order: { number } }) => number)).toEqual(['sound']);
    expect(
      planOrders(shop([], { calendar: { ...shop([]).calendar, workdays: [] } })),
    ).toHaveProperty('notComputed');
  });

  it('refuses the second of two orders that claim to be in one mould', () => {
    const both = ['one', 'two'].map((number) =>
      order(number, inMould(8), { inMoulds: ['dunlin mould'] }),
    );
    expect(planned(shop(both)).refused).toMatchObject([{ order: { number: 'two' } }]);
  });

  it('plans an order without stages as over on its first day, and an empty shop as nothing', () => {
    expect(planned(shop([order('done', [], { release: day(3) })])).orders).toMatchObject([
      { stages: [], finishes: day(2) },
    ]);
    expect(planned(shop([])).orders).toEqual([]);
  });
});
