import type { Figures } from '../../figures/index.ts';
import { type BuildItem, stagesOf } from '../../resolve/index.ts';
import { type Stage, STAGES, type Yard } from '../../schema/index.ts';
import { formatterOf, type Decimal, ZERO, sumDecimals, NO_BREAK } from '../../units/index.ts';
import { STAGE_CAUTIONS } from './cautions.ts';
import { daysNote, daysText, type PlannedDays } from './days.ts';
import { gateTables } from './gate-sheets.ts';
import { infusionTables } from './infusion-sheets.ts';
import { laminateTables } from './laminate-sheets.ts';
import { mixingTables } from './mixing-sheets.ts';
import { partLaminateTables } from './part-laminate-sheets.ts';
import { materialsOf } from './parts.ts';
import { type Marks, PLACE_COLUMNS, placedRow } from './placing.ts';
import { wiringTables } from './wiring-sheets.ts';
import {
  type Block,
  column,
  factList,
  heads,
  type Part,
  picture,
  row,
  section,
  table,
  under,
  words,
} from '../blocks/block.ts';
import type { CaptionedPicture } from '../sections/picture.ts';
import { hoursText, printedHours, STAGE_NAMES } from '../sections/stage-names.ts';
import { present, sentence } from '../sections/words.ts';
import { oneLinePicture, panelStripPicture } from '../sections/wiring-drawing.ts';

/** Stages that no boat goes without, planned hours or not. */
const ALWAYS: ReadonlySet<Stage> = new Set(['release', 'water-trial', 'handover']);

interface StageOptions {
  readonly planned: PlannedDays | undefined;
  readonly fontCss: string;
  readonly marks: Marks;
}

/** Every stage that this boat goes through, in the order of the build, with what it takes. */
export function stageParts(
  figures: Figures,
  { planned, fontCss, marks }: StageOptions,
): readonly Part[] {
  const { order, yard } = figures.build;
  const format = formatterOf(yard);
  return stagesOfBuild(figures).map((stage, index) => {
    const hours = plannedHours(figures, stage);
    const blocks = [
      ...whatAndWho(yard, stage),
      ...cautionsOf(stage),
      ...materialsOf(figures.build, stage, format),
      ...fittedIn(figures, stage, marks),
      ...tablesOfStage(figures, stage),
      ...picturesOfStage(figures, stage, fontCss).map(picture),
      ...gateTables(figures, stage),
      signOff(yard, stage),
    ];
    return {
      ...section(`stage-${stage}`, STAGE_NAMES[stage], ...blocks),
      style: 'stage',
      number: String(index + 1),
      beside: [
        order.number,
        daysText(stage, planned, yard.locale),
        hours.amount > 0n ? `${hoursText(hours, format)} planned` : '',
      ].filter((text) => text !== ''),
    };
  });
}

function whatAndWho(yard: Yard, stage: Stage): readonly Block[] {
  const who = crewText(yard, stage);
  const does = yard.stages[stage]?.does;
  if (who === '' && does === undefined) return [];
  const text = does === undefined ? '' : sentence(does);
  return words('plain', { text, ...(who !== '' && { strong: `${who}.` }) });
}

const cautionsOf = (stage: Stage): readonly Block[] => {
  const lines = STAGE_CAUTIONS[stage] ?? [];
  return lines.length === 0 ? [] : [under('cautions', 'Caution', ...words('list', ...lines))];
};

/** What is measured and checked before a stage is over, and who signs for it. */
function signOff(yard: Yard, stage: Stage): Block {
  const { measures = [], checks = [] } = yard.stages[stage] ?? {};
  const blank = (label: string) => ({ label, value: '' });
  return under(
    'sign-off',
    '',
    ...(measures.length === 0
      ? []
      : [under('', 'Measure and write down', factList('measures', measures.map(blank)))]),
    ...(checks.length === 0 ? [] : [under('', 'Check', { block: 'checks', lines: checks })]),
    factList('sign', ['Hours worked', `${STAGE_NAMES[stage]} signed off by`, 'Date'].map(blank)),
  );
}

