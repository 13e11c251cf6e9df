import type { ChargeFigures, ElectricsFigures } from '../../figures/index.ts';
import { type Computed, type Formatter, known, NO_BREAK, UNIT_KINDS } from '../../units/index.ts';

const HOUR = UNIT_KINDS.duration.h;
const CHEMISTRY = { flooded: 'lead-acid', agm: 'AGM', lifepo4: 'LiFePO4' } as const;

/** What the boat draws in a day and how long the batteries last, in sentences. */
export function bankWords(
  { bank, budget, volts, seriesBanks }: ElectricsFigures,
  format: Formatter,
): readonly string[] {
  return [
    ...wordsOf({ bank, budget, volts }, format),
    ...seriesBanks.flatMap((one) => wordsOf(one, format)),
  ];
}

function wordsOf(
  { bank, budget, volts }: Pick<ElectricsFigures, 'bank' | 'budget' | 'volts'>,
  format: Formatter,
): readonly string[] {
  const day = `A day uses ${ampereHours(budget.ampereHours, format)} (${format.energy(budget.wattHours * HOUR)} at ${format.voltage(volts)})`;
  if ('notComputed' in bank) return [`${day}. Batteries not computed: ${bank.notComputed}.`];
  const share = format.percent(bank.usable / bank.rated, 0);
  return [
    `${day}; of ${ampereHours(bank.rated, format)} ${CHEMISTRY[bank.chemistry]} at ${format.voltage(volts)} ${share} may be used, ${ampereHours(bank.usable, format)}.`,
    `Without charging that lasts ${autonomyText(bank.daysOfAutonomy, format)}; with everything on at once, ${hoursText(bank.hoursAtPeak, format)}.`,
  ];
}

/** "2.2 days, 52 hours", or why not. */
export const autonomyText = (days: Computed<number>, format: Formatter): string =>
  known(
    days,
    (count) =>
      `${format.number(count, 1)}${NO_BREAK}days, ${format.number(count * 24, 0)}${NO_BREAK}hours`,
  );

/** "3.6 h", or why not. */
export const hoursText = (hours: Computed<number>, format: Formatter): string =>
  known(hours, (count) => format.hours(count * HOUR));

/** How long a source takes to put a day's use back. */
export const chargeText = ({ hours }: ChargeFigures, format: Formatter): string =>
  hoursText(hours, format);

/** A charge of so many ampere-hours as text: "29 Ah", one decimal below 10. */
export const ampereHours = (value: number, format: Formatter): string =>
  format.charge(value * UNIT_KINDS.charge.Ah);
