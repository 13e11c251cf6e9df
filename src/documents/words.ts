import type { Build } from '../resolve/index.ts';
import type { Formatter } from '../units/index.ts';

/** The model, with the boat's own name when she has one. */
export function boatName({ hull, order }: Build): string {
  return order.boat.name === undefined ? hull.name : `${hull.name} “${order.boat.name}”`;
}

/** A text with a full stop, whether or not whoever typed it set one. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  return /[.!?…]$/.test(trimmed) ? trimmed : `${trimmed}.`;
}

/** Between a number and what it counts: a space that no line breaks at. */
export const NO_BREAK = '\u00A0';

/** "4 ×" before the name of what is ordered more than once; empty for one. */
export function countOf(quantity: number, format: Formatter): string {
  return quantity > 1 ? `${format.number(quantity, 0)}${NO_BREAK}×` : '';
}

/** The lines that there are. */
export const present = (lines: readonly (string | undefined)[]): readonly string[] =>
  lines.filter((line) => line !== undefined);

/** Who the document is for, as on an envelope, with how to reach them. */
export function customerLines({ order: { customer } }: Build): readonly string[] {
  return present([
    customer.name,
    customer.contact,
    ...customer.address,
    customer.phone,
    customer.email,
  ]);
}

/** With a capital letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
