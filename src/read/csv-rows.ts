import { CsvError, parse } from 'csv-parse/sync';
import { type Finding, finding } from '../findings/index.ts';
import { clip, CONTROL } from './words.ts';

type Range = readonly [number, number];

/** One record of a CSV text; each cell with the characters that it stands on. */
export interface CsvRow {
  readonly cells: readonly { readonly text: string; readonly range: Range }[];
  readonly range: Range;
}

type CsvRows =
  | { readonly rows: readonly CsvRow[]; readonly finding?: never }
  | { readonly rows?: never; readonly finding: Finding };

/** Reads the records of a CSV text, empty ones left out; or says why it is not CSV. */
export function csvRows(text: string, file: string): CsvRows {
  const control = CONTROL.exec(text);
  if (control) {
    const range = [control.index, control.index + 1] as const;
    const received = 'a control character';
    return { finding: finding('CSV_ROW', { file, range }, { received }) };
  }
  try {
    const records: unknown = parse(text, {
      bom: true,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
    });
    return { rows: placed(text, isRecordList(records) ? records : []) };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error['lines'] === 'number' ? error['lines'] : 1;
    const received = clip(error.message.replace(/^.*?: /, ''));
    const remedy = 'Check the quotes: a cell with a comma or a quote in it stands in double quotes';
    const place = { file, range: lineRange(text, line) };
    return { finding: finding('CSV_ROW', place, { received, remedy }) };
  }
}

interface CsvRecord {
  readonly record: readonly string[];
  readonly info: { readonly bytes: number };
}

const isRecordList = (value: unknown): value is readonly CsvRecord[] => Array.isArray(value);

/** The parser counts bytes to the end of each record; places are characters. */
function placed(text: string, records: readonly CsvRecord[]): readonly CsvRow[] {
  const bytes = Buffer.from(text);
  const rows: CsvRow[] = [];
  let byte = 0;
  let start = 0;
  for (const { record, info } of records) {
    const written = bytes.toString('utf8', byte, info.bytes);
    if (record.some((cell) => cell !== '')) rows.push(placedRow(record, written, start));
    byte = info.bytes;
    start += written.length;
  }
  return rows;
}

function placedRow(record: readonly string[], written: string, start: number): CsvRow {
  const ranges = cellRanges(written, start);
  const first = ranges[0]?.[0] ?? start;
  const range: Range = [first, ranges.at(-1)?.[1] ?? first];
  const cells = record.map((text, index) => ({ text, range: ranges[index] ?? range }));
  return { cells, range };
}

/** The characters between the commas that are not in quotes, without the white space around them. */
function cellRanges(written: string, start: number): readonly Range[] {
  const ranges: Range[] = [];
  let from = 0;
  let quoted = false;
  for (let at = 0; at <= written.length; at += 1) {
    const character = written[at];
    if (character === '"') quoted = !quoted;
    if (character !== undefined && (quoted || character !== ',')) continue;
    const cell = written.slice(from, at);
    const left = from + cell.length - cell.trimStart().length;
    ranges.push([start + Math.min(left, at), start + Math.max(left, from + cell.trimEnd().length)]);
    from = at + 1;
  }
  return ranges;
}

function lineRange(text: string, line: number): Range {
  let start = 0;
  for (let count = 1; count < line; count += 1) {
    const next = text.indexOf('\n', start);
    if (next < 0) break;
    start = next + 1;
  }
  const end = text.indexOf('\n', start);
  return [start, end < 0 ? text.length : end];
}
