import {
  type CustomerElectrics,
  type CustomerFigures,
  ELECTRICS_BASIS,
} from '../../figures/index.ts';
import { type Formatter, formatterOf, UNIT_KINDS } from '../../units/index.ts';
import { ampereHours, autonomyText, chargeText, hoursText } from '../sections/energy-words.ts';
import type { HandoverView } from './types.ts';

const SOURCES = {
  shore: 'On shore power',
  engine: 'With the engine running',
  sun: 'In full sun',
} as const;

/** The owner's electrics: what each thing draws in a day, how long the batteries last, how long they charge. */
export function handoverEnergy({ build, electrics }: CustomerFigures): HandoverView['energy'] {
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
    totalOf: seriesBanks.length > 0 ? `Together at ${format.voltage(nominal)}` : 'Together',
    figures: [
      ...(known
        ? [
            {
              label: 'Batteries, usable',
              value: ampereHours(known.usable, format),
              method: `Of ${ampereHours(known.rated, format)} rated; using more than that each day wears them out early.`,
            },
            {
              label: 'Lasts without charging',
              value: autonomyText(known.daysOfAutonomy, format),
              method: 'At the day’s use above.',
            },
            {
              label: 'With everything on at once',
              value: hoursText(known.hoursAtPeak, format),
              method: 'From full until the usable part is spent.',
            },
          ]
        : []),
      ...seriesBanks.flatMap((one) => seriesFigures(one, format)),
      ...charging.map((source) => ({
        label: `${SOURCES[source.source]}: ${source.name}`,
        value: chargeText(source, format),
        method: 'To put one day’s use back, nothing else drawing.',
      })),
    ],
    method: `${ELECTRICS_BASIS.battery.validity} ${ELECTRICS_BASIS.battery.caution} The hours a day are assumed; your own use decides.`,
  };
}

/** Batteries in series for one device: they feed nothing else, and need a charger of their own voltage. */
function seriesFigures(
  { volts, bank }: CustomerElectrics['seriesBanks'][number],
  format: Formatter,
): NonNullable<HandoverView['energy']>['figures'] {
  const label = `Batteries in series, ${format.voltage(volts)}`;
  if ('notComputed' in bank) {
    return [{ label, value: 'not computed', method: `${bank.notComputed}.` }];
  }
  return [
    {
      label: `${label}, usable`,
      value: ampereHours(bank.usable, format),
      method: `Of ${ampereHours(bank.rated, format)} rated; they feed nothing else. How they are charged is to be shown at handover.`,
    },
    {
      label: `${format.voltage(volts)}, with everything on`,
      value: hoursText(bank.hoursAtPeak, format),
      method: 'From full until the usable part is spent.',
    },
  ];
}
