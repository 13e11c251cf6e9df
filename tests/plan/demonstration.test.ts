import { describe, expect, it } from 'vitest';
import type { FiguredOrder } from '../../src/figures/index.ts';
import {
  createCalendar,
  partNeedsOf,
  type Plan,
  type PlanInput,
  planOrderOf,
  planOrders,
  promiseAfter,
  purchaseList,
  type ShopPractice,
  type WorkCalendar,
} from '../../src/plan/index.ts';
import { STAGES } from '../../src/schema/index.ts';
import type { IsoDate } from '../../src/units/index.ts';
import {
  catalogue,
  figuresOf,
  footprintOf,
  hoursOf,
  loaded as workspace,
} from '../demonstration/workspace.ts';

const today = '2026-11-25' as IsoDate;
const one = (trade: string) => ({ trade, people: 1 });

/** Four people: invented, as the shop is. */
const practice: ShopPractice = {
  crews: {
    'mould-preparation': one('laminator'),
    gelcoat: { ...one('laminator') },
    laminate: { trade: 'laminator', people: 2 },
    infusion: { trade: 'laminator', people: 2 },
    release: { trade: 'laminator', people: 2 },
    'fit-out': one('fitter'),
    wiring: one('electrician'),
    engine: one('fitter'),
    trailer: one('fitter'),
    'water-trial': one('fitter'),
    handover: one('fitter'),
  },
  leadDays: {
    'tern-composites': 7,
    'mudlark-marine': 10,
    'redstart-electrical': 14,
    'sanderling-power': 35,
  },
};

const figured = (entry: FiguredOrder) =>
  entry.figures ? [{ ...entry, figures: entry.figures }] : [];
const entries = workspace.orders.flatMap(figured);
const withStatus = (...wanted: readonly string[]) =>
  entries.filter(({ order }) => wanted.includes(order.value.status));

const input: PlanInput = {
  calendar: {
    origin: today,
    workdays: [1, 2, 3, 4, 5],
    startsAt: 7,
    hoursADay: 8,
    holidays: ['2026-12-25', '2026-12-28', '2027-01-01'] as IsoDate[],
  },
  trades: { laminator: 2, fitter: 1, electrician: 1 },
  orders: withStatus('accepted', 'building').map((entry) => planOrderOf(entry, practice, today)),
  tries: 50,
};
const plan = planOrders(input) as Plan;

describe('the orders of the demonstration', () => {
  it('are planned from what is left of them: a hull out of its mould does not go back', () => {
    const building = input.orders.find(({ number }) => number === 'DC-2604');
    expect(building?.stages.map(({ id }) => id)).toEqual([
      'fit-out',
      'wiring',
      'engine',
      'trailer',
      'water-trial',
      'handover',
    ]);
    expect(building?.inMoulds).toBeUndefined();
    expect(building?.stages[0]?.after).toEqual([]);
  });

  it('start with their whole hours when nothing is worked yet', () => {
    const accepted = withStatus('accepted').map((entry) => ({
      planned: planOrderOf(entry, practice, today),
      hours: entry.figures.stageHours.length,
    }));
    expect(accepted.length).toBeGreaterThan(0);
    for (const { planned } of accepted) {
      expect(planned.stages).toHaveLength(12);
      expect(planned.stages.find(({ id }) => id === 'cure')).toMatchObject({
        hours: 48,
        passes: 'always',
      });
    }
  });

  it('can be planned, all of them, and the quoted ones be promised a day after those', () => {
    expect(plan.refused).toEqual([]);
    expect(plan.orders).toHaveLength(input.orders.length);
    const promises = withStatus('quoted').map((entry) =>
      promiseAfter(plan, input, planOrderOf(entry, practice, today), 5),
    );
    expect(promises.length).toBeGreaterThan(0);
    for (const promise of promises) {
      expect('promise' in promise && promise.promise > today).toBe(true);
    }
  });

  it('buy from every supplier what the stages still to come take, and nothing twice', () => {
    const accepted = withStatus('accepted', 'building');
    const needs = accepted.flatMap(({ figures }) => partNeedsOf(figures));
    const calendar = createCalendar(input.calendar) as WorkCalendar;
    const lists = purchaseList(plan, needs, practice.leadDays, calendar, today);
    expect(lists.map(({ supplier }) => supplier)).toEqual([
      'mudlark-marine',
      'one-off',
      'redstart-electrical',
      'sanderling-power',
      'tern-composites',
    ]);
    for (const { lines } of lists) {
      const keys = lines.map(({ code, needBy }) => `${needBy} ${code}`);
      expect(new Set(keys).size).toBe(keys.length);
      expect(lines.every(({ needBy, orderBy }) => orderBy <= needBy && needBy >= today)).toBe(true);
    }
  });
});

it.each([...catalogue.hulls.keys()])(
  'a hull takes 6 to 13 hours in and round the mould a square metre of length times beam (common practice, no source): %s',
  (hull) => {
    const figures = figuresOf(hull);
    const moulding = STAGES.slice(0, STAGES.indexOf('fit-out'));
    const each = hoursOf(figures, ...moulding) / footprintOf(figures.build.hull);
    expect(each).toBeGreaterThan(6);
    expect(each).toBeLessThan(13);
  },
);
