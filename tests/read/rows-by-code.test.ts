import { rmSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { describePlace } from '../../src/findings/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import { decimalToShortText } from '../../src/units/index.ts';
import { type Files, PARTS, workspaceOf, YARD } from './samples.ts';

function read(changes: Files) {
  const folder = workspaceOf(changes);
  try {
    const { catalogue, findings, sources } = readWorkspace(folder);
    const spots = findings.map(
      ({ code, place }) => `${code} ${describePlace(place, sources.get(place.file))}`,
    );
    return { catalogue, spots };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
const LIST = 'catalogue/parts/acme-parts.csv';
const row = (cells: string) => ({ [LIST]: `${PARTS}${cells}\n` });

describe('a code in several rows', () => {
  it('has a price from each day on; the newest stands for it', () => {
    const { catalogue, spots } = read(row('AC-1,Cloth,fabric,m2,7.40,AUD,0.46,2025-12-01'));
    expect(spots).toEqual([]);
    expect(catalogue?.partRows.get('AC-1')?.map(({ value }) => value.price_date)).toEqual([
      '2025-12-01',
      '2026-02-02',
    ]);
    expect(catalogue?.parts.get('AC-1')?.value.price_date).toBe('2026-02-02');
  });
  it.each([
    [
      'on one day',
      row('AC-1,Cloth,fabric,m2,7.40,AUD,0.46,2026-02-02'),
      `DUPLICATE_ID ${LIST}:5:1`,
    ],
    ['in another unit', row('AC-1,Cloth,fabric,kg,7,AUD,1,2026-03-02'), `WRONG_VALUE ${LIST}:5:19`],
  ])('is a mistake %s', (_, files, spot) => {
    expect(read(files).spots).toEqual([spot]);
  });
  it('is a mistake in the lists of two suppliers', () => {
    const { spots } = read({
      'catalogue/yard.yaml': `${YARD}  other-parts: { name: Other, leadDays: 7 }\n`,
      'catalogue/parts/other-parts.csv': PARTS.replaceAll('2026-02-02', '2026-03-02'),
    });
    expect(spots.map((spot) => spot.split(' ')[0])).toEqual(Array(3).fill('DUPLICATE_ID'));
  });
});

describe('the columns that a list may have besides', () => {
  const packed = (pack: string, buy: string) => {
    const [header = '', first = '', ...rest] = PARTS.trimEnd().split('\n');
    const lines = [
      `${header},pack,buy`,
      `${first},${pack},${buy}`,
      ...rest.map((one) => `${one},,`),
    ];
    return { [LIST]: `${lines.join('\n')}\n` };
  };
  it('are the size of a pack and how it is bought', () => {
    const { catalogue, spots } = read(packed('62.5', 'whole'));
    expect(spots).toEqual([]);
    const { pack, buy } = catalogue?.parts.get('AC-1')?.value ?? {};
    expect([pack && decimalToShortText(pack), buy]).toEqual(['62.5', 'whole']);
    expect(catalogue?.parts.get('AC-2')?.value.pack).toBeUndefined();
  });
  it('are checked as the others are', () => {
    expect(read(packed('a roll', 'whole')).spots[0]).toMatch(/^WRONG_TYPE/);
    expect(read(packed('60', 'half')).spots[0]).toMatch(/^WRONG_VALUE/);
    expect(read(packed('0', 'whole')).spots[0]).toMatch(/^OUT_OF_RANGE/);
  });
});
