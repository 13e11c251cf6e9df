import { describe, expect, it } from 'vitest';
import { buildSheetView } from '../../src/documents/build-sheet/build-sheet.ts';
import { type Finding, finding } from '../../src/findings/index.ts';
import { type Stage, STAGES } from '../../src/schema/index.ts';
import { kilograms } from '../../src/units/index.ts';
import { breakable, fittedFigures } from './fitted-build.ts';
import {
  blocksOf,
  cellsOf,
  factsOf,
  headingsIn,
  rowsOf,
  saidIn,
  underOf,
  wordsOf,
} from './letters.ts';
import { idOf, itemsOf, rowsUnder, sheet, stagesOf, underStyle, work } from './sheets.ts';

const place = { file: 'orders/2026-001.yaml' };

describe('the stages of a build sheet', () => {
  it('are those with work and those that no boat goes without, in the order of the build', () => {
    const view = sheet({ items: { 'House battery': { hours: [work('wiring', '2')] } } });
    expect(stagesOf(view).map(({ id }) => id)).toEqual(
      (['release', 'fit-out', 'wiring', 'water-trial', 'handover'] as const).map(idOf),
    );
    expect(wordsOf(view, 'hours')).toContain(
      'Not in this order: {Mould} preparation, Gelcoat, Laminate, Infusion, Cure, Engine, Trailer.',
    );
  });

  it('number themselves as the table of hours does', () => {
    const view = sheet();
    const rows = rowsOf(view, 'hours').filter(({ kind }) => kind === 'plain');
    expect(rows.map(cellsOf).map(([number, stage]) => `${number} ${stage}`)).toEqual(
      stagesOf(view).map(({ number, heading }) => `${number} ${heading}`),
    );
  });

  it.each([
    ['outboard', 'Outboard 15 kW, long shaft', 'engine'],
    ['trailer', 'Road trailer', 'trailer'],
    ['option', 'Bow seat', 'fit-out'],
  ])('put an %s without hours where it is fitted', (_, name, stage) => {
    const view = sheet({ items: { [name]: { hours: [] } } });
    const found = stagesOf(view).filter(({ id }) =>
      itemsOf(view, id).some(([, , item]) => item?.endsWith(name)),
    );
    expect(found.map(({ id }) => id)).toEqual([`stage-${stage}`]);
  });

  it('print what is planned and worked, and sums that are those of the rows', () => {
    const items = {
      'Bow seat': { hours: [work('fit-out', '1.255'), work('gelcoat', '0.255')] },
      'House battery': { hours: [work('wiring', '5.25')] },
    };
    const hours = [
      { stage: 'wiring', hours: '5.5' },
      { stage: 'wiring', hours: '0.75' },
      { stage: 'cure', hours: '2' },
    ];
    const view = sheet({ items, order: { record: { hours } } });
    const rows = rowsOf(view, 'hours').map(cellsOf);
    const told = new Map(rows.map(([, stage, , ...each]) => [stage, each.slice(0, 2)]));
    expect(told.get('Gelcoat')).toEqual(['0.26 h', '']);
    expect(told.get('Wiring')).toEqual(['5.25 h', '6.25 h']);
    expect(told.get('Cure')).toEqual(['', '2 h']);
    const sum = (texts: readonly (string | undefined)[]) =>
      texts.reduce((total, text) => total + Math.round(Number.parseFloat(text || '0') * 100), 0);
    const [planned, worked] = told.get('Total') ?? [];
    expect(sum([planned])).toBe(sum(rows.slice(0, -1).map(([, , , one]) => one)));
    expect(sum([worked])).toBe(825);
  });

  it('warn of what can hurt someone there', () => {
    const everywhere = STAGES.map((stage) => work(stage, '1'));
    const view = sheet({ items: { 'Bow seat': { hours: everywhere } } });
    const cautions = (id: string) =>
      underStyle(view, id, 'cautions').flatMap((block) =>
        block.block === 'words' ? block.words.map(saidIn) : [],
      );
    const told = (stage: Stage) => cautions(idOf(stage)).join(' ');
    for (const id of ['gelcoat', 'laminate', 'infusion'] as const) {
      expect(told(id)).toMatch(/Peroxide.*Never let catalyst and accelerator.*Styrene/);
    }
    expect(told('wiring')).toContain('fuse');
    expect(told('water-trial')).toContain('Life jacket');
    const last = stagesOf(view).flatMap(({ id }) => cautions(id).at(-1) ?? []);
    expect(last).toHaveLength(8);
    expect(last.filter((line) => !line.startsWith('Follow local rules'))).toEqual([]);
  });

  it('have the checks and measures of the yard', () => {
    const { yard } = fittedFigures().build;
    const checks = ['Bilge dry'];
    const measures = ['Draught, mm'];
    const facts = { does: 'Try her', checks, measures, people: 1, oneSitting: false };
    const stages = { ...yard.stages, 'water-trial': facts };
    const tried = { 'Bow seat': { hours: [work('water-trial', '1')] } };
    const view = sheet({ yard: { stages }, items: tried });
    const trial = blocksOf(view, idOf('water-trial'));
    expect(wordsOf(view, idOf('water-trial'))[0]).toBe('Try her.');
    expect(headingsIn(view, idOf('water-trial'))).toContain('Try');
    expect(trial.flatMap((block) => (block.block === 'checks' ? block.lines : []))).toEqual(
      expect.arrayContaining(checks),
    );
    expect(factsOf(view, idOf('water-trial')).map(({ label }) => label)).toEqual([
      ...measures,
      'Hours worked',
      'Water trial signed off by',
      'Date',
    ]);
  });
});

