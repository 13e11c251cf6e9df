import { type Figures, ELECTRICS_BASIS } from '../figures/index.ts';
import { createFormatter } from '../units/index.ts';
import { ampereHours, autonomyText, chargeText, hoursText } from './energy-words.ts';
import type { HandoverView } from './handover-types.ts';
import { NO_BREAK } from './words.ts';

const SOURCES = {
  shore: 'On shore power',
  engine: 'With the engine running',
  sun: 'In full sun',
} as const;

/** The owner's electrics: what each thing draws in a day, how long the batteries last, how long they charge. */
export function handoverEnergy({ build, electrics }: Figures): HandoverView['energy'] {
  if ('notComputed' in electrics || electrics.circuits.length === 0) return undefined;
  const format = createFormatter(build.yard.locale, build.yard.units);
  const { circuits, budget, bank, charging, volts: nominal } = electrics;
  const known = 'notComputed' in bank ? undefined : bank;
  return {
    rows: circuits.map(({ row: { circuit }, volts }) => ({
      name: circuit.name,
      current: format.current(circuit.current),
      time: `${format.number(circuit.hoursADay, Number.isInteger(circuit.hoursADay * 10) ? 1 : 2)}${NO_BREAK}h`,
      aDay: ampereHours((circuit.current * circuit.hoursADay * volts) / nominal, format),
    })),
    total: ampereHours(budget.ampereHours, format),
    figures: [
      ...(known
        ? [
            {
              label: 'Batteries, usable',
              value: ampereHours(known.usable, format),
              method: `Of ${ampereHours(known.rated, format)} rated; more each day wears them out.`,
            },
            {
              label: 'Lasts without charging',
              value: autonomyText(known.daysOfAutonomy, format),
              method: 'At the day’s use above.',
            },
            {
              label: 'With everything on at once',
              value: hoursText(known.hoursAtPeak, format),
              method: 'From full to the usable share.',
            },
          ]
        : []),
      ...charging.map((source) => ({
        label: `${SOURCES[source.source]}: ${source.name}`,
        value: chargeText(source, format),
        method: 'To put one day’s use back, nothing else drawing.',
      })),
    ],
    method: `${ELECTRICS_BASIS.battery.validity} ${ELECTRICS_BASIS.battery.caution} Hours a day are assumed; yours decide.`,
  };
}
