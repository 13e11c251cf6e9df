import { describe, expect, it } from 'vitest';
import type { CrewFigures, Figures } from '../../src/figures/index.ts';
import { type Loading, toSide } from '../../src/mass/index.ts';
import { YARD, ORDER } from '../read/samples.ts';
import { type Changes, codes, DEGREE, figuresOf, present, weighted } from './box-boat.ts';

const cockpit = (halfBreadth: number, seatHeight = 0.26): readonly [RegExp, string] => [
  /cockpit: .*/,
  `cockpit: { from: 10 % length, to: 50 % length, halfBreadth: ${halfBreadth} m, seatHeight: ${seatHeight} m }`,
];
const rated = (people: number, load = 450): readonly [RegExp, string] => [
  /people: 4\n {2}load: 450 kg/,
  `people: ${people}\n  load: ${load} kg`,
];
const more = (facts: string): readonly [string, string] => [
  'shaft: long\nclass: hull',
  `${facts}\nshaft: long\nclass: hull`,
];
const opening = (one: string): readonly [RegExp, string] => [/openings: .*/, `openings: [${one}]`];
const screen = (limits: string): string =>
  YARD.replace('priceAge', `offsetLoad: { basis: A screen of the test., ${limits} }\npriceAge`);
const crewOf = (changes: Changes): CrewFigures => present(figuresOf(changes).float.afloat).crew;
const received = ({ findings }: Figures, code: string): string | undefined =>
  findings.find((one) => one.code === code)?.received;

/** Heel of the box, degrees, by hand: wall-sided, its trim left out of account. */
function wallSided({ mass, centre }: Pick<Loading, 'mass' | 'centre'>): number {
  const draught = mass / (1025 * 4 * 1.6);
  const bm = 1.6 ** 2 / (12 * draught);
  const gm = draught / 2 + bm - centre.z;
  let [low, high] = [0, 1];
  while (high - low > 1e-9) {
    const tan = (low + high) / 2;
    if ((gm + (bm * tan ** 2) / 2) * tan < Math.abs(centre.y)) low = tan;
    else high = tan;
  }
  return Math.atan(low) / DEGREE;
}

describe('people to one side', () => {
  const hull = [cockpit(0.6)];

  it('are as many as leave the heel of the shop’s screen, as a hand works it out', () => {
    const { mass } = figuresOf({ hull });
    const { cockpit: place } = crewOf({ hull });
    const heels = [0, 1, 2, 3].map((count) =>
      wallSided(toSide(mass.loadings['fully loaded'], place, count)),
    );
    for (const most of [2, 4, 6, 9, 14, 30]) {
      const { ordered } = crewOf({ hull, yard: screen(`heel: ${most} deg`) });
      const within = heels.filter((heel) => heel <= most).length - 1;
      expect(ordered).toMatchObject({ people: 3, most: within });
      expect((ordered.leans?.heel ?? 0) / DEGREE).toBeCloseTo(
        within === 0 ? 0 : (heels[within] ?? 0),
        0,
      );
    }
  });

  it('FEW_TO_ONE_SIDE: fewer than half of them, and not just half', () => {
    const two = { hull: [cockpit(0.6), rated(2)], order: ORDER.replace('people: 3', 'people: 2') };
    const { mass, float } = figuresOf(two);
    const { cockpit: place } = present(float.afloat).crew;
    const heel = wallSided(toSide(mass.loadings['fully loaded'], place, 1));
    const limit = (by: number) => screen(`heel: ${(heel + by).toFixed(3)} deg`);
    expect(codes({ ...two, yard: limit(0.3) })).toEqual([]);
    expect(codes({ ...two, yard: limit(-0.3) })).toEqual(['FEW_TO_ONE_SIDE']);
  });

  it('are what was tried on the water, where it was', () => {
    const test =
      'tested: { side: { result: 1, how: Calm water, by: A. Tester, date: 2026-05-04 } }';
    const figures = figuresOf({ hull: [...hull, more(test)] });
    expect(present(figures.float.afloat).crew.rated).toEqual({ people: 4, most: 1 });
    expect(figures.limits.carries.standing).toEqual([
      'Tested for people to one side by A. Tester on 4 May 2026: Calm water',
    ]);
  });

  it('are not helped by low stores, which need not be aboard', () => {
    const yard = screen('heel: 7 deg');
    const at = [460, 600].map(
      (load) => crewOf({ hull: [cockpit(0.6), rated(4, load)], yard }).rated,
    );
    expect(at[1]).toEqual(at[0]);
  });
});

