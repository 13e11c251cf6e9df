import type { ChargeFigures, ElectricsFigures } from '../../figures/index.ts';
import type { Formatter } from '../../units/index.ts';
import { plain } from './wiring-words.ts';
import { NO_BREAK } from '../../units/index.ts';

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
  const day = `A day draws ${ampereHours(budget.ampereHours, format)} (${format.number(budget.wattHours, 0)}${NO_BREAK}Wh at ${plain(volts, format)}${NO_BREAK}V)`;
  if ('notComputed' in bank) return [`${day}. Batteries not computed: ${bank.notComputed}.`];
  const share = format.percent(bank.usable / bank.rated, 0);
  return [
    `${day}; of ${ampereHours(bank.rated, format)} ${CHEMISTRY[bank.chemistry]} at ${plain(volts, format)}${NO_BREAK}V ${share} may be used, ${ampereHours(bank.usable, format)}.`,
    `Without charging that lasts ${autonomyText(bank.daysOfAutonomy, format)}; with everything on at once, ${hoursText(bank.hoursAtPeak, format)}.`,
  ];
}

/** "2.2 days (52 hours)", or why not. */
export function autonomyText(
  days: number | { readonly notComputed: string },
  format: Formatter,
): string {
  if (typeof days !== 'number') return `not computed: ${days.notComputed}`;
  return `${format.number(days, 1)}${NO_BREAK}days, ${format.number(days * 24, 0)}${NO_BREAK}hours`;
}

/** "3.6 h", or why not. */
export function hoursText(
  hours: number | { readonly notComputed: string },
  format: Formatter,
): string {
  return typeof hours === 'number'
    ? `${format.number(hours, 1)}${NO_BREAK}h`
    : `not computed: ${hours.notComputed}`;
}

/** How long a source takes to put a day's use back. */
export const chargeText = ({ hours }: ChargeFigures, format: Formatter): string =>
  hoursText(hours, format);

/** A charge as text: "29 Ah", one decimal below 10. */
export function ampereHours(value: number, format: Formatter): string {
  return `${format.number(value, value < 10 ? 1 : 0)}${NO_BREAK}Ah`;
}
