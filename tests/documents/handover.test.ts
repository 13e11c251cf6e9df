import { describe, expect, it } from 'vitest';
import type { Letter } from '../../src/documents/index.ts';
import { customerFigures } from '../../src/figures/index.ts';
import { handoverView } from '../../src/documents/handover/handover.ts';
import { amperes } from '../../src/units/index.ts';
import { breakable, fittedFigures } from './fitted-build.ts';
import { SECRETS } from './invented-build.ts';
import {
  blocksOf,
  headingsIn,
  marksOf,
  methodsOf,
  rowOf,
  rowsOf,
  saidIn,
  signersOf,
  underOf,
  wordsOf,
} from './letters.ts';

type Wanted = Parameters<typeof fittedFigures>[0];

const pack = (wanted: Wanted = {}): Letter =>
  breakable(handoverView(customerFigures(fittedFigures(wanted)), { fontCss: '' }));

const DATES = { enquiry: '2026-02-02', quoted: '2026-03-14', accepted: '2026-03-20' };
const SERIAL = {
  'House battery': { serial: true },
  'Outboard 15 kW, long shaft': { serial: true },
  'Road trailer': { serial: true },
} as const;

const valueOf = (view: Letter, label: string) =>
  view.facts.find((field) => field.label === label)?.value;
const serialsOf = (view: Letter, name: string) => {
  const of = (text: string) => text === name || text.endsWith(`× ${name}`);
  const cell = rowsOf(view, 'fitted').find(({ cells }) => of(saidIn(cells[1])))?.cells[2];
  return typeof cell === 'object' ? cell.fields?.map(({ value }) => value) : undefined;
};

describe('the standing of a handover pack', () => {
  it.each(['enquiry', 'quoted', 'accepted', 'building', 'ready'])(
    'is a preview, by its name too, at status %s',
    (status) => {
      const view = pack({ order: { status } });
      expect(view.standing).toMatchObject({
        kind: 'preview',
        word: 'Preview: filled in at handover',
      });
      expect(view.document.runningHead).toMatch(/^Preview of handover pack 2026-001/);
    },
  );

  it('is handed over, on its day', () => {
    const dates = { ...DATES, handedOver: '2026-07-15' };
    const view = pack({ order: { status: 'handed-over', dates } });
    expect(view.standing?.kind).toBe('handed-over');
    expect(view.standing?.sentence).toContain('15 July 2026');
    expect(valueOf(view, 'Handed over on')).toBe('15 July 2026');
    expect(view.document.runningHead).toMatch(/^Handover pack 2026-001/);
  });
});

describe('what identifies the boat', () => {
  it('is a blank until the record has it', () => {
    expect(valueOf(pack(), 'Hull identification number')).toBe('');
    const record = { hullNumber: 'DCB-C0400-2601' };
    expect(valueOf(pack({ order: { record } }), 'Hull identification number')).toBe(
      'DCB-C0400-2601',
    );
  });

  it('has a blank for the serial number of each that has one', () => {
    const view = pack({ items: SERIAL });
    expect(serialsOf(view, 'House battery')).toEqual(['', '']);
    expect(serialsOf(view, 'Road trailer')).toEqual(['']);
    expect(serialsOf(view, 'Bow seat')).toEqual([]);
  });

  it('finds the item that a recorded number belongs to, and lists the others', () => {
    const serials = [
      { item: 'house battery, second', serial: 'B-2' },
      { item: 'Outboard', serial: 'E-7' },
      { item: 'House battery charger', serial: 'C-5' },
      { item: 'House batteryx', serial: 'X-1' },
    ];
    const view = pack({ items: SERIAL, order: { record: { serials } } });
    expect(serialsOf(view, 'House battery')).toEqual(['B-2', '']);
    expect(serialsOf(view, 'House battery charger')).toEqual(['C-5']);
    expect(serialsOf(view, 'Outboard 15 kW, long shaft')).toEqual(['E-7']);
    const last = rowsOf(view, 'fitted').slice(-2);
    expect(last.map(({ cells }) => cells.map(saidIn))).toEqual([
      ['Other serial numbers'],
      ['', 'House batteryx', 'X-1'],
    ]);
  });
});