describe('the edge of the cockpit', () => {
  it('bears what brings the corner of the box to the water, as a hand works it out', () => {
    const amidships =
      'cockpit: { from: 30 % length, to: 70 % length, halfBreadth: 0.79 m, seatHeight: 0.3 m }';
    const hull = [[/cockpit: .*/, amidships], rated(9, 2300)] as const;
    const changes = { hull, order: weighted('{ x: 2 m, z: 0.2 m }', '700 kg') };
    const { edge, cockpit: place } = crewOf(changes);
    expect(edge.wanted).toBeCloseTo(0.6 * 9 * 80, 9);
    const bare = figuresOf(changes).mass.loadings.rated.masses.filter(
      ({ kind }) => kind === 'boat' || kind === 'fuel',
    );
    const light = bare.reduce((sum, one) => sum + one.mass, 0);
    const height = bare.reduce((sum, one) => sum + one.mass * one.at.z, 0) / light;
    // On its corner the box displaces a prism, a triangle of p along the bottom and q = 0.6 m up the side; its trim is left out.
    const lever = (added: number): number => {
      const mass = light + added;
      const [p, q] = [(2 * mass) / (1025 * 4) / 0.6, 0.6];
      const y = (added * place.halfBreadth) / mass - (0.8 - p / 3);
      const z = (light * height + added * place.height) / mass - q / 3;
      return y * p + z * q;
    };
    let [low, high] = [1, 2000];
    while (high - low > 1e-6) {
      const middle = (low + high) / 2;
      if (lever(middle) < 0) low = middle;
      else high = middle;
    }
    const borne = edge.bears.outcome === 'met' ? edge.bears.growth : Number.NaN;
    expect(Math.abs(borne / low - 1)).toBeLessThan(0.04);
  });

  it('EDGE_BEARS_LITTLE: less than 0.6 of the rated people, and not just as much', () => {
    const order = ORDER.replace('people: 3', 'people: 1');
    const bears = (people: number) =>
      crewOf({ order, hull: [cockpit(0.75, 0.7), rated(people, 900)] }).edge;
    const { bears: margin } = bears(2);
    const borne = margin.outcome === 'met' ? margin.growth : Number.NaN;
    const most = Math.floor(borne / (0.6 * 80));
    const code = (people: number) =>
      codes({ order, hull: [cockpit(0.75, 0.7), rated(people, 900)] });
    expect(most).toBeGreaterThan(1);
    expect(code(most)).not.toContain('EDGE_BEARS_LITTLE');
    expect(code(most + 1)).toContain('EDGE_BEARS_LITTLE');
  });

  it('ONE_AT_EDGE: one person alone brings water aboard, low and further in not', () => {
    const scupper = opening('{ name: scupper, at: { x: 2 m, y: 0.8 m, z: 0.06 m } }');
    expect(codes({ hull: [cockpit(0.8), scupper] })).toContain('ONE_AT_EDGE');
    expect(codes({ hull: [cockpit(0.21), scupper] })).not.toContain('ONE_AT_EDGE');
  });
});

