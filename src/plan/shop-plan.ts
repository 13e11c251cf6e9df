import type { FiguredOrder } from '../figures/index.ts';
import type { Status, Yard } from '../schema/index.ts';
import { decimalToNumber, type IsoDate, type NotComputed } from '../units/index.ts';
import { createCalendar, type WorkCalendar } from './calendar.ts';
import { planOrderOf, practiceOf } from './from-figures.ts';
import { NO_SUPPLIER, openNeedsOf } from './part-needs.ts';
import { type DatePromise, promiseAfter } from './plan-orders.ts';
import { purchaseList, type SupplierList } from './purchase-list.ts';
import type { ShelfLine } from './shelf.ts';
import type { Plan, PlanInput, PlannedOrder } from './types.ts';
import { type PlanNames, waitsInWords } from './wait-words.ts';
import { planWithShelf, promiseWithShelf } from './with-shelf.ts';

/** First and last day of a stage. */
export interface StageDays {
  readonly starts: IsoDate;
  readonly ends: IsoDate;
}

/** The days of one planned order. */
export interface OrderDays extends StageDays {
  readonly number: string;
  readonly promised?: IsoDate;
  /** Days after the promise, below 0 when before it. */
  readonly daysLate?: number;
  /** What it waits for, in words; empty when for nothing. */
  readonly binds: string;
  /** By stage; only those that are left. */
  readonly stages: ReadonlyMap<string, StageDays>;
}

/** What could be promised for an order that is not accepted yet. */
export type Offer = { readonly number: string } & (
  | { readonly days: OrderDays; readonly promise: IsoDate; readonly planned: PlannedOrder }
  | NotComputed
);

/** The plan of a shop on one day. */
export interface ShopPlan {
  readonly today: IsoDate;
  readonly calendar: WorkCalendar;
  readonly plan: Plan;
  readonly trades: PlanInput['trades'];
  readonly names: PlanNames;
  /** Accepted orders, in the sequence of their finishes. */
  readonly orders: readonly OrderDays[];
  readonly offers: readonly Offer[];
  /** What is still to be ordered for the planned orders, besides what is in stock. */
  readonly purchases: readonly SupplierList[];
  /** What the planned orders take from the shelf; undefined when nobody counts it. */
  readonly shelf?: { readonly counted: IsoDate; readonly taken: readonly ShelfLine[] };
}

/** Statuses of orders that the shop builds, and of those that it could. */
const PLANNED: ReadonlySet<Status> = new Set(['accepted', 'building', 'ready']);
const OFFERED: ReadonlySet<Status> = new Set(['enquiry', 'quoted']);

/**
 * Plans every accepted order, says what could be promised for each that is not, and what must be bought.
 *
 * @param entries - orders; those without figures are left out
 * @param today - the day that the plan starts on
 * @returns the plan; `notComputed` when the yard's hours have no working time
 */
export function planShop(
  entries: readonly FiguredOrder[],
  yard: Yard,
  today: IsoDate,
): ShopPlan | NotComputed {
  const practice = practiceOf(yard);
  const figured = entries.flatMap(({ order, figures }) => (figures ? [{ order, figures }] : []));
  const withStatus = (wanted: ReadonlySet<Status>) =>
    figured.filter(({ order }) => wanted.has(order.value.status));
  const accepted = withStatus(PLANNED);
  const input = planInput(yard, today);
  const calendar = createCalendar(input.calendar);
  if ('notComputed' in calendar) return calendar;
  const stock = figured.find(({ figures }) => figures.build.stock)?.figures.build.stock;
  const withShelf = planWithShelf(
    (onShelf) => ({
      ...input,
      orders: accepted.map((entry) => planOrderOf(entry, practice, today, onShelf)),
    }),
    accepted.flatMap(({ figures }) => openNeedsOf(figures)),
    stock?.held ?? new Map(),
    calendar,
  );
  if ('notComputed' in withShelf) return withShelf;
  const { plan, shelf } = withShelf;
  const names = namesOf(figured, yard);
  const daysOf = (planned: PlannedOrder): OrderDays => orderDays(planned, calendar, names);
  return {
    today,
    calendar,
    plan,
    trades: input.trades,
    names,
    orders: plan.orders.map(daysOf).toSorted((a, b) => a.ends.localeCompare(b.ends)),
    offers: withStatus(OFFERED).map((entry) => {
      const promise = promiseWithShelf(
        (onShelf) => planOrderOf(entry, practice, today, onShelf),
        openNeedsOf(entry.figures),
        shelf.left,
        calendar,
        (order) => promiseAfter(plan, input, order, yard.daysInHand),
      );
      return offerOf(entry.order.value.number, promise, daysOf);
    }),
    purchases: purchaseList(plan, shelf.needs, practice.leadDays, calendar, today),
    ...(stock && { shelf: { counted: stock.counted, taken: shelf.taken } }),
  };
}

function planInput(yard: Yard, today: IsoDate): Omit<PlanInput, 'orders'> {
  const { hours, trades, planTries } = yard;
  return {
    calendar: {
      origin: today,
      workdays: hours.workdays,
      startsAt: decimalToNumber(hours.startsAt),
      hoursADay: decimalToNumber(hours.perDay),
      holidays: hours.holidays,
    },
    trades: Object.fromEntries(Object.entries(trades).map(([id, { people }]) => [id, people])),
    tries: planTries,
  };
}

function namesOf(
  entries: readonly Parameters<typeof planOrderOf>[0][],
  { trades, suppliers }: Yard,
): PlanNames {
  const called = (named: Readonly<Record<string, { readonly name: string }>>) =>
    Object.fromEntries(Object.entries(named).map(([id, { name }]) => [id, name]));
  return {
    moulds: Object.fromEntries(
      entries.map(({ figures: { build } }) => [build.hull.id, build.hull.name]),
    ),
    trades: called(trades),
    suppliers: { ...called(suppliers), [NO_SUPPLIER]: 'makers of one-off items' },
  };
}

function orderDays(
  { order, stages, start, finishes, daysLate, binds }: PlannedOrder,
  calendar: WorkCalendar,
  names: PlanNames,
): OrderDays {
  return {
    number: order.number,
    starts: firstDay(start, calendar),
    ends: finishes,
    ...(order.promised !== undefined && { promised: order.promised }),
    ...(daysLate !== undefined && { daysLate }),
    binds: waitsInWords(binds, names),
    stages: new Map(
      stages.map((one) => {
        const starts = firstDay(one.start, calendar);
        const ends = calendar.dateOf(one.end);
        return [one.stage.id, { starts, ends: ends < starts ? starts : ends }];
      }),
    ),
  };
}

/** A stage that starts at midnight starts on the day that begins. */
const firstDay = (hour: number, calendar: WorkCalendar): IsoDate => calendar.dateOf(hour + 1e-6);

function offerOf(
  number: string,
  promise: DatePromise | NotComputed,
  daysOf: (planned: PlannedOrder) => OrderDays,
): Offer {
  if ('notComputed' in promise) return { number, notComputed: promise.notComputed };
  const { planned, promise: day } = promise;
  return { number, days: daysOf(planned), promise: day, planned };
}
