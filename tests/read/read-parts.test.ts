import { describe, expect, it } from 'vitest';
import { readParts } from '../../src/read/read-parts.ts';
import { PARTS } from './samples.ts';
import { pointedAt, spots } from './spots.ts';

const read = (text: string) => readParts(text, 'catalogue/parts/acme.csv', 'acme');
const found = (text: string): readonly string[] => spots(read(text).findings, text);
const HEADER = PARTS.slice(0, PARTS.indexOf('\n') + 1);
const row = (cells: string): string => `${HEADER}${cells}\n`;

describe('a price list', () => {
  it('gives its rows with their supplier, and each cell knows its place', () => {
    const { parts, findings } = read(PARTS);
    expect(findings).toEqual([]);
    expect(parts.map(({ supplier, value }) => `${supplier} ${value.code}`)).toEqual([
      'acme AC-1',
      'acme AC-2',
      'acme AC-3',
    ]);
    const [first] = parts;
    const place = (column?: string) => ({ place: first?.place(column ? [column] : []) }) as never;
    expect(first?.value.cost).toEqual({ amount: 680n, scale: 2n });
    expect(pointedAt([place('cost'), place('description'), place('price_date')], PARTS)).toEqual([
      '6.80',
      '"Cloth, 450 g/m2"',
      '2026-02-02',
    ]);
    expect(pointedAt([place()], PARTS)[0]).toMatch(/^AC-1.*2026-02-02$/);
  });
  it('may have CRLF lines, empty lines and rows, spaces and a byte order mark', () => {
    const text = `\uFEFF${PARTS.replaceAll('\n', '\r\n')}\r\n,,,,,,,\r\n  AC-4 , Rope ,hardware,m, 2 ,AUD, 0.1 ,2026-02-02\r\n`;
    const { parts, findings } = read(text);
    expect(findings).toEqual([]);
    expect(parts.map(({ value }) => value.code)).toEqual(['AC-1', 'AC-2', 'AC-3', 'AC-4']);
    const place = parts[3]?.place(['description']);
    expect(pointedAt([{ place } as never], text)).toEqual(['Rope']);
  });
  it('places a cell after others that hold line breaks, quotes and letters of several bytes', () => {
    const text = row('É1,"Māori\n""flax"" 🚤",hardware,m,2,AUD,0.1,2026-02-30');
    expect(pointedAt(read(text).findings, text)).toEqual(['2026-02-30']);
    expect(found(text)).toEqual(['WRONG_TYPE 3:35']);
  });
  it('keeps a code that looks like a number', () => {
    expect(read(row('0017,Rope,hardware,m,2,AUD,0.1,2026-02-02')).parts[0]?.value.code).toBe(
      '0017',
    );
  });
  it('may have its columns in another order', () => {
    const text =
      'price_date,mass,currency,cost,unit,class,description,code\n2026-02-02,1,AUD,2,m,hardware,Rope,R-1\n';
    expect(read(text).parts[0]?.value.code).toBe('R-1');
  });
});

describe('a mistake in a price list', () => {
  it.each([
    ['an unknown unit of sale', 'A,Rope,hardware,metre,2,AUD,1,2026-02-02', 'WRONG_VALUE 2:17'],
    ['a cost that is no number', 'A,Rope,hardware,m,2 dollars,AUD,1,2026-02-02', 'WRONG_TYPE 2:19'],
    ['a decimal comma in quotes', 'A,Rope,hardware,m,"2,50",AUD,1,2026-02-02', 'CSV_ROW 2:19'],
    ['a decimal comma without quotes', 'A,Rope,hardware,m,2,50,AUD,1,2026-02-02', 'CSV_ROW 2:1'],
    ['too few cells', 'A,Rope,hardware', 'CSV_ROW 2:1'],
    ['an empty cell', 'A,Rope,hardware,m,,AUD,1,2026-02-02', 'MISSING_KEY 2:19'],
    ['an empty first cell', ',Rope,hardware,m,1,AUD,1,2026-02-02', 'MISSING_KEY 2:1'],
    [
      'a mass in a unit of another kind',
      'A,Rope,hardware,m,2,AUD,1 m,2026-02-02',
      'UNIT_KIND 2:25',
    ],
    ['a mass below zero', 'A,Rope,hardware,m,2,AUD,-1,2026-02-02', 'OUT_OF_RANGE 2:25'],
    ['a date the other way round', 'A,Rope,hardware,m,2,AUD,1,02/02/2026', 'WRONG_TYPE 2:27'],
    ['a quote that is not closed', 'A,"Rope,hardware,m,2,AUD,1,2026-02-02', 'CSV_ROW 2:1'],
    ['a quote within a cell', 'A,Rope 3",hardware,m,2,AUD,1,2026-02-02', 'CSV_ROW 2:1'],
    ['a NUL byte', 'A,Ro\0pe,hardware,m,2,AUD,1,2026-02-02', 'CSV_ROW 2:5'],
  ])('is placed: %s', (_, cells, spot) => {
    expect(found(row(cells))).toEqual([spot]);
  });
  it('leaves the other rows, and the code of the broken one is known', () => {
    const { parts, broken, findings } = read(PARTS.replace('5200.00', 'a lot'));
    expect(parts.map(({ value }) => value.code)).toEqual(['AC-1', 'AC-3']);
    expect(broken).toEqual(['AC-2']);
    expect(findings).toHaveLength(1);
  });
  it('is a column that is not known, with the nearest one, told once', () => {
    const text = PARTS.replace('price_date', 'price date');
    expect(found(text)).toEqual(['CSV_ROW 1:48']);
    expect(read(text).findings[0]?.remedy).toContain('"price_date"');
  });
  it('is a column that is missing, or stands twice', () => {
    expect(found('code,description,class,unit,cost,currency,mass\n')).toEqual(['CSV_ROW 1:1']);
    expect(found(`code,${HEADER}`)).toEqual(['CSV_ROW 1:6']);
  });
  it('is semicolons or tabs between the columns', () => {
    for (const mark of [';', '\t']) {
      const { findings } = read(PARTS.replaceAll(',', mark));
      expect(findings.map(({ code }) => code)).toEqual(['CSV_ROW']);
      expect(findings[0]?.remedy).toMatch(/commas/);
    }
  });
  it('is an empty file', () => {
    expect(found('')).toEqual(['CSV_ROW 1:1']);
  });
});
