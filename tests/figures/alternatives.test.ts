import { rmSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Differences, figureOrders, moneyChange } from '../../src/figures/index.ts';
import { describePlace } from '../../src/findings/index.ts';
import { moneyToText } from '../../src/money/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import { OPTIONS, ORDER, workspaceOf } from '../read/samples.ts';

const BASE = `${ORDER}outboard: { model: outboard-20, shaft: long }
trailer: trailer-750
alternatives:
`;
const PRICED = OPTIONS.replace(
  'name: Seat',
  'name: Seat, price: 300, mass: 9 kg, at: { x: 1, z: 0.5 }',
).concat(
  '  - { id: deck, name: Deck, class: fit-out, price: 500, mass: 120 kg, at: { x: 2, z: 0.3 } }\n',
);

/** How much more it becomes. */
const more = (change: Differences['people'] | undefined): number =>
  (change?.now.says ?? Number.NaN) - (change?.was?.says ?? Number.NaN);

function figured(alternatives: string) {
  const folder = workspaceOf({
    'catalogue/options/seats.yaml': PRICED,
    'orders/t-1.yaml': BASE + alternatives,
  });
  try {
    const { catalogue, orders, brokenIds, sources, findings } = readWorkspace(folder);
    if (!catalogue) throw new Error(findings.map(({ received }) => received).join());
    const [order] = figureOrders(orders, catalogue, brokenIds);
    const spot = (place: Parameters<typeof describePlace>[0]) =>
      describePlace(place, sources.get(place.file));
    if (!order) throw new Error('no order');
    return {
      ...order,
      spots: order.findings.map(({ code, place }) => `${code} ${spot(place)}`),
      told: order.alternatives.map(({ findings: found }) =>
        found.map(({ code, place }) => `${code} ${spot(place)}`),
      ),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('an alternative of an order', () => {
  it('is the same order otherwise: what it costs, weighs and carries beside the order itself', () => {
    const { figures, alternatives } = figured(
      `  - { name: Without a trailer, trailer: none }
  - { name: Oars only, outboard: none, remove: [seat] }
  - { name: With a deck, add: [deck] }
`,
    );
    const [afloat, oars, deck] = alternatives;
    if (!figures) throw new Error('no figures');
    expect(alternatives.map(({ name }) => name)).toEqual([
      'Without a trailer',
      'Oars only',
      'With a deck',
    ]);
    // 2100 + 1 h at 50 and 38 = 2188.00, / 0.65 = 3366.15, with 10 % of tax 3702.77.
    const price = (one: typeof afloat) =>
      one?.differences && moneyToText(moneyChange(one.differences.driveAway));
    expect(price(afloat)).toBe('-3702.77');
    expect(afloat?.figures?.build.trailer).toBeUndefined();
    // The outboard is 60 kg, the seat 9 kg and its 5 % contingency.
    expect(more(oars?.differences?.massOnTrailer)).toBeCloseTo(-60 - 9 * 1.05, 9);
    expect(oars?.figures?.build.items.map(({ key }) => key)).not.toContain('option:seat');
    // 450 kg less fuel 14.8 and seat 9 is 4 people of 90 kg; less 120 kg of deck it is 3.
    expect(more(deck?.differences?.people)).toBe(-1);
    // The method of the speed is not for a hull without chines.
    expect(deck?.differences).toBeDefined();
    expect(deck?.differences?.speed).toBeUndefined();
    expect(price(deck)).toBe('550.00');
  });

  it('is figured by the code that figures the order: put into the order it gives the same', () => {
    const { alternatives } = figured('  - { name: With a deck, add: [deck] }\n');
    const folder = workspaceOf({
      'catalogue/options/seats.yaml': PRICED,
      'orders/t-1.yaml': BASE.replace('  - seat\n', '  - seat\n  - deck\n').replace(
        'alternatives:\n',
        '',
      ),
    });
    const { catalogue, orders, brokenIds } = readWorkspace(folder);
    rmSync(folder, { recursive: true });
    const [order] = catalogue ? figureOrders(orders, catalogue, brokenIds) : [];
    const [one, other] = [alternatives[0]?.figures, order?.figures];
    expect(one && moneyToText(one.price.driveAway)).toBe(
      other && moneyToText(other.price.driveAway),
    );
    expect(one?.mass.ready.mass).toBe(other?.mass.ready.mass);
    expect(one?.price.lines.length).toBe(other?.price.lines.length);
  });

  it('has the findings that the order itself has not, where they were written, and stops no document', () => {
    const { figures, told, spots, alternatives } = figured(
      `  - name: Overloaded
    add: [deck, { option: seat, quantity: 1 }]
  - { name: Short shaft, outboard: { model: outboard-20, shaft: short } }
`,
    );
    expect(told).toEqual([
      ['ORDERED_TWICE orders/t-1.yaml:20:17'],
      ['DOES_NOT_FIT orders/t-1.yaml:21:65'],
    ]);
    expect(alternatives?.every((one) => one.figures === undefined)).toBe(true);
    expect(figures).toBeDefined();
    expect(spots).toEqual([]);
  });

  it('with a name that points to nothing is a mistake of the file', () => {
    const { figures, spots } = figured(
      `  - { name: Misspelt, add: [dekc] }
  - { name: Not there, remove: [deck] }
`,
    );
    expect(spots).toEqual(['UNKNOWN_ID orders/t-1.yaml:19:29', 'UNKNOWN_ID orders/t-1.yaml:20:32']);
    expect(figures).toBeUndefined();
  });

  it('is not there when the order lists none', () => {
    expect(figured('  []\n').alternatives).toEqual([]);
  });
});
