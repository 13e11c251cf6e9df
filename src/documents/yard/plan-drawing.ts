import {
  type Drawing,
  drawPlanChart,
  type PlanBar,
  type PlanGroup,
  type PlanLane,
} from '../../draw/index.ts';
import type { PlannedOrder, PlannedStage, ShopPlan } from '../../plan/index.ts';
import {
  addDays,
  daysBetween,
  formatDayOfMonth,
  type IsoDate,
  weekdayOf,
} from '../../units/index.ts';
import { planInWords } from './plan-in-words.ts';

const HOURS = 24;
/** A promise longer ago than this is told in the table, not drawn, days. */
const LONGEST_BACK = 21;

/** Phases of an order as the chart shows them, by the stages that are in each. */
const PHASES = [
  { kind: 'mould', stages: ['mould-preparation', 'gelcoat', 'laminate', 'infusion', 'release'] },
  { kind: 'fit', stages: ['fit-out', 'wiring', 'engine', 'trailer'] },
  { kind: 'trial', stages: ['water-trial', 'handover'] },
] as const;

interface Frame {
  readonly shop: ShopPlan;
  readonly start: IsoDate;
  readonly today: number;
  /** What each order is called in a bar that is too short for its number. */
  readonly keys: ReadonlyMap<string, string>;
}

/**
 * Weeks across; orders, moulds and people down.
 *
 * @param boats - the model of each order, by its number
 */
export function drawPlan(
  shop: ShopPlan,
  boats: ReadonlyMap<string, string>,
  locale: string,
  fontCss: string,
): Drawing {
  const { today, orders } = shop;
  const promises = orders.flatMap(({ promised }) => promised ?? []);
  const start = mondayOf(
    promises
      .filter((day) => day >= addDays(today, -LONGEST_BACK))
      .reduce((first, day) => (day < first ? day : first), today),
  );
  const could = shop.offers.flatMap((offer) => ('promise' in offer ? [offer.promise] : []));
  const last = [...promises, ...could, ...orders.map(({ ends }) => ends)].reduce(
    (latest, day) => (day > latest ? day : latest),
    today,
  );
  const days = Math.ceil((daysBetween(start, last) + 2) / 7) * 7;
  const keys = new Map(orders.map(({ number }, index) => [number, String(index + 1)]));
  const frame: Frame = { shop, start, today: daysBetween(start, today), keys };
  return drawPlanChart({
    days,
    today: frame.today,
    weeks: Array.from({ length: days / 7 }, (_, week) =>
      formatDayOfMonth(addDays(start, week * 7), locale),
    ),
    closed: closedSpans(frame, days),
    groups: [
      orderLanes(frame, boats),
      offerLanes(frame, boats),
      mouldLanes(frame),
      peopleLanes(frame),
    ].filter(({ lanes }) => lanes.length > 0),
    alt: planInWords(shop, boats, locale),
    fontCss,
  });
}

const mondayOf = (day: IsoDate): IsoDate => addDays(day, 1 - weekdayOf(day));

/** Hours of the plan as days of the chart. */
const at = ({ today }: Frame, hour: number): number => today + hour / HOURS;

function orderLanes(frame: Frame, boats: ReadonlyMap<string, string>): PlanGroup {
  const lanes = frame.shop.orders.flatMap(({ number, promised }): readonly PlanLane[] => {
    const planned = plannedOf(frame, number);
    if (!planned) return [];
    const day = promised && daysBetween(frame.start, promised) + 1;
    return [
      {
        name: `${frame.keys.get(number) ?? ''}  ${number} ${boats.get(number) ?? ''}`.trim(),
        rows: 1,
        bars: phaseBars(planned, frame),
        ...(day !== undefined && day >= 0 && { promised: day }),
      },
    ];
  });
  return { heading: 'Orders', lanes };
}

/** What is not accepted yet, each by itself beside the accepted orders, with the day that can be promised. */
function offerLanes(frame: Frame, boats: ReadonlyMap<string, string>): PlanGroup {
  const lanes = frame.shop.offers.flatMap((offer): readonly PlanLane[] => {
    if (!('planned' in offer)) return [];
    const { number, planned, promise } = offer;
    return [
      {
        name: `${number} ${boats.get(number) ?? ''}`.trim(),
        rows: 1,
        bars: phaseBars(planned, frame),
        promised: daysBetween(frame.start, promise) + 1,
      },
    ];
  });
  return { heading: 'If accepted today', lanes };
}

