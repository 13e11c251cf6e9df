import type { Figures, InfusionFigures, InfusionPlan } from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import {
  cubicMetres,
  formatterOf,
  decimalToNumber,
  type Formatter,
  kilograms,
  metres,
  NO_BREAK,
  UNIT_KINDS,
} from '../../units/index.ts';
import { figure, row, stageTable, type StageTable, text, write } from './stage-table.ts';

/** How she is filled, what the bag takes, and the test of the bag; nothing for a hull laid up by hand. */
export function infusionTables(figures: Figures): readonly StageTable[] {
  const { build, laminate } = figures;
  if ('notComputed' in laminate || !laminate.infusion) return [];
  const format = formatterOf(build.yard);
  return [
    bagTable(laminate.kit.bag, format),
    leakDownTable(figures, format),
    planTable(laminate.infusion, figures, format),
  ];
}

function planTable(infusion: InfusionFigures, figures: Figures, format: Formatter): StageTable {
  const columns = [text('What'), figure('Planned'), write('Measured')];
  const { plan } = infusion;
  if ('notComputed' in plan) {
    const words = [`Not computed: ${plan.notComputed}. Ask before any resin is mixed.`];
    return stageTable('infusion-plan', 'Infusion plan', { words, columns, rows: [] });
  }
  return stageTable('infusion-plan', 'Infusion plan', {
    columns,
    rows: planRows(infusion, plan, figures, format),
    notes: methodLines('infusion'),
  });
}

function planRows(
  { asLaid, gelMinutes }: InfusionFigures,
  plan: InfusionPlan,
  { build }: Figures,
  format: Formatter,
) {
  const lines = asLaid?.feedLines ?? plan.feedLines;
  const celsius = decimalToNumber(build.yard.workshop.temperature);
  const spacing = metres((plan.spacing * plan.feedLines) / lines);
  const each = format.mass(kilograms(plan.resin / lines));
  return [
    row('Shop and resin temperature', format.temperature(celsius), ''),
    row(
      'Feed lines',
      lines === 1 ? '1, along the keel' : `${lines}, ${format.dimension(spacing)} apart`,
      '',
    ),
    row(
      `Resin, in batches; ${format.mass(plan.lost)} of it stays in mesh and lines`,
      format.mass(plan.resin),
      '',
    ),
    ...(lines > 1 ? [row('Resin of one feed line', each, '')] : []),
    row(
      'Catch pot, at least',
      format.volume(cubicMetres(plan.catchPotLitres * UNIT_KINDS.volume.L)),
      '',
    ),
    row(
      'Gel time of a cup',
      typeof gelMinutes === 'number' ? format.minutes(gelMinutes * 60) : '',
      '',
    ),
    row('Full, expected', format.minutes(asLaid?.fillSeconds ?? plan.fillSeconds), ''),
    row('Full, at the latest', format.minutes(plan.limitSeconds), ''),
  ];
}

function leakDownTable({ build }: Figures, format: Formatter): StageTable {
  const { leakDown, vacuum } = build.yard.workshop;
  const shown = Array.from({ length: leakDown.minutes + 1 }, (_, minute) => minute);
  const step = Math.ceil(shown.length / 7);
  const read = shown.filter((minute) => minute % step === 0);
  return stageTable('leak-down', 'Leak-down test, before any resin is mixed', {
    words: [
      `Pump to ${format.pressure(vacuum)}, shut the pump off, read the gauge. The bag may lose ${format.pressure(leakDown.most)} in ${leakDown.minutes}${NO_BREAK}minutes; more: find the leak and begin again.`,
    ],
    columns: [text('Minute'), ...read.map((minute) => write(String(minute)))],
    rows: [row(`Gauge, ${format.unit('pressure')}`, ...read.map(() => ''))],
  });
}

function bagTable(
  bag: readonly { readonly name: string; readonly quantity: number; readonly unit: string }[],
  format: Formatter,
): StageTable {
  const cells = bag.map(
    ({ name, quantity, unit }) =>
      `${name} ${unit === 'm2' ? format.rollArea(quantity) : format.rollLength(quantity)}`,
  );
  return stageTable('bag', 'Bag materials', {
    columns: [text('Each ticked when it is in place')],
    rows: [row(cells)],
  });
}
