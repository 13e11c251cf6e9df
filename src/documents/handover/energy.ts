import type { CustomerElectrics, CustomerFigures } from '../../figures/index.ts';
import { type Formatter, formatterOf, UNIT_KINDS } from '../../units/index.ts';
import { ampereHours, autonomyText, chargeText, hoursText } from '../sections/energy-words.ts';
import { found, type FoundFigure } from '../sections/method-notes.ts';
import type { HandoverView } from './types.ts';

/** The owner’s electrics, before its figures have their marks. */
export type OwnersEnergy = Omit<NonNullable<HandoverView['energy']>, 'figures'> & {
  readonly figures: readonly FoundFigure[];
};

const SOURCES = {
  shore: 'On shore power',
  engine: 'With the engine running',
  sun: 'In full sun',
} as const;

/** The owner's electrics: what each thing draws in a day, how long the batteries last, how long they charge. */
export function handoverEnergy({ build, electrics }: CustomerFigures): OwnersEnergy | undefined {
  if ('notComputed' in electrics || electrics.circuits.length === 0) return undefined;
  const format = formatterOf(build.yard);
  const { circuits, budget, bank, charging, seriesBanks, volts: nominal } = electrics;
  const known = 'notComputed' in bank ? undefined : bank;
  return {
    rows: circuits.map(({ row: { circuit }, volts }) => ({
      name: circuit.name,
      current: format.current(circuit.current),
      time: format.hoursADay(circuit.hoursADay * UNIT_KINDS.duration.h),
      aDay: `${ampereHours(circuit.current * circuit.hoursADay, format)}${volts === nominal ? '' : ` at ${format.voltage(volts)}`}`,
    })),
    total: ampereHours(budget.ampereHours, format),
    totalOf: seriesBanks.length > 0 ? `Total at ${format.voltage(nominal)}` : 'Total',
    figures: [
      ...(known
        ? [
            found(
              'Batteries, usable',
              ampereHours(known.usable, format),
              `Of ${ampereHours(known.rated, format)} rated; using more than that each day wears them out early.`,
              'battery',
            ),
            found(
              'Lasts without charging',
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
    caution: 'The hours a day are assumed; your own use decides.',
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
