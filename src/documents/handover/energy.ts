import type { CustomerElectrics, CustomerFigures } from '../../figures/index.ts';
import { type Formatter, formatterOf, UNIT_KINDS } from '../../units/index.ts';
import { ampereHours, autonomyText, chargeText, hoursText } from '../sections/energy-words.ts';
import { figureOf } from '../sections/fact-words.ts';
import { found, type FoundFigure } from '../sections/method-notes.ts';
import { type Block, column, heads, row, table } from '../blocks/block.ts';

/** The owner’s electrics: a day’s use in a table, and the figures that follow from it. */
interface OwnersEnergy {
  readonly use: readonly Block[];
  readonly figures: readonly FoundFigure[];
}

const USE_COLUMNS = [column('head', 'Circuit'), ...heads('num', 'Current', 'Hours a day', 'A day')];

const SOURCES = {
  shore: 'On shore power',
  engine: 'With the engine running',
  sun: 'In full sun',
} as const;

/** The owner's electrics: what each thing draws in a day, how long the batteries last, how long they charge. */
export function handoverEnergy({
  build,
  electrics,
  facts: { energy },
}: CustomerFigures): OwnersEnergy | undefined {
  if ('notComputed' in electrics || electrics.circuits.length === 0) return undefined;
  const format = formatterOf(build.yard);
  const { circuits, budget, bank, charging, seriesBanks, volts: nominal } = electrics;
  const known = 'notComputed' in bank ? undefined : bank;
  const rows = circuits.map(({ row: { circuit }, volts }) =>
    row(
      'plain',
      circuit.name,
      format.current(circuit.current),
      format.hoursADay(circuit.hoursADay * UNIT_KINDS.duration.h),
      `${ampereHours(circuit.current * circuit.hoursADay, format)}${volts === nominal ? '' : ` at ${format.voltage(volts)}`}`,
    ),
  );
  const total = seriesBanks.length > 0 ? `Total at ${format.voltage(nominal)}` : 'Total';
  return {
    use: table(USE_COLUMNS, [
      ...rows,
      row('whole', total, '', '', ampereHours(budget.ampereHours, format)),
    ]),
    figures: [
      ...(known && energy
        ? [
            figureOf(
              energy.usable,
              format,
              `Of ${ampereHours(known.rated, format)} rated; using more than that each day wears them out early.`,
            ),
            found(
              energy.days.label,
              autonomyText(known.daysOfAutonomy, format),
              'At the day’s use above.',
              'battery',
            ),
            found(
              'With everything on at once',
              hoursText(known.hoursAtPeak, format),
              'From full until the usable part is spent.',
              'battery',
            ),
          ]
        : []),
      ...seriesBanks.flatMap((one) => seriesFigures(one, format)),
      ...charging.map((source) =>
        found(
          `${SOURCES[source.source]}: ${source.name}`,
          chargeText(source, format),
          'To put one day’s use back, with nothing else switched on.',
          'battery',
        ),
      ),
    ],
  };
}

/** Batteries in series for one device: they feed nothing else, and need a charger of their own voltage. */
function seriesFigures(
  { volts, bank }: CustomerElectrics['seriesBanks'][number],
  format: Formatter,
): readonly FoundFigure[] {
  const label = `Batteries in series, ${format.voltage(volts)}`;
  if ('notComputed' in bank) {
    return [found(label, 'not computed', `${bank.notComputed}.`)];
  }
  return [
    found(
      `${label}, usable`,
      ampereHours(bank.usable, format),
      `Of ${ampereHours(bank.rated, format)} rated; they feed nothing else. You will be shown at handover how they are charged.`,
      'battery',
    ),
    found(
      `${format.voltage(volts)}, with everything on`,
      hoursText(bank.hoursAtPeak, format),
      'From full until the usable part is spent.',
      'battery',
    ),
  ];
}