describe('masses and limits', () => {
  it('are as computed, with a blank or with what was weighed and when', () => {
    const masses = [{ stage: 'engine', mass: '263', date: '2026-07-01', by: 'Fitter' }];
    const figures = fittedFigures({ order: { record: { masses } } });
    const view = breakable(handoverView(customerFigures(figures), { fontCss: '' }));
    const kg = (mass: number) => `${Math.round(mass)} kg`;
    expect(rowsOf(view, 'masses').map(({ cells }) => cells.map(saidIn))).toEqual([
      ['Completed', kg(figures.mass.completed.mass), '', ''],
      ['Ready to launch', kg(figures.mass.ready.mass), '263 kg', '1 July 2026'],
      ['On its trailer', kg(figures.mass.ready.mass + (figures.build.trailer?.tare ?? 0)), '', ''],
    ]);
    expect(underOf(view, 'masses', 'On its trailer')).toContain('no loose gear. With gear for');
    const counted = methodsOf(view).find(({ title }) => title === 'Mass and load');
    expect(counted?.text).toMatch(/allowance is .* Verify by weighing/);
  });

  it('each say that they are to be confirmed', () => {
    const view = pack();
    const carries = rowsOf(view, 'carries').map(({ cells }) => cells.map(saidIn));
    expect(carries.map(([label, value]) => `${label}: ${value}`)).toEqual([
      'Most people: 4',
      'Most load: 600 kg',
      'Greatest outboard power: 19 kW (26 hp)',
      'Greatest outboard mass: 110 kg',
      'Trailer with its load: 900 kg',
    ]);
    for (const { label, marks } of marksOf(view, 'carries'))
      expect(`${label}: ${marks}`).toMatch(/: \d/);
    const rating = methodsOf(view).find(({ title }) => title === 'People, load and power');
    expect(rating?.text).toContain('The builder confirms it by test under local rules.');
  });

  it('speak of a trailer only when there is one', () => {
    const view = pack({ trailer: false });
    expect(rowsOf(view, 'masses')).toHaveLength(2);
    expect(rowsOf(view, 'carries')).toHaveLength(4);
    expect(headingsIn(view, 'cautions')).not.toContain('Towing');
    expect(headingsIn(pack(), 'cautions')).toContain('Towing');
  });
});

describe('the trials', () => {
  it('are rows to write in while there is no record', () => {
    const trials = rowsOf(pack(), 'trials');
    expect(trials.length).toBeGreaterThan(0);
    expect(new Set(trials.flatMap(({ cells }) => cells))).toEqual(new Set(['']));
  });

  it('are as recorded', () => {
    const run = {
      date: '2026-07-07',
      conditions: 'Ripples',
      people: '2',
      speed: '25.1 kn',
      rpm: '5650',
      by: 'Foreman',
    };
    const view = pack({ order: { record: { trials: [run] } } });
    expect(rowOf(view, 'trials', '7 July 2026')).toEqual([
      '7 July 2026',
      'Ripples',
      '2',
      '25.1 kn',
      '5,650',
      'Foreman',
    ]);
  });
});

describe('what the owner reads', () => {
  it('is the yard’s checklist and care, and who signs', () => {
    const view = pack({ yard: { handoverChecks: ['Bungs in'], care: ['Rinse her'] } });
    const checks = blocksOf(view, 'checklist').find(({ block }) => block === 'checks');
    expect(checks).toMatchObject({ lines: ['Bungs in'] });
    expect(wordsOf(view, 'care', 'list')).toEqual(['Rinse her.']);
    expect(signersOf(view)).toEqual(['For Dunlin Creek Boatworks', 'For Sedge Field Station']);
  });

  it('warns of load, fuel, batteries and fuses, and leaves the last word to local rules', () => {
    const view = pack({ items: { 'House battery': { current: amperes(2) } } });
    expect(headingsIn(view, 'cautions')).toEqual([
      'Load and stability',
      'Fuel and batteries',
      'Wiring and fuses',
      'Towing',
      'Rules',
    ]);
    const last = wordsOf(view, 'cautions', 'list').slice(-2).join(' ');
    expect(last).toContain('Local rules');
    expect(last).toContain('Nothing in this pack is a claim that the boat complies');
  });

  it('has no byte of what is for the yard only', () => {
    const text = JSON.stringify(pack({ items: SERIAL }));
    expect(SECRETS.filter((secret) => text.includes(secret))).toEqual([]);
    expect(text).not.toMatch(/[$€£]|7\.77|480\.33/);
  });

  it('has no value that is missing', () => {
    expect(JSON.stringify(pack())).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  });
});
