import type { Figures } from '../../figures/index.ts';
import { type BuildItem, stagesOf } from '../../resolve/index.ts';
import { type Stage, STAGES, type Yard } from '../../schema/index.ts';
import { formatterOf, type Decimal, ZERO, sumDecimals, NO_BREAK } from '../../units/index.ts';
import { STAGE_CAUTIONS } from './cautions.ts';
import { daysText, type PlannedDays } from './days.ts';
import { partsOfStage } from './parts.ts';
import { placedItem } from './placing.ts';
import { gateTables } from './gate-sheets.ts';
import type { BuildSheetView, PlacedItem, StageHours, StageItem, StageSheet } from './types.ts';
import { hoursText, printedHours, STAGE_NAMES } from '../sections/stage-names.ts';
import { sentence } from '../sections/words.ts';
import { infusionTables } from './infusion-sheets.ts';
import { laminateTables } from './laminate-sheets.ts';
import { mixingTables } from './mixing-sheets.ts';
import { partLaminateTables } from './part-laminate-sheets.ts';
import { oneLinePicture, panelStripPicture } from '../sections/wiring-drawing.ts';
import { wiringTables } from './wiring-sheets.ts';

/** Stages that no boat goes without, planned hours or not. */
const ALWAYS: ReadonlySet<Stage> = new Set(['release', 'water-trial', 'handover']);

interface StageOptions {
  readonly planned?: PlannedDays;
  readonly fontCss: string;
  /** The variation that an item came with, by its name. */
  readonly changes: ReadonlyMap<string, string>;
}

/**
 * Every stage that this boat goes through, in the order of the build, with what it takes.
 *
 * @param numbers - the number of an item in the drawing, by its key
 */
export function stageSheets(
  figures: Figures,
  numbers: ReadonlyMap<string, string>,
  { planned, fontCss, changes }: StageOptions,
): readonly StageSheet[] {
  const { build } = figures;
  const format = formatterOf(build.yard);
  return stagesOfBuild(figures).map((stage, index) => {
    const facts = build.yard.stages[stage];
    const hours = plannedHours(figures, stage);
    const parts = partsOfStage(build, stage, format);
    return {
      id: stage,
      number: String(index + 1),
      name: STAGE_NAMES[stage],
      does: facts ? sentence(facts.does) : '',
      who: crewText(build.yard, stage),
      planned: hours.amount > 0n ? hoursText(hours, format) : '',
      days: daysText(stage, planned, build.yard.locale),
      cautions: STAGE_CAUTIONS[stage] ?? [],
      parts,
      traced: parts.some((part) => part.traced),
      itemsHeading: stage === 'water-trial' ? 'Try' : 'Fit',
      items: itemsOfStage(figures, stage, (item) => placedItem(item, numbers, changes, format)),
      tables: tablesOfStage(figures, stage),
      gate: gateTables(figures, stage),
      pictures: picturesOfStage(figures, stage, fontCss),
      checks: facts?.checks ?? [],
      measures: facts?.measures ?? [],
    };
  });
}

/** Planned and worked hours of every stage, and their sums: those of the printed rows. */
export function hoursByStage(
  figures: Figures,
  days: PlannedDays | undefined,
): Pick<BuildSheetView, 'hours' | 'totalHours' | 'totalWorked'> {
  const { yard } = figures.build;
  const format = formatterOf(yard);
  const rows = stagesOfBuild(figures).map((stage) => ({
    stage,
    planned: printedHours(plannedHours(figures, stage)),
    worked: printedHours(workedHours(figures, stage)),
    days: daysText(stage, days, yard.locale),
  }));
  const print = (hours: Decimal): string => (hours.amount > 0n ? hoursText(hours, format) : '');
  const sum = (all: readonly Decimal[]): string => print(sumDecimals(all));
  return {
    hours: rows.map((row, index): StageHours => ({
      number: String(index + 1),
      stage: STAGE_NAMES[row.stage],
      who: crewText(yard, row.stage),
      days: row.days,
      planned: print(row.planned),
      worked: print(row.worked),
    })),
    totalHours: sum(rows.map(({ planned }) => planned)),
    totalWorked: sum(rows.map(({ worked }) => worked)),
  };
}

/** "2 × Laminator"; empty when the yard names no trade for the stage. */
function crewText({ stages, trades }: Yard, stage: Stage): string {
  const { trade, people = 1 } = stages[stage] ?? {};
  if (trade === undefined) return '';
  return `${people > 1 ? `${people}${NO_BREAK}×${NO_BREAK}` : ''}${trades[trade]?.name ?? trade}`;
}

/** Names of the stages that this boat does without; empty when there are none. */
export function stagesLeftOut(figures: Figures): string {
  const kept = new Set(stagesOfBuild(figures));
  return STAGES.filter((stage) => !kept.has(stage))
    .map((stage) => STAGE_NAMES[stage])
    .join(', ');
}

function stagesOfBuild({ build, stageHours }: Figures): readonly Stage[] {
  const worked = new Set<string>([
    ...ALWAYS,
    ...stageHours.map(({ stage }) => stage),
    ...build.items.flatMap(stagesOf),
    ...(build.order.record?.hours ?? []).map(({ stage }) => stage),
  ]);
  return STAGES.filter((stage) => worked.has(stage));
}

function plannedHours({ stageHours }: Figures, wanted: Stage): Decimal {
  return stageHours.find(({ stage }) => stage === wanted)?.hours ?? ZERO;
}

function workedHours({ build }: Figures, wanted: Stage): Decimal {
  const worked = (build.order.record?.hours ?? []).filter(({ stage }) => stage === wanted);
  return sumDecimals(worked.map(({ hours }) => hours));
}

/** What is fitted in a stage. The moulding stages make the boat itself; her standard fittings are fitted out. */
function itemsOfStage(
  { build }: Figures,
  stage: Stage,
  placed: (item: BuildItem) => PlacedItem,
): readonly StageItem[] {
  const isListed = ({ kind }: BuildItem): boolean =>
    kind === 'structure' ? stage === 'fit-out' : kind !== 'shell';
  return build.items
    .filter((item) => isListed(item) && stagesOf(item).includes(stage))
    .map((item) => ({
      ...placed(item),
      notes: item.notes.map(sentence),
    }));
}

/** The tables that a stage's trade works by. */
function tablesOfStage(figures: Figures, stage: Stage): StageSheet['tables'] {
  return [
    ...(stage === 'laminate' ? laminateTables(figures) : []),
    ...partLaminateTables(figures, stage),
    ...(stage === 'infusion' ? infusionTables(figures) : []),
    ...mixingTables(figures, stage),
    ...(stage === 'wiring' ? wiringTables(figures) : []),
  ];
}

/** The drawings that a stage's trade works by. */
function picturesOfStage(figures: Figures, stage: Stage, fontCss: string): StageSheet['pictures'] {
  if (stage !== 'wiring') return [];
  return [oneLinePicture(figures, fontCss), panelStripPicture(figures, fontCss)].filter(
    (picture) => picture !== undefined,
  );
}