/** Planned and worked hours of every stage, and their sums: those of the printed rows. */
export function hoursByStage(figures: Figures, planned: PlannedDays | undefined): readonly Block[] {
  const { yard } = figures.build;
  const format = formatterOf(yard);
  const print = (hours: Decimal): string => (hours.amount > 0n ? hoursText(hours, format) : '');
  const days = (text: string): readonly string[] => (planned ? [text] : []);
  const stages = stagesOfBuild(figures).map((stage) => ({
    stage,
    planned: printedHours(plannedHours(figures, stage)),
    worked: printedHours(workedHours(figures, stage)),
  }));
  const rows = stages.map((one, index) =>
    row(
      'plain',
      String(index + 1),
      STAGE_NAMES[one.stage],
      crewText(yard, one.stage),
      ...days(daysText(one.stage, planned, yard.locale)),
      print(one.planned),
      print(one.worked),
      '',
    ),
  );
  const sum = (all: readonly Decimal[]): string => print(sumDecimals(all));
  const total = row(
    'sum',
    '',
    'Total',
    '',
    ...days(''),
    sum(stages.map((one) => one.planned)),
    sum(stages.map((one) => one.worked)),
    '',
  );
  const missing = stagesLeftOut(figures);
  return [
    ...table(
      [
        column('number', 'No.'),
        column('head', 'Stage'),
        ...heads('text', 'Who', ...days('Days')),
        column('num', 'Planned'),
        column('write', 'Worked'),
        column('tick', 'Done'),
      ],
      [...rows, total],
    ),
    ...words(
      'small',
      ...present([
        planned && daysNote(planned, yard.locale),
        missing === '' ? undefined : `Not in this order: ${missing}.`,
      ]),
    ),
  ];
}

/** "2 × Laminator"; empty when the yard names no trade for the stage. */
function crewText({ stages, trades }: Yard, stage: Stage): string {
  const { trade, people = 1 } = stages[stage] ?? {};
  if (trade === undefined) return '';
  return `${people > 1 ? `${people}${NO_BREAK}×${NO_BREAK}` : ''}${trades[trade]?.name ?? trade}`;
}

/** Names of the stages that this boat does without; empty when there are none. */
function stagesLeftOut(figures: Figures): string {
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

/** What is fitted in a stage. The moulding stages make the boat itself; its standard fittings are fitted out. */
function fittedIn({ build }: Figures, stage: Stage, marks: Marks): readonly Block[] {
  const format = formatterOf(build.yard);
  const isListed = ({ kind }: BuildItem): boolean =>
    kind === 'structure' ? stage === 'fit-out' : kind !== 'shell';
  const fitted = build.items.filter((item) => isListed(item) && stagesOf(item).includes(stage));
  const rows = fitted.flatMap((item) => [
    placedRow(item, marks, format, ''),
    ...(item.notes.length === 0
      ? []
      : [row('beneath', '', { text: '', list: item.notes.map(sentence) })]),
  ]);
  const heading = stage === 'water-trial' ? 'Try' : 'Fit';
  return rows.length === 0
    ? []
    : [under('items', heading, ...table([column('tick', 'Done'), ...PLACE_COLUMNS], rows))];
}

/** The tables that a stage's trade works by. */
function tablesOfStage(figures: Figures, stage: Stage): readonly Block[] {
  return [
    ...(stage === 'laminate' ? laminateTables(figures) : []),
    ...partLaminateTables(figures, stage),
    ...(stage === 'infusion' ? infusionTables(figures) : []),
    ...mixingTables(figures, stage),
    ...(stage === 'wiring' ? wiringTables(figures) : []),
  ];
}

/** The drawings that a stage's trade works by. */
function picturesOfStage(
  figures: Figures,
  stage: Stage,
  fontCss: string,
): readonly CaptionedPicture[] {
  if (stage !== 'wiring') return [];
  return [oneLinePicture(figures, fontCss), panelStripPicture(figures, fontCss)].filter(
    (drawn) => drawn !== undefined,
  );
}
