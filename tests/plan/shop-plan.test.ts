import { describe, expect, it } from 'vitest';
import {
  isDue,
  NO_SUPPLIER,
  overviewOrders,
  partNeedsOf,
  planShop,
  type ShopPlan,
} from '../../src/plan/index.ts';
import type { Order, Yard } from '../../src/schema/index.ts';
import {
  addDays,
  addDecimals,
  daysBetween,
  type Decimal,
  type IsoDate,
  multiplyDecimals,
  parseDecimal,
  ZERO,
} from '../../src/units/index.ts';
import { catalogue, orders } from '../demonstration/workspace.ts';

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
  const { orders: states } = overviewOrders(entries, shop.quoteDays, today, {
    plan: planned(entries, shop),
  });
  return states.map(({ findings }) => findings.map(({ code }) => code));
}

/** The yard with so many people at the laminate. */
function laminating(people: number): Yard {
  const { laminate } = yard.stages;
  if (!laminate) throw new Error('the yard has no laminate');
  return { ...yard, stages: { ...yard.stages, laminate: { ...laminate, people } } };
}

/** The first accepted order alone, promised on a day. */
function promised(day: IsoDate): typeof orders {
  return accepted.slice(0, 1).map((entry) => {
    const { order } = entry;
    const value = { ...order.value, dates: { ...order.value.dates, promised: day } };
    return { ...entry, order: { ...order, value } };
  });
}

/** The first accepted order alone, with these parts ordered. */
function withBought(bought: Order['bought']): typeof orders {
  return accepted.slice(0, 1).flatMap(({ figures, ...entry }) => {
    if (!figures) return [];
    const value = { ...entry.order.value, bought };
    const build = { ...figures.build, order: { ...figures.build.order, bought } };
    return [{ ...entry, order: { ...entry.order, value }, figures: { ...figures, build } }];
  });
}

