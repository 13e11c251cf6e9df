import { type Finding, finding } from '../findings/index.ts';
import type { FiguredOrder } from '../figures/index.ts';
import { type Drift, driftOf, type IssuedQuote } from '../issued/index.ts';
import { isZero, type Money, moneyToText, subtractMoney, sumMoney } from '../money/index.ts';
import type { SourcedOrder, Status } from '../schema/index.ts';
import { planFindings } from './plan-findings.ts';
import type { OrderDays, ShopPlan } from './shop-plan.ts';
import { addDays, addDecimals, type Decimal, type IsoDate, ZERO } from '../units/index.ts';

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

/** Statuses in which the customer holds an offer that they have not signed yet. */
const OFFERED: ReadonlySet<Status> = new Set(['quoted']);
const PROMISED: ReadonlySet<Status> = new Set(['accepted', 'building', 'ready']);

/**
 * Looks across all orders on one day: what is late, what has expired, what each status adds up to.
 *
 * @param today - the day to judge by; it is an argument so that a plan can be made for any day
 * @param issued - the quotes that were sent, by number, first revision first
 * @param plan - of the same day; left out: nothing is said of it
 */
export function overviewOrders(
  entries: readonly FiguredOrder[],
  quoteDays: number,
  today: IsoDate,
  issued: ReadonlyMap<string, readonly IssuedQuote[]> = new Map(),
  plan?: ShopPlan,
): Overview {
  const orders = entries.map((entry) => {
    const { number } = entry.order.value;
    const state = stateOf(entry, quoteDays, today, issued.get(number)?.at(-1));
    return plan ? withPlan(state, plan) : state;
  });
  const statuses = [...new Set(entries.map(({ order }) => order.value.status))];
  return { today, orders, totals: statuses.map((status) => totalOf(status, entries)) };
}

function stateOf(
  entry: FiguredOrder,
  quoteDays: number,
  today: IsoDate,
  issued: IssuedQuote | undefined,
): OrderState {
  const { order, figures } = entry;
  const { status, dates, record } = order.value;
  const validUntil = dates.quoted && addDays(dates.quoted, quoteDays);
  const expired = status === 'quoted' && validUntil !== undefined && validUntil < today;
  const late = PROMISED.has(status) && dates.promised !== undefined && dates.promised < today;
  const drift = issued && figures && driftOf(issued, figures);
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
    quoteFinding(order, issued, drift),
  ].filter((one) => typeof one === 'object');
  return {
    entry,
    late,
    expired,
    findings: [...entry.findings, ...found],
    ...(issued && { issued }),
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

/** That an offer was never frozen, or that it says another price than the order has today. */
function quoteFinding(
  order: SourcedOrder,
  issued: IssuedQuote | undefined,
  drift: Drift | undefined,
): Finding | undefined {
  const { status, number } = order.value;
  if (!OFFERED.has(status)) return undefined;
  if (!issued)
    return finding('QUOTE_NOT_ISSUED', order.place(['status']), {
      received: status,
      mend: `Run: npm run orlop -- issue ${number}`,
    });
  if (!drift || isZero(subtractMoney(drift.now, drift.was))) return undefined;
  return finding('QUOTE_DIFFERS', order.place(['number']), {
    received: `${moneyToText(drift.was)} in revision ${issued.revision}`,
    expected: `${moneyToText(drift.now)}, as computed today`,
  });
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
  return work.reduce((total, { hours }) => addDecimals(total, hours), ZERO);
}