const plannedOf = ({ shop }: Frame, wanted: string): PlannedOrder | undefined =>
  shop.plan.orders.find(({ order }) => order.number === wanted);

function phaseBars(planned: PlannedOrder, frame: Frame): readonly PlanBar[] {
  const bar = (kind: PlanBar['kind'], from: number, to: number): PlanBar => ({
    from: at(frame, from),
    to: at(frame, to),
    kind,
    label: '',
    row: 0,
  });
  const busy = planned.stages.filter(({ start, end }) => end > start);
  const phases = PHASES.flatMap(({ kind, stages }) => {
    const inside = busy.filter(({ stage }) => stages.some((id) => id === stage.id));
    return mergedSpans(inside).map(({ start, end }) => bar(kind, start, end));
  });
  const cures = busy.filter(({ stage }) => stage.id === 'cure');
  return [
    bar('wait', planned.start, planned.end),
    ...phases,
    ...cures.map(({ start, end }) => bar('cure', start, end)),
  ];
}

/** Stages that overlap or touch, as one span each. */
function mergedSpans(
  stages: readonly PlannedStage[],
): readonly { readonly start: number; readonly end: number }[] {
  const spans: { start: number; end: number }[] = [];
  for (const { start, end } of stages.toSorted((a, b) => a.start - b.start)) {
    const last = spans.at(-1);
    // A night between two stages is no gap worth drawing.
    if (last && start <= last.end + HOURS) last.end = Math.max(last.end, end);
    else spans.push({ start, end });
  }
  return spans;
}

function mouldLanes(frame: Frame): PlanGroup {
  const { plan, names } = frame.shop;
  const moulds = [...new Set(plan.moulds.map(({ mould }) => mould))].toSorted();
  return {
    heading: '{Moulds}',
    lanes: moulds.map((mould) => ({
      name: names.moulds[mould] ?? mould,
      rows: 1,
      bars: plan.moulds
        .filter((hold) => hold.mould === mould && hold.end > hold.start)
        .map(({ order, start, end }) => ({
          from: at(frame, start),
          to: at(frame, end),
          kind: 'mould',
          label: order,
          row: 0,
        })),
    })),
  };
}

function peopleLanes(frame: Frame): PlanGroup {
  const { trades, names, plan } = frame.shop;
  const stages = plan.orders.flatMap((one) => one.stages);
  const lanes = Object.entries(trades)
    .filter(([, people]) => people > 0)
    .map(([trade, people]): PlanLane => ({
      name:
        people > 1 ? `${names.trades[trade] ?? trade}, ${people}` : (names.trades[trade] ?? trade),
      rows: people,
      bars: rowsOfTrade(stages, trade, people, frame),
    }));
  return { heading: 'People', lanes };
}

/** Each person's stretches of work: whoever is free first takes the next; the plan never needs more than there are. */
function rowsOfTrade(
  stages: readonly PlannedStage[],
  trade: string,
  people: number,
  frame: Frame,
): readonly PlanBar[] {
  const freeFrom = Array.from({ length: people }, () => 0);
  return stages
    .toSorted((a, b) => a.start - b.start)
    .flatMap(({ stage, order, start, end }) => {
      const wanted = stage.crew.find((one) => one.trade === trade)?.people ?? 0;
      const rows = freeFrom
        .flatMap((free, row) => (free <= start + 1e-6 ? [row] : []))
        .slice(0, wanted);
      return rows.map((row): PlanBar => {
        freeFrom[row] = end;
        return {
          from: at(frame, start),
          to: at(frame, end),
          kind: 'people',
          label: frame.keys.get(order) ?? order,
          row,
        };
      });
    });
}

/** Runs of days without work that are longer than a weekend. */
function closedSpans(
  { shop: { calendar, today }, today: offset }: Frame,
  days: number,
): readonly { readonly from: number; readonly to: number }[] {
  const midnight = calendar.hourOf(today);
  const works = (day: number): boolean => {
    const start = midnight + (day - offset) * HOURS;
    return start >= midnight ? calendar.nextWork(start) < start + HOURS : true;
  };
  const spans: { from: number; to: number }[] = [];
  for (let day = 0; day < days; day += 1) {
    if (works(day)) continue;
    const last = spans.at(-1);
    if (last?.to === day) last.to = day + 1;
    else spans.push({ from: day, to: day + 1 });
  }
  return spans.filter(({ from, to }) => to - from > 2);
}
