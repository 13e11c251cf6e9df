import { describe, expect, it } from 'vitest';
import { electricsSection } from '../../src/documents/order-page/electrics-section.ts';
import { type BuildSheetView, buildSheetView, handoverView } from '../../src/documents/index.ts';
import { laminateSection } from '../../src/documents/order-page/laminate-section.ts';
import { customerFigures, type Figures } from '../../src/figures/index.ts';
import {
  alone,
  blocksOf,
  cellsOf,
  headingsIn,
  marksOf,
  methodsOf,
  picturesOf,
  rowsOf,
  saidIn,
  tablesOf,
  wordsOf,
} from './letters.ts';
import { byNumber, figuresOf } from '../demonstration/workspace.ts';
import { breakable } from './fitted-build.ts';

const sheetOf = (figures: Figures): BuildSheetView =>
  breakable(buildSheetView(figures, { fontCss: '' }));
/** What a stage's trade works by: a heading with its words, table and small print. */
const worksOf = (view: BuildSheetView, stage: string) =>
  blocksOf(view, `stage-${stage}`).flatMap((block) => {
    if (block.block !== 'under' || !block.style.startsWith('stage-table')) return [];
    const part = alone({ id: 'work', heading: block.heading, blocks: block.blocks });
    const [table] = tablesOf(part, 'work');
    return [
      {
        heading: block.heading,
        columns: table?.columns ?? [],
        rows: table?.rows ?? [],
        said: wordsOf(part, 'work', 'plain'),
        notes: wordsOf(part, 'work', 'small'),
      },
    ];
  });

describe.each(byNumber)('the tables of the build sheet %s', (_, figures) => {
  const view = sheetOf(figures);

  it('have one cell a column, and a heading of their own in their stage', () => {
    for (const { id } of view.parts) {
      for (const { columns, rows } of tablesOf(view, id)) {
        const whole = rows.filter(({ kind }) => kind !== 'includes' && kind !== 'beneath');
        for (const { cells } of whole) expect(cells, id).toHaveLength(columns.length);
      }
      const heads = headingsIn(view, id).filter((heading) => !['', 'In the pot'].includes(heading));
      expect(new Set(heads).size).toBe(heads.length);
    }
  });

  it('carry what each trade works by', () => {
    const heads = (stage: string) => worksOf(view, stage).map(({ heading }) => heading);
    expect(heads('laminate').slice(0, 3)).toEqual([
      'Lay-up, from the {mould} inwards',
      'Cut from the rolls',
      'Core',
    ]);
    expect(heads('infusion')).toContain('Leak-down test, before any resin is mixed');
    expect(heads('gelcoat').join()).toMatch(/^Mixing TC-0201/);
    expect(heads('release')).toEqual(['Weigh gate']);
  });

  it('say nothing that is missing', () => {
    expect(JSON.stringify(view.parts)).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });
});

describe('the lay-up of structure and options', () => {
  const view = sheetOf(figuresOf('dunlin-430', 'options: [dry-locker, bow-seat, side-console]'));
  const laid = (stage: string) =>
    worksOf(view, stage).filter(({ heading }) => heading.startsWith('Lay-up, by hand'));

  it('stands at the stage where it is laid, one table a part', () => {
    expect(laid('laminate').map(({ heading }) => heading)).toEqual([
      'Lay-up, by hand: Dunlin 430 structure and standard fittings',
    ]);
    // The console is a moulding that is bought: there is nothing to lay.
    expect(laid('fit-out').map(({ heading }) => heading)).toEqual([
      'Lay-up, by hand: Dry locker under the bow',
      'Lay-up, by hand: Bow seat with cushion',
    ]);
  });

  it('says sizes, thickness, layers, what is cut and what is mixed', () => {
    const [structure] = laid('laminate');
    const frames = structure?.rows.map(cellsOf).find(([name]) => name === 'Frames');
    expect(frames?.slice(1)).toEqual(['0.66 m²', '30.8 mm', '1 TC-0431,2 TC-0600-BX']);
    const notes = structure?.notes.join(' ') ?? '';
    expect(notes).toContain('12 × Joint 1,850 mm × 150 mm');
    expect(notes).toContain('TC-0431: 7 pieces of 2,000 mm × 60 mm.');
    expect(notes).toMatch(/Resin TC-0103: 5\.7 kg, in at least 2 batches of at most 3\.1 kg\./);
    // A coat has no thickness of its own.
    expect(structure?.rows.at(-1)?.cells[2]).toBe('');
  });

  it('says once in a stage how thickness is found', () => {
    const said = laid('fit-out').flatMap(({ notes }) =>
      notes.join(' ').match(/Verify by weighing/g),
    );
    expect(said.filter((one) => one !== null)).toHaveLength(1);
  });
});

