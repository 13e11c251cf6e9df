import { type Finding, finding, nearestName } from '../findings/index.ts';
import { type ListedPart, PART_COLUMNS, PART_EXTRA_COLUMNS, partSchema } from '../schema/index.ts';
import { type CsvRow, csvRows } from './csv-rows.ts';
import type { PlacedValue } from './placed.ts';
import { validate } from './validate.ts';
import { clip } from './words.ts';

interface PartList {
  readonly parts: readonly ListedPart[];
  /** Codes of the rows that could not be read. */
  readonly broken: readonly string[];
  readonly findings: readonly Finding[];
}

const MAX_FINDINGS_OF_A_LIST = 200;

/**
 * Reads a supplier's price list.
 *
 * @param text - CSV with the header row of `PART_COLUMNS`, and any of `PART_EXTRA_COLUMNS`
 * @returns the rows that are sound, each cell with its place, and a finding for every mistake in the others
 */
export function readParts(text: string, file: string, supplier: string): PartList {
  const refuse = (...findings: Finding[]): PartList => ({ parts: [], broken: [], findings });
  const apart = separatorFinding(text, file);
  if (apart) return refuse(apart);
  const { rows, finding: failed } = csvRows(text, file);
  if (!rows) return refuse(failed);
  const [header, ...body] = rows;
  const refused = headerFindings(header, file);
  if (!header || refused.length > 0) return refuse(...refused);
  const columns = header.cells.map((cell) => cell.text);
  const parts: ListedPart[] = [];
  const broken: string[] = [];
  const findings: Finding[] = [];
  for (const row of body) {
    const source = placedRow(row, columns, file);
    const ill = rowFindings(row, columns, file);
    const checked = ill.length > 0 ? { findings: ill } : validate(partSchema, source);
    findings.push(...checked.findings);
    if ('sourced' in checked && checked.sourced) parts.push({ ...checked.sourced, supplier });
    else broken.push(row.cells[columns.indexOf('code')]?.text ?? '');
  }
  return { parts, broken, findings: findings.slice(0, MAX_FINDINGS_OF_A_LIST) };
}

const HEADER = PART_COLUMNS.join(',');
const KNOWN_COLUMNS: readonly string[] = [...PART_COLUMNS, ...PART_EXTRA_COLUMNS];

/** A spreadsheet whose decimals have a comma puts semicolons between its columns. */
function separatorFinding(text: string, file: string): Finding | undefined {
  const [line = ''] = text.split('\n', 1);
  const separator = /^[^,]*?([;\t])[^,]*$/.exec(line)?.[1];
  if (separator === undefined) return undefined;
  const place = { file, range: [0, line.trimEnd().length] } as const;
  return finding('CSV_ROW', place, {
    received: `columns with ${separator === ';' ? 'semicolons' : 'tabs'} between them`,
    expected: `the header row ${HEADER}`,
    remedy: 'Save the list as CSV with commas between the columns and points for decimals',
  });
}

function headerFindings(header: CsvRow | undefined, file: string): readonly Finding[] {
  const expected = `the header row ${HEADER}`;
  const range = header?.range ?? [0, 0];
  if (!header) {
    return [finding('CSV_ROW', { file, range }, { received: 'an empty file', expected })];
  }
  const names = header.cells.map((cell) => cell.text);
  return [...columnFindings(header, file, expected), ...missingColumns(names, file, range)];
}

function columnFindings(header: CsvRow, file: string, expected: string): readonly Finding[] {
  const seen = new Set<string>();
  return header.cells.flatMap(({ text, range }) => {
    const known = KNOWN_COLUMNS.includes(text);
    const again = seen.has(text);
    seen.add(text);
    if (known && !again) return [];
    const nearest = known ? undefined : nearestName(text, KNOWN_COLUMNS);
    const details = {
      received: `the column "${clip(text)}"${again ? ' again' : ''}`,
      expected,
      ...(nearest !== undefined && { remedy: `Did you mean "${nearest}"?` }),
    };
    return [finding('CSV_ROW', { file, range }, details)];
  });
}

/** Columns that are not there, those apart whose misspelling is told already. */
function missingColumns(
  names: readonly string[],
  file: string,
  range: readonly [number, number],
): readonly Finding[] {
  const unknown = names.filter((name) => !KNOWN_COLUMNS.includes(name));
  const meant = new Set(unknown.map((name) => nearestName(name, PART_COLUMNS)));
  return PART_COLUMNS.filter((column) => !names.includes(column) && !meant.has(column)).map(
    (column) =>
      finding(
        'CSV_ROW',
        { file, range },
        { received: `no column "${column}"`, expected: `the header row ${HEADER}` },
      ),
  );
}

/** What makes a row unreadable before its cells are looked at one by one. */
function rowFindings(row: CsvRow, columns: readonly string[], file: string): readonly Finding[] {
  if (row.cells.length !== columns.length) {
    const details = {
      received: `${row.cells.length} cells`,
      expected: `${columns.length} cells, one for each column`,
      remedy: 'Put a cell with a comma in it in double quotes, and write decimals with a point',
    };
    return [finding('CSV_ROW', { file, range: row.range }, details)];
  }
  return row.cells.flatMap(({ text, range }, index) => {
    const column = columns[index];
    if (column !== 'cost' && column !== 'mass' && column !== 'pack') return [];
    if (!/^[+-]?\d[\d.\s]*,\d+/.test(text)) return [];
    const details = {
      received: `"${clip(text)}", with a comma`,
      expected: 'a number with a point for decimals and nothing between thousands',
      remedy: 'Write it like 1250.50',
    };
    return [finding('CSV_ROW', { file, range }, details)];
  });
}

function placedRow(row: CsvRow, columns: readonly string[], file: string): PlacedValue {
  const written = columns.map((column, index) => [column, row.cells[index]?.text ?? ''] as const);
  const value = Object.fromEntries(written.filter(([, text]) => text !== ''));
  const place: PlacedValue['placeOfKey'] = ([column]) => {
    const cell = row.cells[columns.indexOf(String(column))];
    return { file, range: cell?.range ?? row.range };
  };
  return { file, value, place: (path = []) => place(path), placeOfKey: place };
}
