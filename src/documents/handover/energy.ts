import {
  type CustomerElectrics,
  type CustomerFigures,
  ELECTRICS_BASIS,
} from '../../figures/index.ts';
import { createFormatter, type Formatter } from '../../units/index.ts';
import { ampereHours, autonomyText, chargeText, hoursText } from '../sections/energy-words.ts';
import type { HandoverView } from './types.ts';
import { NO_BREAK } from '../../units/index.ts';

const SOURCES = {
  shore: 'On shore power',
  engine: 'With the engine running',
  sun: 'In full sun',
} as const;

/** The owner's electrics: what each thing draws in a day, how long the batteries last, how long they charge. */
export function handoverEnergy({ build, electrics }: CustomerFigures): HandoverView['energy'] {
  if ('notComputed' in electrics || electrics.circuits.length === 0) return undefined;
  const format = createFormatter(build.yard.locale, build.yard.units);
  const { circuits, budget, bank, charging, seriesBanks, volts: nominal } = electrics;
  const known = 'notComputed' in bank ? undefined : bank;
  return {
    rows: circuits.map(({ row: { circuit }, volts }) => ({
      name: circuit.name,
      current: format.current(circuit.current),
      time: `${format.number(circuit.hoursADay, Number.isInteger(circuit.hoursADay * 10) ? 1 : 2)}${NO_BREAK}h`,
      aDay: `${ampereHours(circuit.current * circuit.hoursADay, format)}${volts === nominal ? '' : ` at ${volts}${NO_BREAK}V`}`,
    })),
    total: ampereHours(budget.ampereHours, format),
    totalOf: seriesBanks.length > 0 ? `Together at ${nominal}${NO_BREAK}V` : 'Together',
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
  const label = `Batteries in series, ${volts}${NO_BREAK}V`;
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
      label: `${volts}${NO_BREAK}V, with everything on`,
      value: hoursText(bank.hoursAtPeak, format),
      method: 'From full until the usable part is spent.',
    },
  ];
}