const wired = figuresOf(
  'dunlin-430',
  `options: [battery-start, switch-panel-6, bilge-pump, nav-lights]
outboard: { model: outboard-18, shaft: long }
`,
);

describe('a weigh gate', () => {
  it('stands at the end of its stage, with what to do outside the band', () => {
    const release = worksOf(sheetOf(wired), 'release').at(-1);
    expect(release?.said.join(' ')).toMatch(/Lighter: look for a missing layer.*Heavier: look for/);
    expect(release?.columns.at(-1)).toEqual({ text: 'Weighed', kind: 'write' });
  });
});

describe('the wiring stage', () => {
  const view = sheetOf(wired);
  const schedule = worksOf(view, 'wiring').find(({ heading }) => heading === 'Wiring schedule');

  it('lists feeder, switched wires and wires from the battery with area, fuse and colour', () => {
    const cells = schedule?.rows.map(({ cells: [label, name, from] }) => [label, name, from]);
    expect(cells).toEqual([
      ['M1', 'Feeder of the switch panel', 'battery to A'],
      ['01', 'Navigation lights', '1'],
      ['02', 'Bilge pump, automatic', 'at battery'],
    ]);
    expect(schedule?.rows[1]?.cells.slice(4, 7)).toEqual(['2.5 (16)', '1 A', 'dark {grey}']);
  });

  it('says how near to the battery the main fuse sits, and which cable starts the engine', () => {
    const words = schedule?.said.join(' ') ?? '';
    expect(words).toContain('Main fuse M1, 30 A: within 178 mm of the battery');
    expect(words).toMatch(/Starter cable from Starting battery, 70 Ah, .* 16 mm² \(/);
    expect(schedule?.notes.join(' ')).toContain('Verify by measuring the drop under load');
  });

  it('draws the one-line diagram and the labels of the panel, told in words', () => {
    const alts = picturesOf(view, 'stage-wiring').map(({ alt }) => alt);
    expect(alts[0]).toMatch(/^One-line diagram of the Dunlin 430\..*fuse 1 A.*dark \{grey\}/s);
    expect(alts[1]).toContain('1 Navigation lights 1 A; 2 to spare');
  });
});

describe('the handover pack', () => {
  it('has a day’s use that adds up, the hours of autonomy, and how far to trust them', () => {
    const view = breakable(handoverView(customerFigures(wired), { fontCss: '' }));
    // Lights 0.7 A x 4 h and pump 3.8 A x 0.1 h: 3.2 Ah; half of 70 Ah lasts 11.0 days.
    const rows = rowsOf(view, 'energy').map(({ cells }) => cells.map(saidIn));
    expect(rows.slice(0, 3).map((cells) => cells[3])).toEqual(['2.8 Ah', '0.4 Ah', '3.2 Ah']);
    expect(rows.slice(3, 5).map((cells) => cells[1])).toEqual(['35 Ah', '11.0 days, 264 hours']);
    const battery = methodsOf(view).find(({ title }) => title === 'Batteries');
    expect(battery?.text).toContain('Verify by a discharge test');
    const marks = marksOf(view, 'energy').slice(3);
    expect(marks.every((one) => one.marks.includes(battery?.mark ?? '-'))).toBe(true);
  });

  it('says nothing of electrics that there are not', () => {
    const view = handoverView(customerFigures(figuresOf('teal-370')), { fontCss: '' });
    expect(blocksOf(view, 'energy')).toEqual([]);
  });
});

describe('the yard’s sections', () => {
  it.each(byNumber)('hold lay-up and wiring of %s, or say why not', (_, figures) => {
    const laminate = alone(laminateSection(figures));
    const tables = tablesOf(laminate, 'laminate');
    expect(tables.map(({ caption = '' }) => caption.split(/[,:;]/)[0])).toEqual([
      'Panels of the shell',
      'Stiffness and ultimate strength of each lay-up',
      'Bottom pressure against the panel',
      'Panels of structure and options',
      'All that is laminated',
      'Kit of the whole boat',
    ]);
    expect(wordsOf(laminate, 'laminate').join(' ')).toContain('Verify by');
    const electrics = alone(electricsSection(figures, ''));
    const none = 'notComputed' in figures.electrics;
    expect(picturesOf(electrics, 'electrics')).toHaveLength(none ? 0 : 1);
    expect(wordsOf(electrics, 'electrics')[0]).toMatch(
      none ? /^Not computed: nothing electrical/ : /^A day uses/,
    );
    for (const { columns, rows } of [...tables, ...tablesOf(electrics, 'electrics')]) {
      for (const { cells } of rows) expect(cells).toHaveLength(columns.length);
    }
  });
});