describe('the plan of a shop', () => {
  it('refuses an order whose stage takes more people than the trade has: PLAN_REFUSED', () => {
    const { trade = '' } = yard.stages.laminate ?? {};
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

  it('warns of parts when tomorrow is too late to order them, and not while it is early enough: ORDER_PART_NOW', () => {
    const [found] = codes(withBought([]), yard);
    expect(found).toContain('ORDER_PART_NOW');
    const all = Object.keys(yard.suppliers).map((supplier) => ({ supplier, date: today }));
    expect(codes(withBought(all), yard)[0]).not.toContain('ORDER_PART_NOW');
    const { calendar } = planned(accepted, yard);
    const due = (orderBy: string) => isDue({ orderBy: orderBy as IsoDate }, { calendar, today });
    expect(due('2026-11-25')).toBe(true);
    expect(due('2026-11-26')).toBe(false);
  });

  it('waits over a weekend: on a Friday what Monday needs ordered is early enough, what Sunday needs is not', () => {
    const friday = '2026-11-27' as IsoDate;
    const plan = planShop(accepted, yard, friday);
    if ('notComputed' in plan) throw new Error(plan.notComputed);
    const due = (orderBy: string) => isDue({ orderBy: orderBy as IsoDate }, plan);
    expect([due('2026-11-29'), due('2026-11-30')]).toEqual([true, false]);
  });

  it('waits for parts until the day that the order says they come', () => {
    const suppliers = Object.keys(yard.suppliers);
    const startOf = (arrives: string) => {
      const bought = suppliers.map((supplier) => ({
        supplier,
        date: today,
        arrives: arrives as IsoDate,
      }));
      const [days] = planned(withBought(bought), yard).orders;
      return days?.stages.get('mould-preparation')?.starts;
    };
    expect(startOf('2027-02-01')).toBe('2027-02-01');
    expect(startOf('2026-11-25')).toBe('2026-11-25');
  });

  it('waits for no supplier of what the shelf holds in full: one rule for plan, promise and purchases', () => {
    const stocked = (share: string): typeof orders =>
      withBought([]).flatMap(({ figures, ...entry }) => {
        if (!figures) return [];
        const held = new Map<string, Decimal>();
        for (const { code, quantity } of partNeedsOf(figures)) {
          const some = multiplyDecimals(quantity, parseDecimal(share) ?? ZERO);
          held.set(code, addDecimals(held.get(code) ?? ZERO, some));
        }
        const stock = { counted: today, held };
        return [{ ...entry, figures: { ...figures, build: { ...figures.build, stock } } }];
      });
    const full = planned(stocked('1'), yard);
    const short = planned(stocked('0.999'), yard);
    const startOf = ({ orders: [days] }: ShopPlan) => days?.stages.get('mould-preparation')?.starts;
    expect(startOf(full)).toBe(today);
    expect((startOf(short) ?? '') > today).toBe(true);
    const bought = ({ purchases }: ShopPlan) =>
      purchases.filter(({ supplier }) => supplier !== NO_SUPPLIER);
    expect(bought(full)).toEqual([]);
    expect(bought(short).length).toBeGreaterThan(2);
    const offered = (entries: typeof orders) =>
      planned(
        entries.map((entry) => ({
          ...entry,
          order: { ...entry.order, value: { ...entry.order.value, status: 'quoted' as const } },
        })),
        yard,
      ).offers.map((offer) => ('promise' in offer ? offer.days.starts : ''));
    expect(offered(stocked('1'))).toEqual([today]);
    expect((offered(stocked('0.999'))[0] ?? '') > today).toBe(true);
  });

  it('takes the line that names a part before the one that names its supplier only', () => {
    const line = { supplier: 'tern-composites', date: today };
    const bought = [
      { ...line, arrives: '2026-11-26' as IsoDate },
      { ...line, arrives: '2027-02-01' as IsoDate, parts: ['TC-0201-GR'] },
    ];
    const [days] = planned(withBought(bought), yard).orders;
    expect(days?.stages.get('gelcoat')?.starts).toBe('2027-02-01');
    expect(days?.stages.get('mould-preparation')?.starts).toBe('2026-11-26');
  });

  it('keeps two hulls that share a mould out of each other’s way', () => {
    const begin = accepted.slice(0, 1).flatMap((entry) => (entry.figures ? [entry] : []));
    const other = begin.map(({ order, figures, ...rest }) => {
      const build = figures && {
        ...figures.build,
        hull: { ...figures.build.hull, id: 'other', mouldOf: figures.build.hull.id },
      };
      const value = { ...order.value, number: 'X-1', hull: 'other' };
      return {
        ...rest,
        order: { ...order, value },
        ...(figures && build && { figures: { ...figures, build } }),
      };
    });
    const { moulds } = planned([...begin, ...other], yard).plan;
    expect(moulds).toHaveLength(2);
    const [first, second] = moulds.toSorted((a, b) => a.start - b.start);
    expect(first?.mould).toBe(second?.mould);
    expect((second?.start ?? 0) >= (first?.end ?? 1)).toBe(true);
  });

  it('has only the handover left of a boat that is ready, and nothing to buy for it', () => {
    const ready = orders.filter(({ order }) => order.value.status === 'ready');
    expect(ready.length).toBeGreaterThan(0);
    const plan = planned(ready, yard);
    for (const { stages } of plan.orders) expect([...stages.keys()]).toEqual(['handover']);
    expect(plan.purchases).toEqual([]);
  });

  it('promises a day of work, with the days in hand after the planned finish', () => {
    const { offers, calendar } = planned(orders, yard);
    expect(offers.length).toBeGreaterThan(2);
    for (const offer of offers) {
      if ('notComputed' in offer) throw new Error(offer.notComputed);
      const least = addDays(offer.days.ends, yard.daysInHand);
      expect(offer.promise >= least).toBe(true);
      const midnight = calendar.hourOf(offer.promise);
      expect(calendar.nextWork(midnight)).toBeLessThan(midnight + 24);
      expect(daysBetween(least, offer.promise)).toBeLessThanOrEqual(20);
    }
  });

  it('moves no accepted order when offers come and go', () => {
    const building = orders.filter(({ order }) =>
      ['accepted', 'building', 'ready'].includes(order.value.status),
    );
    expect(planned(orders, yard).plan).toEqual(planned(building, yard).plan);
  });
});
