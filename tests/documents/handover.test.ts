import { describe, expect, it } from 'vitest';
import type { HandoverView } from '../../src/documents/handover/types.ts';
import { customerFigures } from '../../src/figures/index.ts';
import { handoverView } from '../../src/documents/handover/handover.ts';
import { amperes } from '../../src/units/index.ts';
import { breakable, fittedFigures } from './fitted-build.ts';
import type { Forbidden, KeysOf } from './forbidden-keys.ts';
import { SECRETS } from './invented-build.ts';

type Wanted = Parameters<typeof fittedFigures>[0];

const pack = (wanted: Wanted = {}): HandoverView =>
  breakable(handoverView(customerFigures(fittedFigures(wanted)), { fontCss: '' }));

const DATES = { enquiry: '2026-02-02', quoted: '2026-03-14', accepted: '2026-03-20' };
const SERIAL = {
  'House battery': { serial: true },
  'Outboard 15 kW, long shaft': { serial: true },
  'Road trailer': { serial: true },
} as const;

const valueOf = (view: HandoverView, label: string) =>
  view.identity.find((field) => field.label === label)?.value;
const serialsOf = (view: HandoverView, name: string) =>
  view.fitted
    .flatMap(({ items }) => items)
    .find((item) => item.name === name)
    ?.serials.map(({ value }) => value);

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
    expect(view.standing.kind).toBe('handed-over');
    expect(view.standing.sentence).toContain('15 July 2026');
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
    expect(view.otherSerials).toEqual([{ label: 'House batteryx', value: 'X-1' }]);
  });
});

describe('masses and limits', () => {
  it('are as computed, with a blank or with what was weighed and when', () => {
    const masses = [{ stage: 'engine', mass: '263', date: '2026-07-01', by: 'Fitter' }];
    const figures = fittedFigures({ order: { record: { masses } } });
    const view = breakable(handoverView(customerFigures(figures), { fontCss: '' }));
    const kg = (mass: number) => `${Math.round(mass)} kg`;
    expect(view.masses).toMatchObject([
      { condition: 'Completed', computed: kg(figures.mass.completed.mass), weighed: '', when: '' },
      {
        condition: 'Ready to launch',
        computed: kg(figures.mass.ready.mass),
        weighed: '263 kg',
        when: '1 July 2026',
      },
      {
        condition: 'On its trailer',
        contains: expect.stringContaining('no loose gear. With gear for') as string,
        computed: kg(figures.mass.ready.mass + (figures.build.trailer?.tare ?? 0)),
        weighed: '',
      },
    ]);
    const counted = view.methods.find(({ title }) => title === 'Mass and load');
    expect(counted?.text).toMatch(/allowance is .* Verify by weighing/);
  });

  it('each say that they are to be confirmed', () => {
    const { carries, methods } = pack();
    expect(carries.map(({ label, value }) => `${label}: ${value}`)).toEqual([
      'Most people: 4',
      'Most load: 600 kg',
      'Greatest outboard power: 22 kW (30 hp)',
      'Greatest outboard mass: 110 kg',
      'Trailer with its load: 900 kg',
    ]);
    for (const { label, marks } of carries) expect(`${label}: ${marks}`).toMatch(/: \d/);
    const [rating] = methods.filter(({ title }) => title === 'People, load and power');
    expect(rating?.text).toContain('The builder confirms it by test under local rules.');
  });

  it('speak of a trailer only when there is one', () => {
    const view = pack({ trailer: false });
    expect(view.masses).toHaveLength(2);
    expect(view.carries).toHaveLength(4);
    expect(view.cautions.map(({ heading }) => heading)).not.toContain('Towing');
    expect(pack().cautions.map(({ heading }) => heading)).toContain('Towing');
  });
});

describe('the trials', () => {
  it('are rows to write in while there is no record', () => {
    const { trials } = pack();
    expect(trials.length).toBeGreaterThan(0);
    expect(new Set(trials.flatMap((run) => Object.values(run)))).toEqual(new Set(['']));
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
    expect(pack({ order: { record: { trials: [run] } } }).trials).toEqual([
      { ...run, date: '7 July 2026', rpm: '5,650' },
    ]);
  });
});

describe('what the owner reads', () => {
  it('is the yard’s checklist and care, and who signs', () => {
    const view = pack({ yard: { handoverChecks: ['Bungs in'], care: ['Rinse her'] } });
    expect(view.checklist).toEqual(['Bungs in']);
    expect(view.care).toEqual(['Rinse her.']);
    expect(view.signatures).toEqual(['For Dunlin Creek Boatworks', 'For Sedge Field Station']);
  });

  it('warns of load, fuel, batteries and fuses, and leaves the last word to local rules', () => {
    const { cautions } = pack({ items: { 'House battery': { current: amperes(2) } } });
    expect(cautions.map(({ heading }) => heading)).toEqual([
      'Load and stability',
      'Fuel and batteries',
      'Wiring and fuses',
      'Towing',
      'Rules',
    ]);
    const last = cautions.at(-1)?.lines.join(' ') ?? '';
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

  it('has no place in its type for a cost, an hour, a part or a note', () => {
    // The compiler is the check: a forbidden field makes this tuple something else than [never].
    const none: [Extract<KeysOf<HandoverView>, Forbidden>] extends [never] ? true : false = true;
    const found: [
      Extract<KeysOf<HandoverView & { fitted: { cost: string }[] }>, Forbidden>,
    ] extends [never]
      ? true
      : false = false;
    expect([none, found]).toEqual([true, false]);
  });
});
