import { addDays, addDecimals, type Decimal, type IsoDate } from '../units/index.ts';
import type { WorkCalendar } from './calendar.ts';
import type { Plan } from './types.ts';

/** A part that one stage of one order takes. */
export interface PartNeed {
  readonly order: string;
  readonly stage: string;
  readonly supplier: string;
  readonly code: string;
  readonly quantity: Decimal;
  /** What it is, of a one-off item that no price list names. */
  readonly name?: string;
  /** From order to delivery, calendar days, when not the supplier's. */
  readonly leadDays?: number;
  /** The day on which it was ordered, when the item itself says so. */
  readonly ordered?: IsoDate;
}

/** One part to buy for one day. */
export interface PurchaseLine {
  readonly code: string;
  /** What it is, of a one-off item that no price list names. */
  readonly name?: string;
  readonly quantity: Decimal;
  /** The day on which the first of the stages that take it starts. */
  readonly needBy: IsoDate;
  /** The last day on which it can be ordered to be there. */
  readonly orderBy: IsoDate;
  /** true: that day is over. */
  readonly late: boolean;
  readonly orders: readonly string[];
}

export interface SupplierList {
  readonly supplier: string;
  readonly lines: readonly PurchaseLine[];
}

/**
 * What must be bought across the planned orders, by supplier, the most urgent first; one part for stages that start on
 * the same day is one line.
 *
 * @param leadDays - calendar days from order to delivery, by supplier; a supplier that is not named delivers at once
 * @param today - the day to judge lateness by
 * @returns lists by supplier; needs of orders or stages that are not in the plan are left out
 */
export function purchaseList(
  plan: Plan,
  needs: readonly PartNeed[],
  leadDays: Readonly<Record<string, number>>,
  calendar: Pick<WorkCalendar, 'dateOf'>,
  today: IsoDate,
): readonly SupplierList[] {
  const starts = startsOf(plan, calendar);
  const bySupplier = new Map<string, Map<string, PurchaseLine>>();
  for (const need of needs) {
    const needBy = starts.get(stageKey(need.order, need.stage));
    if (needBy === undefined) continue;
    const lines = bySupplier.get(need.supplier) ?? new Map<string, PurchaseLine>();
    bySupplier.set(need.supplier, lines);
    const key = `${needBy} ${need.code}`;
    const before = lines.get(key);
    const orderBy = addDays(needBy, -(need.leadDays ?? leadDays[need.supplier] ?? 0));
    lines.set(key, {
      code: need.code,
      ...(need.name !== undefined && { name: need.name }),
      needBy,
      orderBy,
      late: orderBy < today,
      ...addTo(before, need.quantity, need.order),
    });
  }
  return [...bySupplier]
    .map(([supplier, lines]) => ({
      supplier,
      lines: [...lines.values()].toSorted((a, b) => rank(a).localeCompare(rank(b))),
    }))
    .toSorted((a, b) => a.supplier.localeCompare(b.supplier));
}

/** A quantity and the orders that take it, with one need more. */
export function addTo(
  before: { readonly quantity: Decimal; readonly orders: readonly string[] } | undefined,
  quantity: Decimal,
  order: string,
): { readonly quantity: Decimal; readonly orders: readonly string[] } {
  return {
    quantity: before ? addDecimals(before.quantity, quantity) : quantity,
    orders: [...new Set([...(before?.orders ?? []), order])],
  };
}

/** One stage of one order, as a key. */
export const stageKey = (order: string, stage: string): string => `${order} ${stage}`;
const rank = ({ needBy, code }: PurchaseLine): string => `${needBy} ${code}`;

/** The first day of every planned stage, by its key. */
export function startsOf(
  plan: Pick<Plan, 'orders'>,
  calendar: Pick<WorkCalendar, 'dateOf'>,
): ReadonlyMap<string, IsoDate> {
  const stages = plan.orders.flatMap((one) => one.stages);
  // A stage that starts at midnight starts on the day that begins.
  return new Map(
    stages.map(({ order, stage, start }) => [
      stageKey(order, stage.id),
      calendar.dateOf(start + 1e-6),
    ]),
  );
}