describe('the boat at the shop’s rating', () => {
  it('RATING_NOT_AFLOAT: so many people and so much load sink it, seated', () => {
    const sinks = figuresOf({ hull: [rated(20, 4000)] });
    expect(received(sinks, 'RATING_NOT_AFLOAT')).toMatch(/^20 people, seated: it is too heavy/);
    expect(codes({ hull: [rated(6, 900)] })).not.toContain('RATING_NOT_AFLOAT');
  });

  it('CROWD_AT_END: everyone aft puts the transom under, in a longer cockpit forward the bow', () => {
    const far = (from: string, to: string): readonly [RegExp, string] => [
      /cockpit: .*/,
      `cockpit: { from: ${from}, to: ${to}, halfBreadth: 1.2 m, seatHeight: 0.3 m }`,
    ];
    const heavy = { order: ORDER.replace('people: 3', 'people: 4') };
    const aft = figuresOf({ ...heavy, hull: [far('-1.5 m', '2 m')] });
    expect(received(aft, 'CROWD_AT_END')).toMatch(/^4 people aft: it (takes in|goes down)/);
    const fore = figuresOf({ ...heavy, hull: [far('1 m', '5.5 m')] });
    expect(received(fore, 'CROWD_AT_END')).toMatch(/^4 people forward: it (takes in|goes down)/);
    expect(codes({ ...heavy, hull: [far('1 m', '3 m')] })).not.toContain('CROWD_AT_END');
  });

  it('names what stands in for facts that the hull file does not give', () => {
    const bare: readonly [RegExp, string] = [
      /openings: [\s\S]*?(tillerSeat.*\n)cockpit: .*\n/,
      '$1',
    ];
    const figures = figuresOf({ hull: [bare, rated(20, 4000)] });
    expect(received(figures, 'RESTS_ON_DEFAULTS')).toMatch(
      /^water comes in at the transom .*; a cockpit/,
    );
    expect(received(figures, 'RATING_NOT_AFLOAT')).toContain(
      'assumed: water comes in at the transom and the sheer alone, seats along the middle, at the height of the sheer, a cockpit as broad as the sheer',
    );
    const { cockpit: place } = present(figures.float.afloat).crew;
    expect(place).toEqual({ from: 0, to: 4, halfBreadth: 0.8, height: 0.6, isGiven: false });
  });
});

describe('what the boat may carry', () => {
  const carries = (changes: Changes) => figuresOf(changes).limits.carries;

  it('is the shop’s rating, less where options and full tanks leave room for fewer', () => {
    expect(carries({}).people).toMatchObject({ people: 4, words: 'limited by the shop’s rating' });
    // 30 kg of seats and 14.8 kg of fuel leave 405.2 kg of 450 kg for people of 90 kg with their gear.
    const full = carries({ hull: [rated(5)] }).people;
    expect(full.people).toBe(4);
    expect(full.words).toBe(
      'limited by the rated load, with what is fitted and full tanks (by the shop’s rating: 5)',
    );
  });

  it('is less where the boat as it then lies has too little freeboard', () => {
    const least = (metres: number) =>
      figuresOf({
        hull: [rated(9, 1200), [/leastFreeboard: 0.05 m/, `leastFreeboard: ${metres} m`]],
      }).limits;
    const { asLoaded, carries: most } = least(0.35);
    const people =
      'people' in asLoaded && typeof asLoaded.people === 'number' ? asLoaded.people : 9;
    expect(people).toBeLessThan(9);
    expect(most.people.people).toBe(people);
    expect(most.people.words).toMatch(/^limited by freeboard as loaded/);
    expect(most.load.by).toBe('freeboard as loaded');
    expect(least(0.06).carries.load).toEqual({ mass: 1200, by: 'the shop’s rating' });
  });

  it('is what was tried on the water instead, where it was', () => {
    const tested = `tested: { people: { result: 2, how: Seated, by: A. Tester, date: 2026-05-04 } }`;
    const { people, standing } = carries({ hull: [more(tested)] });
    expect(people.words).toBe(
      'limited by test by A. Tester on 4 May 2026 (by the shop’s rating: 4)',
    );
    expect(standing).toEqual(['Tested for people by A. Tester on 4 May 2026: Seated']);
  });

  it('is the shop’s own word where its lines are no hull, and said to be', () => {
    const crossed: readonly [RegExp, string] = [
      / {2}- \{ x: 2, .*\n/,
      '  - { x: 2, points: [[0, 0], [0.8, 0], [0.2, 0.3], [0.8, -0.3]] }\n',
    ];
    expect(carries({ hull: [crossed] }).standing).toEqual([
      'For people and load it is the shop’s own rating, not computed here',
    ]);
  });
});

it('ACCEPTED_NOT_FOUND: what the order accepts and nothing finds is told, what is found is not', () => {
  const accepts = (code: string) =>
    codes({
      order: `${ORDER}accepted: [{ finding: ${code}, found: It., by: A. Tester, date: 2026-05-04, reason: A trial. }]\n`,
      hull: [[/seats:\n(?: {2}- .*\n)+/, '']],
    });
  expect(accepts('FOAM_SHORT')).toContain('ACCEPTED_NOT_FOUND');
  expect(accepts('RESTS_ON_DEFAULTS')).not.toContain('ACCEPTED_NOT_FOUND');
});
