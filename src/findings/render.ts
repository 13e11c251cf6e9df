import { codeFrameColumns } from '@babel/code-frame';
import { FINDING_CODES } from './codes.ts';
import type { Finding, Place } from './finding.ts';
import { gateOf } from './gate.ts';

/** A line longer than this is not shown with its finding: the caret would be lost in it. */
const LONGEST_LINE_SHOWN = 400;

export interface Position {
  readonly line: number;
  readonly column: number;
}

/** Line and column, both from 1, of an offset in a text. */
export function positionAt(text: string, offset: number): Position {
  const before = text.slice(0, offset);
  const line = before.split('\n').length;
  return { line, column: offset - before.lastIndexOf('\n') };
}

/** "orders/a.yaml:12:7", or the file alone when the place has no range or the text is not at hand. */
export function describePlace(place: Place, text: string | undefined): string {
  if (!place.range || text === undefined) return place.file;
  const { line, column } = positionAt(text, place.range[0]);
  return `${place.file}:${line}:${column}`;
}

/**
 * A finding in words, with the line it is about and a caret under it.
 *
 * @param sources - the text of each file by its name
 */
export function renderFinding(finding: Finding, sources: ReadonlyMap<string, string>): string {
  const text = sources.get(finding.place.file);
  const lines = [
    `${describePlace(finding.place, text)}: ${finding.severity}: ${FINDING_CODES[finding.code].means} [${finding.code}]`,
  ];
  if (text !== undefined && finding.place.range) lines.push(...frame(text, finding.place.range));
  lines.push(`  Found: ${finding.received}`);
  if (finding.expected !== undefined) lines.push(`  Expected: ${finding.expected}`);
  lines.push(`  Fix: ${finding.remedy}`, ...gateLines(finding));
  return withoutControls(lines.join('\n'));
}

/** What stands between it and the papers of the boat. */
function gateLines({ code, received, expected, accepted }: Finding): readonly string[] {
  if (accepted) {
    return [`  Accepted: by ${accepted.by} on ${accepted.date}: ${accepted.reason}`];
  }
  const gate = gateOf(code);
  if (gate === undefined) return [];
  if (gate === 'never') return ['  Until then: no offer, variation or handover pack is made'];
  const paper = gate === 'by name' ? 'offer, variation or handover pack' : 'handover pack';
  const was = [received, ...(expected === undefined ? [] : [expected])].map((text) =>
    JSON.stringify(text),
  );
  const found = `found: ${was.join(', limit: ')}`;
  return [
    `  Until then: no ${paper} is made, unless the order has: accepted: [{ finding: ${code}, ${found}, by: NAME, date: DAY, reason: WHY }]`,
  ];
}

/** A file may hold characters that would move the cursor or clear the screen of whoever reads the finding. */
function withoutControls(text: string): string {
  return text.replaceAll(
    // oxlint-disable-next-line no-control-regex -- control characters are what is looked for
    /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u2028-\u202E\u2066-\u2069]/g,
    '\uFFFD',
  );
}

/** The line with its caret; nothing for a line too long to be read. */
function frame(text: string, [from, to]: readonly [number, number]): readonly string[] {
  const start = positionAt(text, from);
  const newline = text.indexOf('\n', from);
  const lineEnd = newline < 0 ? text.length : newline;
  const line = text.slice(from - start.column + 1, lineEnd).replace(/\r$/, '');
  if (line.length > LONGEST_LINE_SHOWN) return [];
  const shown = Math.max(1, Math.min(to - from, line.length - start.column + 1));
  const end = { line: start.line, column: start.column + shown };
  // Line ends that `positionAt` does not count must not be counted by the frame either.
  const counted = text.replaceAll(/[\u2028\u2029]|\r(?!\n)/g, ' ');
  return [codeFrameColumns(counted, { start, end }, { linesAbove: 0, linesBelow: 0 })];
}
