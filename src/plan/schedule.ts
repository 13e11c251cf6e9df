import { daysBetween } from '../units/index.ts';
import type { WorkCalendar } from './calendar.ts';
import { emptyShop, placeOrder, type Shop } from './place-order.ts';
import type { PlannedOrder, PlannedStage, PlanInput, PlanOrder, PlanStage, Wait } from './types.ts';

/** One order and the sequence in which its stages are placed. */
export interface Placement {
  readonly order: PlanOrder;
  readonly stages: readonly PlanStage[];
}

export interface Schedule {
  readonly shop: Shop;
  readonly orders: readonly PlannedOrder[];
  /** Orders that are in a mould which another holds. */
  readonly shutOut: readonly PlanOrder[];
}

/**
 * Serial schedule generation: orders one after the other, each stage at the earliest moment that is left.
 *
 * @param placements - orders in the sequence of their priority
 * @source Kelley (1963); Kolisch and Hartmann in Weglarz (ed.), Project Scheduling (1999): serial schedule generation.
 * For one project, some sequence of stages leads to a shortest schedule
 */
export function scheduleInSequence(
  placements: readonly Placement[],
  calendar: WorkCalendar,
  trades: PlanInput['trades'],
): Schedule {
  const shop = emptyShop(calendar, trades);
  const orders: PlannedOrder[] = [];
  const shutOut: PlanOrder[] = [];
  for (const { order, stages } of placements) {
    const planned = placeOrder(shop, order, stages);
    if (planned) orders.push(summarise(order, planned, calendar));
    else shutOut.push(order);
  }
  return { shop, orders, shutOut };
}

/** What one order's stages come to: its start, end, lateness and what binds. */
export function summarise(
  order: PlanOrder,
  stages: readonly PlannedStage[],
  calendar: WorkCalendar,
): PlannedOrder {
  const release = Math.max(0, calendar.hourOf(order.release));
  const end = stages.reduce((latest, one) => Math.max(latest, one.end), release);
  const start = stages.reduce((first, one) => Math.min(first, one.start), end);
  const finishes = calendar.dateOf(end);
  return {
    order,
    stages,
    start,
    end,
    finishes,
    ...(order.promised && { daysLate: daysBetween(order.promised, finishes) }),
    binds: whatBinds(stages),
  };
}

/** Waits along the chain that sets the end: from the last stage back through each stage's last predecessor. */
function whatBinds(stages: readonly PlannedStage[]): readonly Wait[] {
  const waits: Wait[] = [];
  let at = lastToEnd(stages);
  while (at) {
    waits.push(...at.waits);
    const { after } = at.stage;
    at = lastToEnd(stages.filter(({ stage: { id } }) => after.includes(id)));
  }
  const sums = new Map<string, Wait>();
  for (const wait of waits) {
    const key = `${wait.cause} ${wait.name}`;
    sums.set(key, { ...wait, hours: wait.hours + (sums.get(key)?.hours ?? 0) });
  }
  return [...sums.values()].toSorted((a, b) => b.hours - a.hours);
}

function lastToEnd(stages: readonly PlannedStage[]): PlannedStage | undefined {
  return stages.reduce<PlannedStage | undefined>(
    (last, one) => (last && last.end >= one.end ? last : one),
    undefined,
  );
}
