import { describe, expect, it } from 'vitest';
import { limitsSection } from '../../src/documents/limits-section.ts';
import { performanceFigures } from '../../src/documents/performance-figures.ts';
import { performanceFacts } from '../../src/documents/build-sheet-performance.ts';
import { plateDrawing } from '../../src/documents/plate-drawing.ts';
import type { Section } from '../../src/documents/section.ts';
import { speedSection } from '../../src/documents/speed-section.ts';
import { towingSection } from '../../src/documents/towing-section.ts';
import type { Figures } from '../../src/figures/index.ts';
import { inventedFigures } from './invented-build.ts';
import { orders } from '../demonstration/workspace.ts';

const figuresOf = (number: string): Figures => {
  const figures = orders.find(({ order }) => order.value.number === number)?.figures;
  if (!figures) throw new Error(`${number} has no figures`);
  return figures;
};
const sectionsOf = (figures: Figures): readonly Section[] => [
  speedSection(figures, ''),
  limitsSection(figures),
  towingSection(figures, ''),
];
const said = ({ words, tables, notes, pictures }: Section): string =>
  [
    ...words,
    ...tables.flatMap(({ caption, rows }) => [caption, ...rows.flatMap(({ cells }) => cells)]),
    ...notes,
    ...pictures.flatMap(({ alt, caption }) => [alt, caption]),
  ].join('\n');

describe('speed, limits and towing of every order', () => {
  it.each(orders.map(({ order }) => order.value.number))(
    'print without a hole, and each says who verifies it: %s',
    (number) => {
      for (const section of sectionsOf(figuresOf(number))) {
        const text = said(section);
        expect(text).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
        expect(text).toMatch(/verify|confirm|No trailer is in this order/i);
        for (const { columns, rows } of section.tables)
          for (const { cells } of rows) expect(cells).toHaveLength(columns.length);
      }
    },
  );

  it('name the outboard that is ordered and every other that the hull may carry', () => {
    const { tables, pictures } = speedSection(figuresOf('DC-2607'), '');
    const rows = tables[1]?.rows.map(({ cells }) => cells[0]) ?? [];
    expect(rows).toHaveLength(9);
    expect(rows.filter((name) => name?.endsWith('as ordered'))).toHaveLength(1);
    expect(pictures).toHaveLength(1);
  });

  it('name what binds, and flag what is passed', () => {
    const { tables, words } = limitsSection(figuresOf('DC-2607'));
    expect(tables[0]?.rows.at(-1)?.cells.at(-1)).toMatch(/binds, not/);
    const flagged = tables[1]?.rows.filter(({ kind }) => kind === 'flag') ?? [];
    expect(flagged.length > 0).toBe(
      words.some((text) => text.includes('neither category C nor D')),
    );
  });

  it('tell the post that was set from the one that is usual', () => {
    const { words } = towingSection(figuresOf('DC-2604'), '');
    expect(words.join(' ')).toMatch(/Winch post: 1\.45.m aft of the ball; 10.%, the usual share/);
  });

  it('leave out what an order does not have', () => {
    expect(towingSection(figuresOf('DC-2605'), '')).toMatchObject({ tables: [], pictures: [] });
    expect(speedSection(figuresOf('DC-2602'), '').words[0]).toContain('No outboard');
  });
});

describe('what the customer reads of it', () => {
  it('is an estimate that a trial confirms', () => {
    const [speed, range, ball] = performanceFigures(figuresOf('DC-2606'));
    expect(speed).toMatchObject({ label: 'Speed, estimated' });
    expect(speed?.value).toMatch(/^\d+ to \d+.kn$/);
    for (const one of [speed, range]) expect(one?.method).toMatch(/^Trial to confirm/);
    expect(ball?.value).toMatch(/kg$/);
  });

  it('says that she does not plane, and nothing where the method is not for her hull', () => {
    expect(performanceFigures(figuresOf('DC-2608'))[0]?.value).toBe('not on the plane');
    expect(performanceFigures(inventedFigures())).toEqual([]);
  });

  it('is a plate that nobody signed yet', () => {
    const [plate] = plateDrawing(figuresOf('DC-2601'), '');
    expect(plate?.alt).toContain('Draft: for the builder to confirm and sign');
    expect(plate?.alt).toContain('DCB-D0430-2601');
    expect(plate?.alt).toMatch(/verify by/);
  });
});

it('an alternative says what it does to speed and tow ball, where both can be had', () => {
  const entry = orders.find(({ order }) => order.value.number === 'DC-2607');
  const named = (words: string) => entry?.alternatives?.find(({ name }) => name.includes(words));
  const [stronger, without] = [named('37 kW'), named('Without a trailer')];
  expect(stronger?.differences?.speed).toBeGreaterThan(0);
  expect(stronger?.differences?.onBall).toBeDefined();
  expect(without?.differences).toBeDefined();
  expect(without?.differences?.onBall).toBeUndefined();
});

it('the build sheet tells the fitter pitch and winch post', () => {
  const facts = performanceFacts(figuresOf('DC-2607'));
  expect(facts.map(({ label }) => label)).toEqual(['Propeller', 'Winch post']);
  expect(performanceFacts(figuresOf('DC-2602'))).toEqual([]);
});
