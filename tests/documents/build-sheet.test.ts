import { describe, expect, it } from 'vitest';
import type { BuildSheetView } from '../../src/documents/build-sheet/types.ts';
import { buildSheetView } from '../../src/documents/build-sheet/build-sheet.ts';
import { type Finding, finding } from '../../src/findings/index.ts';
import type { BuildHours, BuildItem, BuildPart } from '../../src/resolve/index.ts';
import { type Stage, STAGES } from '../../src/schema/index.ts';
import { kilograms, metres, parseDecimal, ZERO } from '../../src/units/index.ts';
import { breakable, fittedFigures } from './fitted-build.ts';
import type { KeysOf, MoneyKey } from './forbidden-keys.ts';

type Wanted = Parameters<typeof fittedFigures>[0];

const sheet = (wanted: Wanted = {}): BuildSheetView =>
  breakable(buildSheetView(fittedFigures(wanted), { fontCss: '' }));

const decimal = (text: string) => parseDecimal(text) ?? ZERO;
const work = (stage: Stage, hours: string): BuildHours => ({ stage, hours: decimal(hours) });
const stageOf = (view: BuildSheetView, id: Stage) => view.stages.find((stage) => stage.id === id);
const place = { file: 'orders/2026-001.yaml' };

const [anyPart] = fittedFigures().build.items[0]?.parts ?? [];
if (!anyPart) throw new Error('the invented shell has a part');
const part = (more: Partial<BuildPart>): BuildPart => ({ ...anyPart, ...more });

describe('the stages of a build sheet', () => {
  it('are those with work and those that no boat goes without, in the order of the build', () => {
    const view = sheet({ items: { 'House battery': { hours: [work('wiring', '2')] } } });
    expect(view.stages.map(({ id }) => id)).toEqual([
      'release',
      'fit-out',
      'wiring',
      'water-trial',
      'handover',
    ]);
    expect(view.notInOrder).toBe(
      '{Mould} preparation, Gelcoat, Laminate, Infusion, Cure, Engine, Trailer',
    );
  });

  it('number themselves as the table of hours does', () => {
    const view = sheet();
    const numbered = ({ number, name }: { readonly number: string; readonly name: string }) =>
      `${number} ${name}`;
    expect(view.hours.map(({ number, stage }) => `${number} ${stage}`)).toEqual(
      view.stages.map(numbered),
    );
  });

  it.each([
    ['outboard', 'Outboard 15 kW, long shaft', 'engine'],
    ['trailer', 'Road trailer', 'trailer'],
    ['option', 'Bow seat', 'fit-out'],
  ])('put an %s without hours where it is fitted', (_, name, stage) => {
    const view = sheet({ items: { [name]: { hours: [] } } });
    const found = view.stages.filter(({ items }) => items.some((item) => item.name === name));
    expect(found.map(({ id }) => id)).toEqual([stage]);
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
    const rows = new Map(view.hours.map((row) => [row.stage, row]));
    expect(rows.get('Gelcoat')).toMatchObject({ planned: '0.26 h', worked: '' });
    expect(rows.get('Wiring')).toMatchObject({ planned: '5.25 h', worked: '6.25 h' });
    expect(rows.get('Cure')).toMatchObject({ planned: '', worked: '2 h' });
    const sum = (texts: readonly string[]) =>
      texts.reduce((total, text) => total + Math.round(Number.parseFloat(text || '0') * 100), 0);
    expect(sum([view.totalHours])).toBe(sum(view.hours.map(({ planned }) => planned)));
    expect(sum([view.totalWorked])).toBe(825);
  });

  it('warn of what can hurt someone there', () => {
    const everywhere = STAGES.map((stage) => work(stage, '1'));
    const view = sheet({ items: { 'Bow seat': { hours: everywhere } } });
    const told = (id: Stage) => stageOf(view, id)?.cautions.join(' ') ?? '';
    for (const id of ['gelcoat', 'laminate', 'infusion'] as const) {
      expect(told(id)).toMatch(/Peroxide.*Never let catalyst and accelerator.*Styrene/);
    }
    expect(told('wiring')).toContain('fuse');
    expect(told('water-trial')).toContain('Life jacket');
    const last = view.stages.flatMap(({ cautions }) => cautions.at(-1) ?? []);
    expect(last).toHaveLength(8);
    expect(last.filter((line) => !line.startsWith('Follow local rules'))).toEqual([]);
  });

  it('have the checks and measures of the yard', () => {
    const { yard } = fittedFigures().build;
    const checks = ['Bilge dry'];
    const measures = ['Draught, mm'];
    const facts = { does: 'Try her', checks, measures, people: 1, oneSitting: false };
    const stages = { ...yard.stages, 'water-trial': facts };
    const trial = stageOf(sheet({ yard: { stages } }), 'water-trial');
    expect(trial).toMatchObject({ does: 'Try her.', checks, measures, itemsHeading: 'Try' });
  });
});

