import { describe, expect, it } from 'vitest';
import { moneyToText } from '../../src/money/index.ts';
import type { BuildItem } from '../../src/resolve/index.ts';
import { decimalToShortText } from '../../src/units/index.ts';
import { HULL, OPTIONS, ORDER, PARTS } from '../read/samples.ts';
import { resolveSample } from './invented.ts';

const DECK = `group: Decks
order: 2
options:
  - id: deck
    name: Deck
    class: fit-out
    quantity: { most: 4 }
    parts:
      - { part: AC-1, quantity: 2, per: deck-area }
      - { part: AC-1, quantity: 3, per: once }
      - { part: AC-1, quantity: 0.5, per: length }
      - { part: AC-1, quantity: 0.1, per: beam }
      - { part: AC-1, quantity: 7 }
    hours:
      - { stage: fit-out, hours: 1.5, per: length }
      - { stage: gelcoat, hours: 2, per: once }
    current: 1.5 A
    price: 100.10
    note: Bed it down.
    at: { x: 60 % length, y: -20 % beam, z: 50 % depth }
`;
const withDeck = (line: string) => ({
  'catalogue/options/decks.yaml': DECK,
  'orders/t-1.yaml': ORDER.replace('  - seat\n', `  - seat\n${line}`),
});
const itemOf = (items: readonly BuildItem[] | undefined, key: string): BuildItem => {
  const found = items?.find((item) => item.key === key);
  if (!found) throw new Error(`no ${key}`);
  return found;
};

