import { isBlock } from './placed.ts';

/** A character that no text for people has: it would reach a document or a screen. */
// oxlint-disable-next-line no-control-regex -- control characters are what is looked for
export const CONTROL = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F\uFFFE\uFFFF]|\r(?!\n)/;

const LONGEST_SHOWN = 80;

/** Text short enough to stand in a finding. */
export function clip(text: string): string {
  if (text.length <= LONGEST_SHOWN) return text;
  // Half of a surrogate pair at the cut would print as a broken character.
  return `${text.slice(0, LONGEST_SHOWN).replace(/[\uD800-\uDBFF]$/, '')}…`;
}

/** What a plain value is, in words for the person who typed it. */
export function describeValue(value: unknown): string {
  if (value === undefined || value === null || value === '') return 'nothing';
  if (typeof value === 'string') return `"${clip(value)}"`;
  if (typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return isBlock(value) ? 'a block of fields' : typeof value;
}

/** "a, b, c", shortened when the list is long. */
export function listed(names: readonly string[]): string {
  const most = 24;
  const shown = names.slice(0, most).map(clip).join(', ');
  return names.length > most ? `${shown} and ${names.length - most} more` : shown;
}
