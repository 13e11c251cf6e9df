import { type Finding, finding } from '../findings/index.ts';
import type { FiguredOrder, Priced } from '../figures/index.ts';
import {
  type Account,
  accountOf,
  type Drift,
  driftOf,
  isAgreed,
  type IssuedQuote,
  standingQuote,
} from '../issued/index.ts';
import { type Money, sumMoney } from '../money/index.ts';
import type { Status } from '../schema/index.ts';
import { addDays, type Computed, type Decimal, type IsoDate, sumDecimals } from '../units/index.ts';
import { checkPaid, checkSent } from './check-sent.ts';
import { checkTotals } from './check-total.ts';
import { planFindings } from './plan-findings.ts';
import type { OrderDays, ShopPlan } from './shop-plan.ts';

/** What stands out about one order today. */
export interface OrderState {
  readonly entry: FiguredOrder;
  readonly late: boolean;
  readonly expired: boolean;
  readonly findings: readonly Finding[];
  readonly hoursPlanned?: Decimal;
  /** The quote that counts: the one that was accepted, else the last that was sent; undefined when none was. */
  readonly issued?: IssuedQuote;
  /** What an order that is agreed costs in the end. */
  readonly account?: Account;
  /** What that quote would cost today; undefined when the order has errors. */
  readonly drift?: Computed<Drift>;
  /** When the plan builds it; undefined when it is not planned. */
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

/** Statuses in which the customer may still be sent another price. */
const OFFERED: ReadonlySet<Status> = new Set(['enquiry', 'quoted']);
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
  const unlike = checkTotals(entries);
  const orders = entries.map((entry) => {
    const { number } = entry.order.value;
    const state = stateOf(entry, quoteDays, today, {
      issued: issued?.get(number) ?? [],
      priced: priced?.get(number),
      unlike: unlike.get(number),
    });
    return plan ? withPlan(state, plan) : state;
  });
  const statuses = [...new Set(entries.map(({ order }) => order.value.status))];
  return { today, orders, totals: statuses.map((status) => totalOf(status, orders)) };
}

function stateOf(
  entry: FiguredOrder,
  quoteDays: number,
  today: IsoDate,
  {
    issued,
    priced,
    unlike,
  }: {
    readonly issued: readonly IssuedQuote[];
    readonly priced: Priced | undefined;
    readonly unlike: Finding | undefined;
  },
): OrderState {
  const { order, figures } = entry;
  const { status, dates, record } = order.value;
  const validUntil = dates.quoted && addDays(dates.quoted, quoteDays);
  const offered = OFFERED.has(status);
  const expired = offered && validUntil !== undefined && validUntil < today;
  const late = PROMISED.has(status) && dates.promised !== undefined && dates.promised < today;
  const standing = standingQuote(order.value, issued);
  const drift = standing && priced && driftOf(standing, priced);
  const account = standing && isAgreed(order.value) ? accountOf(standing, order.value) : undefined;
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
    offered &&
      dates.quoted !== undefined &&
      dates.quoted > today &&
      finding('QUOTED_LATER', order.place(['dates', 'quoted']), {
        received: dates.quoted,
        expected: `${today} or before`,
      }),
    offered && unlike,
    ...checkSent(entry, issued, expired),
    ...checkPaid(entry, account),
  ].filter((one) => typeof one === 'object');
  return {
    entry,
    late,
    expired,
    findings: [...entry.findings, ...found],
    ...(standing && { issued: standing }),
    ...(drift && { drift }),
    ...(account && { account }),
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

function totalOf(status: Status, orders: readonly OrderState[]): StatusTotal {
  const those = orders.filter(({ entry }) => entry.order.value.status === status);
  const prices = those.flatMap((state) => priceOf(state) ?? []);
  const currency = those.find(({ entry }) => entry.figures)?.entry.figures?.build.currency;
  return {
    status,
    count: those.length,
    ...(currency && { driveAway: sumMoney(prices, currency) }),
  };
}

/** What an order costs: as agreed, else as sent, else as computed; undefined when there is no figure of it. */
export const priceOf = ({ account, issued, entry: { figures } }: OrderState): Money | undefined =>
  figures && (account?.total ?? (issued ?? figures).price.driveAway);

function sumHours(work: readonly { readonly hours: Decimal }[]): Decimal {
  return sumDecimals(work.map(({ hours }) => hours));
}
