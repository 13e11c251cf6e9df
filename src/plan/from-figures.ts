import type { FiguredOrder, Figures } from '../figures/index.ts';
import { type Stage, STAGES } from '../schema/index.ts';
import { addDays, decimalToNumber, type IsoDate } from '../units/index.ts';
import type { PartNeed } from './purchase-list.ts';
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
  /** From the end of infusion until the hull may leave the mould, by the clock. */
  readonly cureHours: number;
  /** From order to delivery, by supplier, in calendar days. */
  readonly leadDays: Readonly<Record<string, number>>;
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

/**
 * What is left to plan of one order: its stages with the hours not yet worked, its mould and its parts.
 *
 * A stage is over once a stage after it has hours written down. The mould is the hull's. Parts are ordered on the day
 * of acceptance; while there is none, today. Hours written for `cure` are somebody's looking after it: the clock runs
 * for `cureHours` in any case.
 *
 * @param entry - an order with figures
 * @param today - nothing is planned before it
 */
export function planOrderOf(
  { order, figures }: Required<Pick<FiguredOrder, 'order' | 'figures'>>,
  practice: ShopPractice,
  today: IsoDate,
): PlanOrder {
  const { number, hull, dates, record } = order.value;
  const worked = hoursBy(record?.hours ?? []);
  const left = STAGES.filter((stage) => !isOver(stage, worked));
  const ordered = dates.accepted ?? today;
  const stages = left.map((id) => stageOf(id, left, hull, figures, worked, practice, ordered));
  const begun = [...IN_MOULD].some((stage) => worked.has(stage)) && left.includes('release');
  return {
    number,
    release: ordered > today ? ordered : today,
    ...(dates.promised && { promised: dates.promised }),
    stages,
    ...(begun && { inMoulds: [hull] }),
  };
}

/** The parts that an order's stages take, for the purchase list: an item's parts at the first stage that works on it. */
export function partNeedsOf({ build }: Figures): readonly PartNeed[] {
  return build.items.flatMap(({ parts, hours }) =>
    parts.map(({ supplier, code, quantity }) => ({
      order: build.order.number,
      stage: firstStage(hours),
      supplier,
      code,
      quantity,
    })),
  );
}

function stageOf(
  id: Stage,
  left: readonly Stage[],
  mould: string,
  figures: Figures,
  worked: ReadonlyMap<string, number>,
  { crews, cureHours, leadDays }: ShopPractice,
  ordered: IsoDate,
): PlanStage {
  const planned = hoursBy(figures.stageHours).get(id) ?? 0;
  const labour = Math.max(0, planned - (worked.get(id) ?? 0));
  const crew = crews[id];
  const works = id !== 'cure' && labour > 0;
  const suppliers = new Set(
    partNeedsOf(figures).flatMap(({ stage, supplier }) => (stage === id ? supplier : [])),
  );
  return {
    id,
    after: BEFORE[id].filter((before) => left.includes(before)),
    hours: id === 'cure' ? cureHours : labour / (crew?.people ?? 1),
    passes: works ? 'work' : 'always',
    crew: works && crew ? [{ trade: crew.trade, people: crew.people }] : [],
    ...(crew?.oneSitting !== undefined && { oneSitting: crew.oneSitting }),
    ...(IN_MOULD.has(id) && { mould }),
    parts: [...suppliers].map((name) => ({
      name,
      arrives: addDays(ordered, leadDays[name] ?? 0),
    })),
  };
}

function isOver(stage: Stage, worked: ReadonlyMap<string, number>): boolean {
  return STAGES.some(
    (later) => BEFORE[later].includes(stage) && (worked.has(later) || isOver(later, worked)),
  );
}

function firstStage(hours: readonly { readonly stage: Stage }[]): Stage {
  return STAGES.find((stage) => hours.some((one) => one.stage === stage)) ?? 'fit-out';
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
