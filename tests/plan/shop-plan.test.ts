import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { loadWorkspace } from '../../src/cli/load.ts';
import { overviewOrders, planShop, type ShopPlan } from '../../src/plan/index.ts';
import type { Yard } from '../../src/schema/index.ts';
import { addDays, type IsoDate } from '../../src/units/index.ts';

const { orders, catalogue } = loadWorkspace(fileURLToPath(new URL('../../', import.meta.url)));
const yard = catalogue?.yard.value ?? expect.fail('the demonstration has a yard');
const today = '2026-11-25' as IsoDate;
const accepted = orders.filter(({ order }) => order.value.status === 'accepted');

function planned(entries: typeof orders, shop: Yard): ShopPlan {
  const plan = planShop(entries, shop, today);
  if ('notComputed' in plan) throw new Error(plan.notComputed);
  return plan;
}

/** The codes that the plan finds, by order. */
function codes(entries: typeof orders, shop: Yard): readonly (readonly string[])[] {
  const { orders: states } = overviewOrders(
    entries,
    shop.quoteDays,
    today,
    new Map(),
    planned(entries, shop),
  );
  return states.map(({ findings }) => findings.map(({ code }) => code));
}

/** The yard with so many people at the laminate. */
const laminating = (people: number): Yard => ({
  ...yard,
  stages: { ...yard.stages, laminate: { ...yard.stages.laminate, people } },
});

/** The first accepted order alone, promised on a day. */
function promised(day: IsoDate): typeof orders {
  return accepted.slice(0, 1).map((entry) => {
    const { order } = entry;
    const value = { ...order.value, dates: { ...order.value.dates, promised: day } };
    return { ...entry, order: { ...order, value } };
  });
}

describe('the plan of a shop', () => {
  it('refuses an order whose stage takes more people than the trade has: PLAN_REFUSED', () => {
    const { trade = '' } = yard.stages.laminate;
    const people = yard.trades[trade]?.people ?? 0;
    expect(accepted.length).toBeGreaterThan(0);
    expect(people).toBeGreaterThan(0);
    for (const found of codes(accepted, laminating(people + 1)))
      expect(found).toContain('PLAN_REFUSED');
    for (const found of codes(accepted, laminating(people)))
      expect(found).not.toContain('PLAN_REFUSED');
  });

  it('is late when it ends the day after the promise, not on the day: PLAN_LATE', () => {
    const alone = accepted.slice(0, 1);
    const ends = planned(alone, yard).orders[0]?.ends ?? today;
    expect(ends > today).toBe(true);
    expect(codes(promised(ends), yard)[0]).not.toContain('PLAN_LATE');
    expect(codes(promised(addDays(ends, -1)), yard)[0]).toContain('PLAN_LATE');
  });
});