describe('the materials to fetch', () => {
  it.each([
    ['each', '2.01', '0', '3', ''],
    ['each', '1', '0', '1', ''],
    ['set', '1', '0', '1', 'set'],
    ['set', '2', '0.1', '2', 'sets'],
    ['sheet', '1', '0.1', '2', 'sheets'],
    ['kg', '10', '0.08', '10.8', 'kg'],
    ['kg', '10.01', '0', '10.1', 'kg'],
    ['kg', '0.111', '0', '0.12', 'kg'],
    ['m2', '7.2', '0.1', '8.0', 'm²'],
  ])(
    'have the allowance of what is measured off in them: %s, %s and %s give %s',
    (unit, used, wastage, quantity, words) => {
      const parts = [part({ unit, quantity: decimal(used), materialClass: 'consumable' })];
      const view = sheet({
        yard: { wastage: { consumable: decimal(wastage) } },
        items: { 'Bow seat': { parts, hours: [work('cure', '1')] } },
      });
      expect(stageOf(view, 'cure')?.parts).toMatchObject([{ quantity, unit: words }]);
    },
  );

  it('are added up once a code', () => {
    const parts = [part({ code: 'K-1', quantity: decimal('2') })];
    const hours = [work('cure', '1')];
    const view = sheet({
      items: { 'Bow seat': { parts, hours }, 'House battery': { parts, hours } },
    });
    expect(stageOf(view, 'cure')?.parts).toMatchObject([{ code: 'K-1', quantity: '4' }]);
  });

  it.each([
    ['gelcoat', 'gelcoat', true],
    ['fabric', 'laminate', true],
    ['core', 'laminate', true],
    ['resin', 'infusion', true],
    ['consumable', 'mould-preparation', false],
    ['hardware', 'fit-out', false],
    ['cable', 'wiring', false],
  ] as const)('stand in the stage that uses them: %s in %s', (materialClass, stage, traced) => {
    const hours = STAGES.map((one) => work(one, '1'));
    const view = sheet({
      items: { 'Bow seat': { hours, parts: [part({ code: 'K-9', materialClass })] } },
    });
    const found = view.stages.filter(({ parts }) => parts.some(({ code }) => code === 'K-9'));
    expect(found.map(({ id }) => id)).toEqual([stage]);
    expect(found[0]?.parts.find(({ code }) => code === 'K-9')?.traced).toBe(traced);
  });
});

describe('where things go', () => {
  const placed = (more: Partial<BuildItem>) =>
    sheet({ items: { 'Bow seat': more } }).placing.find(({ name }) => name === 'Bow seat');

  it.each([
    [1.25, 0, 0.3, '1,250 mm', '{centre}', '300 mm'],
    [0.5, -0.4, 0, '500 mm', '400 mm P', '0 mm'],
    [0.5, 0.4, 0.1, '500 mm', '400 mm S', '100 mm'],
    [-0.25, 0.0004, -0.05, '250 mm behind', '{centre}', '−50 mm'],
  ])('reads %d, %d, %d as a shop measures', (x, y, z, forward, across, up) => {
    expect(placed({ at: { x: metres(x), y: metres(y), z: metres(z) } })).toMatchObject({
      quantity: '2 ×',
      forward,
      across,
      up,
      instead: '',
    });
  });

  it('says so where nobody gave a position, and gives no dimension', () => {
    expect(placed({ placed: false })).toMatchObject({
      forward: '',
      across: '',
      up: '',
      instead: 'no position given: ask before fitting',
    });
  });

  it('lists what is in the boat, and not the boat itself or what she stands on', () => {
    expect(sheet().placing.map(({ name }) => name)).toEqual([
      'Bow seat',
      'House battery',
      'House battery charger',
      'Outboard 15 kW, long shaft',
    ]);
  });

  it('numbers things as the drawing and the lists of the stages do', () => {
    const view = sheet();
    const numbers = new Map(view.placing.map(({ name, number }) => [name, number]));
    expect(numbers.get('Bow seat')).toBe('1');
    for (const item of view.stages.flatMap(({ items }) => items)) {
      expect(item.number).toBe(numbers.get(item.name) ?? '');
    }
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
    const { masses } = breakable(buildSheetView(figures, { fontCss: '' }));
    expect(masses.map(({ condition }) => condition)).toEqual([
      'Bare shell',
      'Fitted out',
      'Completed',
      'Ready to launch',
      'On the trailer',
    ]);
    // 5 % of 100 kg and half a kilogram of the scale: 5.02 kg.
    expect(masses[0]).toMatchObject({
      target: '100 kg',
      band: '95 kg to 105 kg',
      measured: '21 kg',
    });
    expect(masses[2]).toMatchObject({
      target: `${Math.round(figures.mass.completed.mass)} kg`,
      measured: '',
    });
    expect(masses[3]?.contains).toMatch(/outboard \(.* kg\) and 25 L of fuel/);
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
    const told = sheet({ findings }).findings;
    expect(told.map(({ word, details }) => [word, ...details])).toEqual([
      ['Warning', '80 kg; wanted: 70 kg'],
      ['Note', 'Rack', 'Hook'],
    ]);
  });

  it('leaves out what is about money or the offer', () => {
    const codes = ['MARGIN_BELOW_FLOOR', 'PART_PRICE_OLD', 'QUOTE_EXPIRED'] as const;
    const findings = codes.map((code) => finding(code, place, { received: 'x' }));
    expect(sheet({ findings }).findings).toEqual([]);
  });

  it('is the office’s note and the notes of the items', () => {
    const view = sheet();
    expect(view.note).toBe('secret-order-note.');
    expect(stageOf(view, 'fit-out')?.items[1]?.notes).toEqual(['secret-workshop-note.']);
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

  it('has a place in its type', () => {
    // The compiler is the check: a field for money makes this tuple something else than [never].
    const none: [Extract<KeysOf<BuildSheetView>, MoneyKey>] extends [never] ? true : false = true;
    const found: [
      Extract<KeysOf<BuildSheetView & { parts: { cost: string }[] }>, MoneyKey>,
    ] extends [never]
      ? true
      : false = false;
    expect([none, found]).toEqual([true, false]);
  });

  it('nor a value that is missing', () => {
    expect(JSON.stringify(sheet())).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  });
});
