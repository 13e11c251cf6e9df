import type { Stage } from '../schema/index.ts';
import { type Decimal, decimalToNumber, type Formatter, roundDecimal } from '../units/index.ts';

/** What the shop calls each stage of a build. */
export const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  'mould-preparation': 'Mould preparation',
  gelcoat: 'Gelcoat',
  laminate: 'Laminate',
  infusion: 'Infusion',
  cure: 'Cure',
  release: 'Release and weigh',
  'fit-out': 'Fit-out',
  wiring: 'Wiring',
  engine: 'Engine',
  trailer: 'Trailer',
  'water-trial': 'Water trial',
  handover: 'Handover',
};

/** Hours as a sheet prints them: to a tenth. What sheets add up is this, so that their sums are right. */
export const printedHours = (hours: Decimal): Decimal => roundDecimal(hours, 1);

/** "12 h" or "6.5 h". */
export function hoursText(hours: Decimal, format: Formatter): string {
  const value = decimalToNumber(printedHours(hours));
  return `${format.number(value, Number.isInteger(value) ? 0 : 1)} h`;
}
