import { addDays, type IsoDate, type NotComputed } from '../units/index.ts';
import { createCalendar } from './calendar.ts';
import { localSearch } from './local-search.ts';
import { criticalPathFirst, whyRefused } from './network.ts';
import { placeOrder, shopAsPlanned } from './place-order.ts';
import { type Placement, summarise } from './schedule.ts';
import type { Plan, PlanInput, PlannedOrder, PlanOrder } from './types.ts';

/**
 * A feasible schedule of all orders: no two in one mould, no stage before its predecessors or its parts, never more
 * people of a trade than there are.
 *
 * Orders that are in a mould come first, then by promised day, those without a promise last; each is placed whole, its
 * stages with the longest way to the end first (serial schedule generation). `tries` further sequences are then tried
 * and the best is kept.
 *
 * @returns the plan; `notComputed` when the calendar has no working time
 * @source the rule: Kolisch and Hartmann in Weglarz (ed.), Project Scheduling (1999); promise first is common practice
 */
export function planOrders(input: PlanInput): Plan | NotComputed {
  const calendar = createCalendar(input.calendar);
  if ('notComputed' in calendar) return calendar;
  const judged = input.orders.map((order) => ({
    order,
    reason: whyRefused(order, input.trades, calendar),
  }));
  const start = judged
    .flatMap(({ order, reason }): readonly Placement[] =>
      reason === undefined ? [{ order, stages: criticalPathFirst(order) }] : [],
    )
    .toSorted((a, b) => rankOf(a.order).localeCompare(rankOf(b.order)));
  const fixed = start.filter(({ order }) => isInMould(order)).length;
  const { placements, schedule, tries } = localSearch(
    start,
    calendar,
    input.trades,
    fixed,
    input.tries,
  );
  const refused = judged.flatMap(({ order, reason }) =>
    reason === undefined ? [] : [{ order, reason }],
  );
  const shutOut = schedule.shutOut.map((order) => ({
    order,
    reason: 'it is in a {mould} that another order is in too',
  }));
  return {
    orders: schedule.orders,
    moulds: [...schedule.shop.holds],
    refused: [...refused, ...shutOut],
    tries,
    sequence: placements.map(({ order }) => order.number),
  };
}

/** A day that can be promised, and why it is not earlier. */
export interface DatePromise {
  readonly planned: PlannedOrder;
  /** The planned finish and the days kept in hand, or the first day of work after them. */
  readonly promise: IsoDate;
}

/**
 * The day that can be promised for a new order: it takes what the planned orders leave and moves none of them.
 *
 * @param plan - made of the same calendar and trades
 * @param daysInHand - calendar days added to the planned finish; the promise is the next day of work from there
 * @returns the promise; `notComputed` when the order cannot be planned
 */
export function promiseAfter(
  plan: Plan,
  input: Pick<PlanInput, 'calendar' | 'trades'>,
  order: PlanOrder,
  daysInHand: number,
): DatePromise | NotComputed {
  const calendar = createCalendar(input.calendar);
  if ('notComputed' in calendar) return calendar;
  const reason = whyRefused(order, input.trades, calendar);
  if (reason !== undefined) return { notComputed: reason };
  const stages = placeOrder(
    shopAsPlanned(plan, calendar, input.trades),
    order,
    criticalPathFirst(order),
  );
  if (!stages) return { notComputed: 'its {mould} is held by another order' };
  const planned = summarise(order, stages, calendar);
  const inHand = calendar.hourOf(addDays(planned.finishes, daysInHand));
  // A moment after its midnight: midnight itself belongs to the day before.
  const promise = calendar.dateOf(calendar.nextWork(inHand) + 1e-6);
  return { planned, promise };
}

const isInMould = ({ inMoulds }: PlanOrder): boolean => (inMoulds?.length ?? 0) > 0;

/** Text that sorts as the rule has it; dates sort as text. */
const rankOf = (order: PlanOrder): string =>
  `${isInMould(order) ? 0 : 1} ${order.promised ?? '9999-12-31'}`;
