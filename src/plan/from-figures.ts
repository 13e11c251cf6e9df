import type { FiguredOrder, Figures } from '../figures/index.ts';
import { type Stage, STAGES, type Yard } from '../schema/index.ts';
import { decimalToNumber, type IsoDate } from '../units/index.ts';
import { arrivalsOf } from './part-needs.ts';
import type { PlanOrder, PlanStage } from './types.ts';

/** How the shop does its stages: what the order and the hull do not say. */
export interface ShopPractice {
  /** Who does a stage and how many at once; a stage that is not named needs nobody. */
  readonly crews: Readonly<
    Partial<
      Record<
        Stage,
        { readonly trade: string; readonly people: number; readonly oneSitting?: boolean }
      >
    >
  >;
  /** From order to delivery, by supplier, in calendar days. */
  readonly leadDays: Readonly<Record<string, number>>;
}

/** The practice that a yard file gives; a stage without a trade needs nobody. */
export function practiceOf({ stages, suppliers }: Yard): ShopPractice {
  return {
    crews: Object.fromEntries(
      STAGES.flatMap((stage) => {
        const { trade, people = 1, oneSitting = false } = stages[stage] ?? {};
        return trade === undefined ? [] : [[stage, { trade, people, oneSitting }] as const];
      }),
    ),
    leadDays: Object.fromEntries(
      Object.entries(suppliers).map(([name, { leadDays }]) => [name, leadDays]),
    ),
  };
}

/** What must be over before a stage; common practice, no source. */
const BEFORE: Readonly<Record<Stage, readonly Stage[]>> = {
  'mould-preparation': [],
  gelcoat: ['mould-preparation'],
  laminate: ['gelcoat'],
  infusion: ['laminate'],
  cure: ['infusion'],
  release: ['cure'],
  'fit-out': ['release'],
  wiring: ['release'],
  engine: ['fit-out', 'wiring'],
  trailer: ['release'],
  'water-trial': ['engine', 'trailer'],
  handover: ['water-trial'],
};

const IN_MOULD: ReadonlySet<Stage> = new Set([
  'mould-preparation',
  'gelcoat',
  'laminate',
  'infusion',
  'cure',
  'release',
]);

const LAID_UP: ReadonlySet<string> = new Set<Stage>(['gelcoat', 'laminate', 'infusion', 'cure']);

/**
 * What is left to plan of one order: its stages with the hours not yet worked, its mould and its parts.
 *
 * A stage is over once a stage after it has hours written down; of a boat that is ready only the handover is left.
 * The mould is the hull's, or that of the hull it shares one with. Parts that are not ordered are taken to be ordered
 * today. Hours of `cure` are somebody's looking after it: the clock runs for the hull's hours,
 * whoever looks, of every boat that is laid up.
 *
 * @param entry - an order with figures
 * @param today - nothing is planned before it
 * @param onShelf - keys of the needs that the shelf meets in full: they wait for nobody
 */
export function planOrderOf(
  { order, figures }: Required<Pick<FiguredOrder, 'order' | 'figures'>>,
  practice: ShopPractice,
  today: IsoDate,
  onShelf?: ReadonlySet<string>,
): PlanOrder {
  const { number, status, dates, record } = order.value;
  const worked = hoursBy(record?.hours ?? []);
  const left = STAGES.filter((stage) =>
    status === 'ready' ? stage === 'handover' : !isOver(stage, worked),
  );
  const toPlan = { figures, worked, left, practice };
  const arrivals = arrivalsOf(figures, practice.leadDays, today, onShelf);
  const begun = [...IN_MOULD].some((stage) => worked.has(stage)) && left.includes('release');
  const accepted = dates.accepted ?? today;
  return {
    number,
    release: accepted > today ? accepted : today,
    ...(dates.promised && { promised: dates.promised }),
    stages: left.map((id) => stageOf(id, toPlan, arrivals.get(id) ?? new Map())),
    ...(begun && { inMoulds: [mouldOf(figures)] }),
  };
}

interface Left {
  readonly figures: Figures;
  readonly worked: ReadonlyMap<string, number>;
  readonly left: readonly Stage[];
  readonly practice: ShopPractice;
}

function stageOf(
  id: Stage,
  { figures, worked, left, practice }: Left,
  arrivals: ReadonlyMap<string, IsoDate>,
): PlanStage {
  const planned = hoursBy(figures.stageHours).get(id) ?? 0;
  const labour = Math.max(0, planned - (worked.get(id) ?? 0));
  const crew = practice.crews[id];
  const works = id !== 'cure' && labour > 0;
  return {
    id,
    after: BEFORE[id].filter((before) => left.includes(before)),
    hours: id === 'cure' ? clockOfCure(figures) : labour / (crew?.people ?? 1),
    passes: works ? 'work' : 'always',
    crew: works && crew ? [{ trade: crew.trade, people: crew.people }] : [],
    ...(crew?.oneSitting !== undefined && { oneSitting: crew.oneSitting }),
    ...(IN_MOULD.has(id) && { mould: mouldOf(figures) }),
    parts: [...arrivals].map(([name, arrives]) => ({ name, arrives })),
  };
}

/** A hull that nobody lays up has nothing to cure. */
function clockOfCure({ build: { hull }, stageHours }: Figures): number {
  return stageHours.some(({ stage }) => LAID_UP.has(stage)) ? hull.cureHours : 0;
}

const mouldOf = ({ build: { hull } }: Figures): string => hull.mouldOf ?? hull.id;

function isOver(stage: Stage, worked: ReadonlyMap<string, number>): boolean {
  return STAGES.some(
    (later) => BEFORE[later].includes(stage) && (worked.has(later) || isOver(later, worked)),
  );
}

function hoursBy(
  work: readonly {
    readonly stage: string;
    readonly hours: Parameters<typeof decimalToNumber>[0];
  }[],
): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { stage, hours } of work) {
    sums.set(stage, (sums.get(stage) ?? 0) + decimalToNumber(hours));
  }
  return sums;
}
