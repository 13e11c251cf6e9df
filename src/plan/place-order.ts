import type { WorkCalendar } from './calendar.ts';
import { emptyProfile, endOfConflict, type LoadProfile, take } from './load-profile.ts';
import type {
  MouldHold,
  Plan,
  PlanInput,
  PlannedStage,
  PlanOrder,
  PlanStage,
  Wait,
} from './types.ts';

/** What the orders placed so far have taken. */
export interface Shop {
  readonly calendar: WorkCalendar;
  readonly trades: PlanInput['trades'];
  readonly profiles: Map<string, LoadProfile>;
  readonly holds: MouldHold[];
}

/** A shop in which nothing is planned. */
export function emptyShop(calendar: WorkCalendar, trades: PlanInput['trades']): Shop {
  const profiles = new Map(Object.keys(trades).map((trade) => [trade, emptyProfile()]));
  return { calendar, trades, profiles, holds: [] };
}

/** A shop in which the stages of a plan are taken. */
export function shopAsPlanned(
  { orders, moulds }: Pick<Plan, 'orders' | 'moulds'>,
  calendar: WorkCalendar,
  trades: PlanInput['trades'],
): Shop {
  const shop = { ...emptyShop(calendar, trades), holds: [...moulds] };
  for (const stage of orders.flatMap(({ stages }) => stages)) takeCrew(shop, stage, 1);
  return shop;
}

/**
 * Places one order's stages, each as early as its predecessors, parts, people and mould allow, in the order given.
 *
 * An order keeps a mould from its first stage there to the end of its last. When that time meets another order's, the
 * whole order is placed again with its stages in that mould after the other's: each round passes one hold for good.
 *
 * @param sequence - every stage of the order, predecessors first
 * @returns the stages placed and taken from the shop; undefined when an order that is in a mould already finds it
 * held by another, and then nothing is taken
 */
export function placeOrder(
  shop: Shop,
  order: PlanOrder,
  sequence: readonly PlanStage[],
): readonly PlannedStage[] | undefined {
  const free = new Map<string, number>();
  for (;;) {
    const planned = placeStages(shop, order, sequence, free);
    const holds = holdsOf(order, planned);
    const clash = firstClash(holds, shop.holds);
    if (!clash) {
      shop.holds.push(...holds);
      return planned;
    }
    for (const one of planned) takeCrew(shop, one, -1);
    if (order.inMoulds?.includes(clash.mould)) return undefined;
    free.set(clash.mould, clash.end);
  }
}

function placeStages(
  shop: Shop,
  order: PlanOrder,
  sequence: readonly PlanStage[],
  free: ReadonlyMap<string, number>,
): readonly PlannedStage[] {
  const ends = new Map<string, number>();
  const release = Math.max(0, shop.calendar.hourOf(order.release));
  return sequence.map((stage) => {
    const ready = stage.after.reduce((latest, id) => Math.max(latest, ends.get(id) ?? 0), release);
    const planned = placeStage(shop, order.number, stage, ready, free);
    ends.set(stage.id, planned.end);
    takeCrew(shop, planned, 1);
    return planned;
  });
}

function placeStage(
  shop: Shop,
  order: string,
  stage: PlanStage,
  ready: number,
  free: ReadonlyMap<string, number>,
): PlannedStage {
  const waits: Wait[] = [];
  let earliest = ready;
  const waitUntil = (cause: Wait['cause'], name: string, until: number): void => {
    if (until <= earliest) return;
    waits.push({ cause, name, hours: until - earliest });
    earliest = until;
  };
  for (const { name, arrives } of stage.parts ?? []) {
    waitUntil('part', name, shop.calendar.hourOf(arrives));
  }
  const { mould } = stage;
  if (mould !== undefined) waitUntil('mould', mould, free.get(mould) ?? 0);
  for (;;) {
    const { start, end } = spanFrom(shop.calendar, stage, earliest);
    const busy = firstBusy(shop, stage, start, end);
    if (!busy) return { order, stage, start, end, waits };
    earliest = start;
    waitUntil('trade', busy.trade, busy.until);
  }
}

/** When a stage would start and end, had it all its people. */
function spanFrom(
  calendar: WorkCalendar,
  { passes, hours, oneSitting }: PlanStage,
  earliest: number,
): { readonly start: number; readonly end: number } {
  if (passes === 'always') return { start: earliest, end: earliest + hours };
  const first = calendar.nextWork(earliest);
  const tooLate = oneSitting === true && hours > calendar.leftToday(first) + 1e-9;
  const start = tooLate ? calendar.nextDay(first) : first;
  return { start, end: calendar.finish(start, hours) };
}

function firstBusy(
  { profiles, trades }: Shop,
  { crew }: PlanStage,
  start: number,
  end: number,
): { readonly trade: string; readonly until: number } | undefined {
  for (const { trade, people } of crew) {
    const profile = profiles.get(trade);
    const until = profile && endOfConflict(profile, start, end, (trades[trade] ?? 0) - people);
    if (until !== undefined) return { trade, until };
  }
  return undefined;
}

function takeCrew({ profiles }: Shop, { stage, start, end }: PlannedStage, sign: 1 | -1): void {
  for (const { trade, people } of stage.crew) {
    const profile = profiles.get(trade);
    if (profile) take(profile, start, end, sign * people);
  }
}

function holdsOf(order: PlanOrder, planned: readonly PlannedStage[]): readonly MouldHold[] {
  const moulds = new Set(planned.flatMap(({ stage: { mould } }) => mould ?? []));
  return [...moulds].map((mould) => {
    const inside = planned.filter(({ stage }) => stage.mould === mould);
    const held = order.inMoulds?.includes(mould) === true;
    return {
      mould,
      order: order.number,
      start: held ? 0 : Math.min(...inside.map(({ start }) => start)),
      end: Math.max(...inside.map(({ end }) => end)),
    };
  });
}

function firstClash(
  mine: readonly MouldHold[],
  others: readonly MouldHold[],
): MouldHold | undefined {
  return others.find((other) =>
    mine.some(
      ({ mould, start, end }) => mould === other.mould && start < other.end && end > other.start,
    ),
  );
}