describe('an order becomes one list of items', () => {
  it('with the hull first, options in the order of their groups, then one-offs, outboard and trailer', () => {
    const { build } = resolveSample({
      'catalogue/options/decks.yaml': DECK.replace('order: 2', 'order: 9'),
      'orders/t-1.yaml': `${ORDER.replace('  - seat\n', '  - deck\n  - seat\n')}
outboard: { model: outboard-20, shaft: long }
trailer: trailer-750
extras:
  - { name: Crab pot rack, class: fit-out, cost: 40, mass: 3 kg }
`,
    });
    expect(build?.items.map(({ key }) => key)).toEqual([
      'shell',
      'structure',
      'option:seat',
      'option:rod-holder',
      'option:deck',
      'extra:1',
      'outboard',
      'trailer',
    ]);
    expect(new Set(build?.items.map(({ place }) => place.file)).size).toBe(2);
  });

  it('scales parts and hours by count, once, length, beam and deck area, exactly', () => {
    const { build } = resolveSample(withDeck('  - { option: deck, quantity: 3 }\n'));
    const deck = itemOf(build?.items, 'option:deck');
    // 3 decks on a hull of 4 m x 1.7 m with 4 m2 of deck.
    expect(deck.parts.map(({ quantity }) => decimalToShortText(quantity))).toEqual([
      '24',
      '3',
      '6',
      '0.51',
      '21',
    ]);
    expect(deck.hours.map(({ hours }) => decimalToShortText(hours))).toEqual(['18', '2']);
    expect(deck.current).toBeCloseTo(4.5, 12);
    expect(deck.fixedPrice && moneyToText(deck.fixedPrice)).toBe('300.30');
  });

  it('weighs an item by its parts when it has no mass of its own', () => {
    const { build } = resolveSample(withDeck('  - deck\n'));
    const deck = itemOf(build?.items, 'option:deck');
    expect(deck.mass).toBeCloseTo(0.46 * (8 + 3 + 2 + 0.17 + 7), 9);
  });

  it('puts an item where the catalogue says, in shares of the hull, unless the order says otherwise', () => {
    const byCatalogue = resolveSample(withDeck('  - deck\n'));
    const { x, y, z } = itemOf(byCatalogue.build?.items, 'option:deck').at;
    expect([x, y, z].map((value) => value.toFixed(6))).toEqual([
      '2.400000',
      '-0.340000',
      '0.325000',
    ]);
    const byOrder = resolveSample(
      withDeck('  - { option: deck, at: { x: 900 mm, z: 0.2 m }, note: Port side. }\n'),
    );
    const moved = itemOf(byOrder.build?.items, 'option:deck');
    expect(moved.at).toEqual({ x: 0.9, y: 0, z: 0.2 });
    expect(moved.notes).toEqual(['Bed it down.', 'Port side.']);
  });

  it('notes what has a mass and no place, and counts it amidships', () => {
    const { build, spots } = resolveSample({
      'catalogue/options/seats.yaml': OPTIONS.replace(
        'name: Seat, class: fit-out',
        'name: Seat, class: fit-out, mass: 6 kg',
      ),
    });
    expect(spots).toEqual(['ITEM_NOT_PLACED orders/t-1.yaml:12:5']);
    expect(itemOf(build?.items, 'option:seat')).toMatchObject({
      placed: false,
      at: { x: 2, y: 0, z: 0.325 },
    });
  });

  it('takes a one-off item with cost, fixed price, hours, mass and count', () => {
    const { build } = resolveSample({
      'orders/t-1.yaml': `${ORDER}extras:
  - name: Rack
    class: fit-out
    quantity: 2
    cost: 40.25
    price: 99.95
    hours: [{ stage: fit-out, hours: 1.25 }]
    mass: 3 kg
    at: { x: 1 m, z: 0.5 m }
`,
    });
    const rack = itemOf(build?.items, 'extra:1');
    expect(rack).toMatchObject({ kind: 'extra', mass: 6, quantity: 2, placed: true });
    expect(rack.otherCost && moneyToText(rack.otherCost)).toBe('80.50');
    expect(rack.fixedPrice && moneyToText(rack.fixedPrice)).toBe('199.90');
    expect(rack.hours.map(({ hours }) => decimalToShortText(hours))).toEqual(['2.5']);
  });

  it('charges the wear of the moulds to the shell', () => {
    const shell = itemOf(resolveSample().build?.items, 'shell');
    expect(shell.otherCost && moneyToText(shell.otherCost)).toBe('400.00');
  });

  it('passes on the charges that apply, less those left out', () => {
    const charges = `charges:
  - { id: boat, name: Boat, amount: 1, taxed: no, when: always, source: The office. }
  - { id: motor, name: Motor, amount: 2, taxed: no, when: outboard, source: The office. }
  - { id: road, name: Road, amount: 4, taxed: no, when: trailer, source: The office. }
`;
    const chargesOf = (more: string) =>
      resolveSample({
        'catalogue/charges.yaml': charges,
        'orders/t-1.yaml': ORDER + more,
      }).build?.charges.map(({ id }) => id);
    expect(chargesOf('')).toEqual(['boat']);
    expect(chargesOf('trailer: trailer-750\n')).toEqual(['boat', 'road']);
    expect(
      chargesOf(
        'outboard: { model: outboard-20, shaft: long }\nleaveOutCharges: [{ charge: boat, reason: Exempt. }]\n',
      ),
    ).toEqual(['motor']);
  });
});