describe('the masses to aim at', () => {
  it('are those of the weigh gates, with what was weighed', () => {
    const by = { date: '2026-05-06', by: 'Laminator' };
    const record = { masses: [{ stage: 'release', mass: '21', ...by }] };
    const figures = fittedFigures({
      order: { record },
      items: {
        'Coot 400 hull shell': { mass: kilograms(100) },
        'House battery': { hours: [work('wiring', '2')] },
      },
    });
    const view = breakable(buildSheetView(figures, { fontCss: '' }));
    const masses = rowsOf(view, 'masses').map(cellsOf);
    expect(masses.map(([condition]) => condition)).toEqual([
      'Bare shell',
      'Fitted out',
      'Completed',
      'Ready to launch',
      'On the trailer',
    ]);
    // 5 % of 100 kg and half a kilogram of the scale: 5.02 kg.
    expect(masses[0]?.slice(1)).toEqual(['100 kg', '95 kg to 105 kg', '21 kg']);
    expect(masses[2]?.[1]).toBe(`${Math.round(figures.mass.completed.mass)} kg`);
    expect(masses[2]?.[3]).toBe('');
    expect(underOf(view, 'masses', 'Ready to launch')).toMatch(
      /outboard \(.* kg\) and 25 L of fuel/,
    );
  });
});

describe('what the sheet tells before work begins', () => {
  it.each([
    ['enquiry', /do not start/],
    ['quoted', /do not start/],
    ['accepted', /^$/],
    ['building', /^$/],
    ['closed', /nothing more is done/],
  ])('at status %s', (status, halt) => {
    expect(sheet({ order: { status } }).halt).toMatch(halt);
  });

  it('is the gravest finding first, one entry a code', () => {
    const findings: readonly Finding[] = [
      finding('ITEM_NOT_PLACED', place, { received: 'Rack' }),
      finding('MASS_OUT_OF_GATE', place, { received: '80 kg', expected: '70 kg' }),
      finding('ITEM_NOT_PLACED', place, { received: 'Hook' }),
    ];
    const told = sheet({ findings });
    expect(headingsIn(told, 'findings').map((heading) => heading.split('.')[0])).toEqual([
      'Warning',
      'Note',
    ]);
    expect(wordsOf(told, 'findings', 'list')).toEqual(['80 kg; expected: 70 kg', 'Rack', 'Hook']);
  });

  it('leaves out what is about money or the offer', () => {
    const codes = ['MARGIN_BELOW_FLOOR', 'PART_PRICE_OLD', 'QUOTE_EXPIRED'] as const;
    const findings = codes.map((code) => finding(code, place, { received: 'x' }));
    expect(headingsIn(sheet({ findings }), 'findings')).toEqual([]);
  });

  it('is the office’s note and the notes of the items', () => {
    const view = sheet();
    expect(view.note).toBe('secret-order-note.');
    const notes = rowsUnder(view, idOf('fit-out'), 'items').filter(
      ({ kind }) => kind === 'beneath',
    );
    expect(notes.map(cellsOf)).toContainEqual(['', 'secret-workshop-note.']);
  });
});

describe('no money', () => {
  it('is on the sheet: no sign of a currency, no cost, no price, no rate', () => {
    const text = JSON.stringify(sheet());
    expect(text).not.toMatch(/[$€£]|AUD/);
    for (const amount of ['7.77', '12000.1', '12,000', '480.33', '38.00']) {
      expect(text).not.toContain(amount);
    }
  });

  it('nor a value that is missing', () => {
    expect(JSON.stringify(sheet())).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  });
});
