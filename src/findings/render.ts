import { codeFrameColumns } from '@babel/code-frame';
import { FINDING_CODES } from './codes.ts';
import type { Finding, Place } from './finding.ts';

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
  if (text !== undefined && finding.place.range) lines.push(frame(text, finding.place.range));
  lines.push(`  found: ${finding.received}`);
  if (finding.expected !== undefined) lines.push(`  expected: ${finding.expected}`);
  lines.push(`  to mend: ${finding.mend}`);
  return lines.join('\n');
}

function frame(text: string, [from, to]: readonly [number, number]): string {
  const start = positionAt(text, from);
  const lineEnd = text.indexOf('\n', from);
  const last = Math.max(from + 1, Math.min(to, lineEnd < 0 ? text.length : lineEnd));
  const end = { line: start.line, column: start.column + (last - from) };
  return codeFrameColumns(text, { start, end }, { linesAbove: 0, linesBelow: 0 });
}
