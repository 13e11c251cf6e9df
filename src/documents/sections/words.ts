import { formatMoney, isNegative, type Money } from '../../money/index.ts';
import type { Afloat, CustomerBuild, SpeedBand } from '../../figures/index.ts';
import { type Formatter, kilograms, metres, NO_BREAK, UNIT_KINDS } from '../../units/index.ts';

/** How grave a finding is. */
export const SEVERITY_WORDS = { error: 'Error', warning: 'Warning', note: 'Note' } as const;

/** The model, with the boat's own name when it has one. */
export function boatName({ hull, order }: Pick<CustomerBuild, 'hull' | 'order'>): string {
  return order.boat.name === undefined ? hull.name : `${hull.name} “${order.boat.name}”`;
}

/** A text with a full stop, whether or not whoever typed it set one. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  return /[.!?…]$/.test(trimmed) ? trimmed : `${trimmed}.`;
}

/** "4 ×" before the name of what is ordered more than once; empty for one. */
export function countOf(quantity: number, format: Formatter): string {
  return quantity > 1 ? `${format.number(quantity, 0)}${NO_BREAK}×` : '';
}

/** "a, b and c". */
export const list = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

/** The lines that there are. */
export const present = (lines: readonly (string | undefined)[]): readonly string[] =>
  lines.filter((line) => line !== undefined);

/** Who the document is for, as on an envelope, with how to reach them. */
export function customerLines({
  order: { customer },
}: Pick<CustomerBuild, 'order'>): readonly string[] {
  return present([
    customer.name,
    customer.contact,
    ...customer.address,
    customer.phone,
    customer.email,
  ]);
}

/** "+$120.00" or "−$120.00": a change of price. */
export function signedMoney(change: Money, locale: string): string {
  return `${isNegative(change) ? '' : '+'}${formatMoney(change, locale)}`;
}

/** A size with the sign of its change: "+12 kg", "−1.9 kn". */
export const signedSize = (change: number, size: string): string =>
  `${change < 0 ? '−' : '+'}${size}`;

/** With a capital letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "fresh water", "sea water". */
export const waterName = ({ water }: Pick<Afloat, 'water'>): string => `${water} water`;

/** In which water figures are, and of which two it is the worse. */
export const waterSentence = (
  { order }: Pick<CustomerBuild, 'order'>,
  figured: Pick<Afloat, 'water'>,
): string =>
  `In ${waterName(figured)}${order.boat.water === 'both' ? ', the worse of fresh and sea' : ''}.`;

/** "22 to 26 kn". */
export const bandText = ({ low, high }: SpeedBand, format: Formatter): string =>
  format.band('roundSpeed', low, high);

/** A value of a margin, by the unit that the room gives it in. */
export function marginText(value: number, unit: string, format: Formatter): string {
  if (unit === 'kg') return format.mass(kilograms(value));
  if (unit === 'm') return format.dimension(metres(value));
  if (unit === 'W') return format.finePower(value);
  return unit === '°' ? format.angle(value * UNIT_KINDS.angle.deg) : format.percent(value, 1);
}