describe('what is wrong is a finding at its place, and there is no Build', () => {
  const RULES = `group: Rules
order: 3
options:
  - { id: canopy, name: Canopy, class: fit-out, requires: [frame], occupies: [top] }
  - { id: frame, name: Frame, class: fit-out }
  - { id: mast, name: Mast, class: fit-out, occupies: [top] }
  - { id: tent, name: Tent, class: fit-out, excludes: [mast] }
  - { id: lamp, name: Lamp, class: fit-out, requires: [[mast, frame]] }
  - { id: deep, name: Deep, class: fit-out, fits: [other-hull] }
  - { id: few, name: Few, class: fit-out, quantity: { least: 2, most: 3 } }
`;
  const OTHER = HULL.replace('tern-400', 'other-hull');
  it.each([
    ['  - canopy', ['REQUIREMENT_UNMET 13']],
    ['  - canopy\n  - frame', []],
    ['  - lamp', ['REQUIREMENT_UNMET 13']],
    ['  - lamp\n  - mast', []],
    ['  - frame\n  - canopy\n  - mast', ['PLACE_TAKEN 15']],
    ['  - tent\n  - mast', ['EXCLUDED 14']],
    ['  - mast\n  - tent', ['EXCLUDED 14']],
    ['  - deep', ['DOES_NOT_FIT 13']],
    ['  - few', ['QUANTITY_OUT_OF_RANGE 13']],
    ['  - { option: few, quantity: 2 }', []],
    ['  - { option: few, quantity: 4 }', ['QUANTITY_OUT_OF_RANGE 13']],
    ['  - seat', ['ORDERED_TWICE 13']],
    ['  - matts', ['UNKNOWN_ID 13']],
  ])('%j', (lines, expected) => {
    const { build, spots } = resolveSample({
      'catalogue/hulls/other-hull.yaml': OTHER,
      'catalogue/options/rules.yaml': RULES,
      'orders/t-1.yaml': ORDER.replace('  - seat\n', `  - seat\n${lines}\n`),
    });
    expect(spots.map((spot) => spot.replace(/orders\/t-1\.yaml:(\d+):\d+/, '$1'))).toEqual(
      expected,
    );
    expect(build === undefined).toBe(expected.length > 0);
  });

  const RATED = ORDER.replace('people: 3', 'people: PEOPLE');
  it.each([
    ['people at the rating', '4', 'power: 30 hp', []],
    ['one more', '5', 'power: 30 hp', ['PEOPLE_OVER_RATING']],
    ['power at the rating', '4', 'power: 20 kW', []],
    ['power just over', '4', 'power: 19.9 kW', ['POWER_OVER_RATING']],
    ['an engine at the rating', '4', 'engineMass: 60 kg', []],
    ['an engine just over', '4', 'engineMass: 59.9 kg', ['ENGINE_TOO_HEAVY']],
    ['another shaft', '4', 'shaft: short', ['SHAFT_LENGTH']],
    ['a hull shorter than the trailer is for', '4', 'length: 3.4 m', ['TRAILER_LENGTH']],
  ])('ratings: %s', (_, people, changed, codes) => {
    const [field = ''] = changed.split(':');
    const { findings } = resolveSample({
      'catalogue/hulls/tern-400.yaml': HULL.replace(new RegExp(`${field}: [^\\n]+`), changed),
      'orders/t-1.yaml': `${RATED.replace('PEOPLE', people)}outboard: { model: outboard-20, shaft: long }\ntrailer: trailer-750\n`,
    });
    expect(findings.map(({ code }) => code)).toEqual(codes);
  });

  it('has no price while a part, a margin class or a rate of it is unknown', () => {
    const least = resolveSample({ 'catalogue/parts/acme-parts.csv': PARTS.replaceAll(',', ';') });
    expect(least.build).toBeUndefined();
    expect(least.findings.map(({ received }) => received)).toContain('parts without a price: AC-1');
    const classless = resolveSample({
      'catalogue/options/seats.yaml': OPTIONS.replace('class: fit-out', 'class: fitout'),
    });
    expect(classless.build).toBeUndefined();
    expect(classless.findings.map(({ received }) => received)).toEqual([
      '"seat", whose margin class or rate of an hour is not in the yard file',
    ]);
  });
  it('says which shafts an outboard comes with', () => {
    const { findings } = resolveSample({
      'orders/t-1.yaml': `${ORDER}outboard: { model: outboard-20, shaft: short }\n`,
    });
    expect(findings).toContainEqual(
      expect.objectContaining({ code: 'DOES_NOT_FIT', expected: expect.stringContaining('long') }),
    );
  });

  it('an old price is a warning: 180 days pass, 181 do not', () => {
    const pricedOn = (day: string) =>
      resolveSample({
        'orders/t-1.yaml': ORDER.replace('enquiry: 2026-03-14', `enquiry: ${day}`),
      }).spots;
    expect(pricedOn('2026-08-01')).toEqual([]);
    expect(pricedOn('2026-08-02')).toEqual(['PART_PRICE_OLD catalogue/parts/acme-parts.csv:2:48']);
  });

  it('requirements in a circle are told once, in the catalogue', () => {
    const { ofCatalogue } = resolveSample({
      'catalogue/hulls/other-hull.yaml': OTHER,
      'catalogue/options/rules.yaml': RULES.replace(
        'name: Frame, class: fit-out',
        'name: Frame, class: fit-out, requires: [canopy]',
      ),
    });
    expect(ofCatalogue.map(({ code, received }) => [code, received])).toEqual([
      ['REQUIREMENT_CIRCULAR', 'canopy -> frame -> canopy'],
    ]);
  });
});
