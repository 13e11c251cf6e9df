import type { Decimal, NotComputed } from '../units/index.ts';
import type { WorkCalendar } from './calendar.ts';
import { type DatePromise, planOrders } from './plan-orders.ts';
import type { PartNeed } from './purchase-list.ts';
import { type StockAllocation, takeFromShelf } from './shelf.ts';
import type { Plan, PlanInput, PlanOrder } from './types.ts';

/** A plan, and what the shelf does for it. */
interface PlanWithShelf {
  readonly plan: Plan;
  readonly shelf: StockAllocation;
}

/**
 * Plans with the shelf: it goes to the stages that would start first if every part came from its supplier, and what it
 * holds in full waits for nobody in the plan that counts. The same share of the shelf serves plan and purchases, so that
 * nothing on it is counted on twice.
 *
 * @param inputFor - what is to be planned when the needs of these keys are on the shelf
 * @param needs - parts that are still to be ordered
 * @param held - on the shelf, by part code
 * @returns plan and shares; `notComputed` when the calendar has no working time
 */
export function planWithShelf(
  inputFor: (onShelf: ReadonlySet<string>) => PlanInput,
  needs: readonly PartNeed[],
  held: ReadonlyMap<string, Decimal>,
  calendar: WorkCalendar,
): PlanWithShelf | NotComputed {
  const without = planOrders(inputFor(new Set()));
  if ('notComputed' in without) return without;
  const first = takeFromShelf(without, needs, held, calendar);
  if (first.met.size === 0) return { plan: without, shelf: first };
  const plan = planOrders(inputFor(first.met));
  if ('notComputed' in plan) return plan;
  return { plan, shelf: takeFromShelf(without, needs, held, calendar, plan) };
}

/**
 * The day that can be promised for a new order when it may take what the planned ones leave on the shelf.
 *
 * @param orderFor - the order when the needs of these keys are on the shelf
 * @param needs - its parts
 * @param left - on the shelf after the planned orders
 */
export function promiseWithShelf(
  orderFor: (onShelf: ReadonlySet<string>) => PlanOrder,
  needs: readonly PartNeed[],
  left: ReadonlyMap<string, Decimal>,
  calendar: WorkCalendar,
  promiseFor: (order: PlanOrder) => DatePromise | NotComputed,
): DatePromise | NotComputed {
  const without = promiseFor(orderFor(new Set()));
  if ('notComputed' in without) return without;
  const { met } = takeFromShelf({ orders: [without.planned] }, needs, left, calendar);
  return met.size > 0 ? promiseFor(orderFor(met)) : without;
}
