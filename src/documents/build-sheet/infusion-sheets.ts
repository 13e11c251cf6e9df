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
import { type Block, column, row } from '../blocks/block.ts';
import { workTable } from './work-table.ts';

/** How it is filled, what the bag takes, and the test of the bag; nothing for a hull laid up by hand. */
export function infusionTables(figures: Figures): readonly Block[] {
  const { build, laminate } = figures;
  if ('notComputed' in laminate || !laminate.infusion) return [];
  const format = formatterOf(build.yard);
  return [
    bagTable(laminate.kit.bag, format),
    leakDownTable(figures, format),
    planTable(laminate.infusion, figures, format),
  ];
}

function planTable(infusion: InfusionFigures, figures: Figures, format: Formatter): Block {
  const columns = [column('text', 'What'), column('num', 'Planned'), column('write', 'Measured')];
  const { plan } = infusion;
  if ('notComputed' in plan) {
    const said = [`Not computed: ${plan.notComputed}. Ask before any resin is mixed.`];
    return workTable('Infusion plan', { said, columns, rows: [] });
  }
  return workTable('Infusion plan', {
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
    row('plain', 'Shop and resin temperature', format.temperature(celsius), ''),
    row(
      'plain',
      'Feed lines',
      lines === 1 ? '1, along the keel' : `${lines}, ${format.dimension(spacing)} apart`,
      '',
    ),
    row(
      'plain',
      `Resin, in batches; ${format.mass(plan.lost)} of it stays in mesh and lines`,
      format.mass(plan.resin),
      '',
    ),
    ...(lines > 1 ? [row('plain', 'Resin of one feed line', each, '')] : []),
    row(
      'plain',
      'Catch pot, at least',
      format.volume(cubicMetres(plan.catchPotLitres * UNIT_KINDS.volume.L)),
      '',
    ),
    row(
      'plain',
      'Gel time of a cup',
      typeof gelMinutes === 'number' ? format.minutes(gelMinutes * 60) : '',
      '',
    ),
    row('plain', 'Full, expected', format.minutes(asLaid?.fillSeconds ?? plan.fillSeconds), ''),
    row('plain', 'Full, at the latest', format.minutes(plan.limitSeconds), ''),
  ];
}

function leakDownTable({ build }: Figures, format: Formatter): Block {
  const { leakDown, vacuum } = build.yard.workshop;
  const shown = Array.from({ length: leakDown.minutes + 1 }, (_, minute) => minute);
  const step = Math.ceil(shown.length / 7);
  const read = shown.filter((minute) => minute % step === 0);
  return workTable('Leak-down test, before any resin is mixed', {
    said: [
      `Pump to ${format.pressure(vacuum)}, shut the pump off, read the gauge. The bag may lose ${format.pressure(leakDown.most)} in ${leakDown.minutes}${NO_BREAK}minutes; more: find the leak and begin again.`,
    ],
    columns: [column('text', 'Minute'), ...read.map((minute) => column('write', String(minute)))],
    rows: [row('plain', `Gauge, ${format.unit('pressure')}`, ...read.map(() => ''))],
  });
}

function bagTable(
  bag: readonly { readonly name: string; readonly quantity: number; readonly unit: string }[],
  format: Formatter,
): Block {
  const cells = bag.map(
    ({ name, quantity, unit }) =>
      `${name} ${unit === 'm2' ? format.rollArea(quantity) : format.rollLength(quantity)}`,
  );
  return workTable('Bag materials', {
    columns: [column('text', 'Each ticked when it is in place')],
    rows: [row('plain', { text: '', ticks: cells })],
  });
}
