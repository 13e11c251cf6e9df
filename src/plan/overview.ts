import { type Finding, finding } from '../findings/index.ts';
import type { FiguredOrder, Priced } from '../figures/index.ts';
import { type Drift, driftOf, type IssuedQuote } from '../issued/index.ts';
import { type Money, sumMoney } from '../money/index.ts';
import type { Status } from '../schema/index.ts';
import { addDays, type Decimal, type IsoDate, sumDecimals } from '../units/index.ts';
import { checkSent } from './check-sent.ts';
import { planFindings } from './plan-findings.ts';
import type { OrderDays, ShopPlan } from './shop-plan.ts';

/** What stands out about one order today. */
export interface OrderState {
  readonly entry: FiguredOrder;
  readonly late: boolean;
  readonly expired: boolean;
  readonly findings: readonly Finding[];
  readonly hoursPlanned?: Decimal;
  /** The quote that was sent last; undefined when none was. */
  readonly issued?: IssuedQuote;
  /** What that quote would cost today; undefined when the order cannot be computed. */
  readonly drift?: Drift;
  /** When the plan builds her; undefined when she is not planned. */
  readonly planned?: OrderDays;
  /** Hours written down so far; undefined while there are none. */
  readonly hoursWorked?: Decimal;
}

export interface StatusTotal {
  readonly status: Status;
  readonly count: number;
  /** Undefined when no order of this status has a price. */
  readonly driveAway?: Money;
}

export interface Overview {
  readonly today: IsoDate;
  readonly orders: readonly OrderState[];
  readonly totals: readonly StatusTotal[];
}

/** What else is known of the orders on that day, by number. */
interface Known {
  /** The quotes that were sent, first revision first. */
  readonly issued?: ReadonlyMap<string, readonly IssuedQuote[]>;
  /** Orders with a quote that was sent, by the prices of that day. */
  readonly priced?: ReadonlyMap<string, Priced>;
  /** Left out: nothing is said of it. */
  readonly plan?: ShopPlan;
}

const PROMISED: ReadonlySet<Status> = new Set(['accepted', 'building', 'ready']);

/**
 * Looks across all orders on one day: what is late, what has expired, what each status adds up to.
 *
 * @param today - the day to judge by; it is an argument so that a plan can be made for any day
 */
export function overviewOrders(
  entries: readonly FiguredOrder[],
  quoteDays: number,
  today: IsoDate,
  { issued, priced, plan }: Known = {},
): Overview {
  const orders = entries.map((entry) => {
    const { number } = entry.order.value;
    const state = stateOf(entry, quoteDays, today, {
      issued: issued?.get(number) ?? [],
      priced: priced?.get(number),
    });
    return plan ? withPlan(state, plan) : state;
  });
  const statuses = [...new Set(entries.map(({ order }) => order.value.status))];
  return { today, orders, totals: statuses.map((status) => totalOf(status, entries)) };
}

function stateOf(
  entry: FiguredOrder,
  quoteDays: number,
  today: IsoDate,
  {
    issued,
    priced,
  }: { readonly issued: readonly IssuedQuote[]; readonly priced: Priced | undefined },
): OrderState {
  const { order, figures } = entry;
  const { status, dates, record } = order.value;
  const validUntil = dates.quoted && addDays(dates.quoted, quoteDays);
  const expired = status === 'quoted' && validUntil !== undefined && validUntil < today;
  const late = PROMISED.has(status) && dates.promised !== undefined && dates.promised < today;
  const last = issued.at(-1);
  const drift = last && priced && driftOf(last, priced);
  const worked = record?.hours ?? [];
  const found = [
    expired &&
      finding('QUOTE_EXPIRED', order.place(['dates', 'quoted']), {
        received: `valid until ${validUntil}`,
        expected: `a day not before ${today}`,
      }),
    late &&
      finding('PROMISED_DATE_PASSED', order.place(['dates', 'promised']), {
        received: `${dates.promised}`,
        expected: `a day not before ${today}`,
      }),
    ...checkSent(entry, issued),
  ].filter((one) => typeof one === 'object');
  return {
    entry,
    late,
    expired,
    findings: [...entry.findings, ...found],
    ...(last && { issued: last }),
    ...(drift && { drift }),
    ...(figures && { hoursPlanned: sumHours(figures.stageHours) }),
    ...(worked.length > 0 && { hoursWorked: sumHours(worked) }),
  };
}

function withPlan(state: OrderState, plan: ShopPlan): OrderState {
  const { order } = state.entry;
  const planned = plan.orders.find(({ number }) => number === order.value.number);
  return {
    ...state,
    ...(planned && { planned }),
    findings: [...state.findings, ...planFindings(order, plan)],
  };
}

function totalOf(status: Status, entries: readonly FiguredOrder[]): StatusTotal {
  const those = entries.filter(({ order }) => order.value.status === status);
  const prices = those.flatMap(({ figures }) => (figures ? [figures] : []));
  const currency = prices[0]?.build.currency;
  return {
    status,
    count: those.length,
    ...(currency && {
      driveAway: sumMoney(
        prices.map(({ price }) => price.driveAway),
        currency,
      ),
    }),
  };
}

function sumHours(work: readonly { readonly hours: Decimal }[]): Decimal {
  return sumDecimals(work.map(({ hours }) => hours));
}
