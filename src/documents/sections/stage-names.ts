import type { Stage } from '../../schema/index.ts';
import {
  type Decimal,
  decimalToNumber,
  type Formatter,
  roundDecimal,
  UNIT_KINDS,
} from '../../units/index.ts';

/** What the shop calls each stage of a build. */
export const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  'mould-preparation': '{Mould} preparation',
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

/** Hours as a sheet prints them: to a hundredth. What sheets add up is this, so that their sums are right. */
export const printedHours = (hours: Decimal): Decimal => roundDecimal(hours, 2);

/** "12 h", "6.5 h" or "5.25 h". */
export function hoursText(hours: Decimal, format: Formatter): string {
  return format.workHours(decimalToNumber(printedHours(hours)) * UNIT_KINDS.duration.h);
}
