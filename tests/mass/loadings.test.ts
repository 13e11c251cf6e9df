import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Aboard,
  centreOf,
  type Loading,
  type LoadingName,
  type Loadings,
  massOf,
  toSide,
  weighBoat,
} from '../../src/mass/index.ts';
import { kilograms, kilogramsPerCubicMetre, metres } from '../../src/units/index.ts';
import { byNumber } from '../demonstration/workspace.ts';
import { ABOARD, at, BOAT, item } from './boat.ts';

const surface = {
  length: metres(0.5),
  breadth: metres(0.4),
  density: kilogramsPerCubicMetre(740),
  compartments: 1,
};
/** With everything that an order may have. */
const LADEN: Aboard = {
  ...ABOARD,
  fluids: [
    {
      name: 'Fuel',
      kind: 'fuel',
      mass: kilograms(18),
      capacity: kilograms(30),
      at: at(0.8, 0, 0.2),
      surface,
      isWide: true,
    },
    {
      name: 'Bait tank',
      kind: 'live-well',
      mass: kilograms(40),
      capacity: kilograms(40),
      at: at(0.5, 0, 0.3),
      surface,
    },
  ],
  growth: { share: 0.05, rise: metres(0.02) },
  ballast: {
    water: { name: 'Ballast water', kind: 'ballast', mass: kilograms(90), at: at(1, 0, 0.1) },
  },
  custom: {
    masses: [{ name: 'Crates', kind: 'other', mass: kilograms(120), at: at(2.5, 0, 0.4) }],
    fluidShare: 1,
    ballastFlooded: true,
  },
};

const loadingsOf = (aboard: Aboard, items = BOAT): Loadings =>
  weighBoat({ items, contingency: 0.05, aboard }).loadings;
const massIn = (name: LoadingName, aboard = LADEN): number =>
  loadingsOf(aboard)[name]?.mass ?? Number.NaN;
const peopleIn = ({ masses }: Loading) => masses.filter(({ kind }) => kind === 'person');

const TABLE = [
  ['light', 147],
  ['with engine', 147 + 60],
  ['ready', 147 + 60 + 18],
  ['one aboard', 225 + 90],
  ['as ordered', 225 + 180],
  ['one aboard with ballast', 225 + 90 + 90],
  ['as ordered with ballast', 225 + 180 + 90],
  ['tanks full', 225 + 180 + 40 + 90],
  ['stowed for the road', 225 + 20],
  ['performance test', 207 + 0.5 * 70 + 80],
  ['ballast flooded at rest', 207 + 0.5 * 70 + 80],
  ['ballast drained', 207 + 0.5 * 70 + 80],
  ['fully loaded', 207 + 0.95 * 70 + 180],
  ['people to one side', 207 + 0.95 * 70 + 180],
  ['people aft', 207 + 0.95 * 70 + 180],
  ['grown', 207 + 0.95 * 70 + 180 + 0.05 * 147],
  ['custom', 207 + 70 + 120],
  ['people forward', 207 + 0.95 * 70 + 180],
  // 400 kg of load: 20 of options, 30 of fuel, three people with 10 kg each, 80 of stores. The bait tank is no load.
  ['rated', 207 + 400 - 20 + 40],
  ['rated half tanks', 207 + 400 - 20 + 20],
  ['rated to one side', 207 + 400 - 20 + 40],
  ['rated aft', 207 + 400 - 20 + 40],
  ['rated forward', 207 + 400 - 20 + 40],
] as const;

describe('the loadings of a boat', () => {
  it.each(TABLE)('%s: %d kg', (name, mass) => {
    expect(massIn(name)).toBeCloseTo(mass, 9);
  });

  it('are all in the table above', () => {
    expect(Object.keys(loadingsOf(LADEN)).toSorted()).toEqual(
      TABLE.map(([name]) => name).toSorted(),
    );
  });

  it('leave out what the order has not', () => {
    const names = Object.keys(loadingsOf(ABOARD));
    expect(names.filter((name) => /ballast|grown|custom|half/.test(name))).toEqual([]);
    expect(names.length).toBe(16);
  });

  it('seat one alone at the helm, and those beyond the seats along the centreline', () => {
    const { 'one aboard': alone, 'as ordered': ordered } = loadingsOf(ABOARD);
    expect(peopleIn(alone).map((one) => one.at)).toEqual(ABOARD.people.seats);
    expect(peopleIn(ordered).map((one) => one.at)).toEqual([
      ...ABOARD.people.seats,
      at(4 * (0.3 + 0.15), 0, 0.6),
    ]);
  });

  it('have a moving surface in a tank that is neither full nor empty, and in no other', () => {
    const surfaces = (name: LoadingName, aboard = LADEN) => {
      const { masses = [] } = loadingsOf(aboard)[name] ?? {};
      return masses.filter((one) => one.surface).map(({ kind }) => kind);
    };
    expect(surfaces('fully loaded')).toEqual(['fuel', 'live-well']);
    // Ordered, the fuel does not fill its tank.
    expect(surfaces('tanks full')).toEqual(['fuel']);
    expect(surfaces('rated')).toEqual([]);
    expect(surfaces('rated half tanks')).toEqual(['fuel', 'live-well']);
    expect(surfaces('custom')).toEqual([]);
    expect(surfaces('performance test', { ...LADEN, trial: { people: 1, fluidShare: 0 } })).toEqual(
      [],
    );
  });

  it('open the ballast tank only at rest, and in a condition that asks for it', () => {
    const open = Object.entries(loadingsOf(LADEN)).filter(([, { flooded }]) => flooded);
    expect(open.map(([name]) => name)).toEqual(['ballast flooded at rest', 'custom']);
  });
});

describe('any loading', () => {
  const mass = fc.double({ min: 0, max: 300, noNaN: true }).map(kilograms);
  const place = fc
    .tuple(
      fc.double({ min: -1, max: 6, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 2, noNaN: true }),
    )
    .map(([x, y, z]) => at(x, y, z));
  const aboard = fc
    .record({
      count: fc.integer({ min: 1, max: 12 }),
      seats: fc.array(place, { maxLength: 6 }),
      each: mass,
      fuel: mass,
      gear: mass,
      reach: fc.double({ min: 0.3, max: 1.2, noNaN: true }),
    })
    .map(({ count, seats, each, fuel, gear, reach }): Aboard => ({
      ...LADEN,
      fluids: [{ name: 'Fuel', kind: 'fuel', mass: fuel, capacity: fuel, at: at(0.8, 0, 0.2) }],
      people: { ...LADEN.people, count, seats, mass: each },
      gear: { mass: gear, at: at(1.8, 0, 0.2) },
      cockpit: { ...LADEN.cockpit, halfBreadth: metres(reach) },
    }));

  it('weighs what its placed masses add up to, at the centre of them', () => {
    fc.assert(
      fc.property(aboard, (one) => {
        for (const { mass: whole, centre, masses } of Object.values(loadingsOf(one))) {
          expect({ mass: whole, centre }).toEqual(centreOf(masses));
          expect(whole).toBeCloseTo(
            masses.reduce((sum, each) => sum + each.mass, 0),
            9,
          );
        }
      }),
    );
  });

  it('carries as ordered, with options, what the hull’s load rating is held against', () => {
    fc.assert(
      fc.property(aboard, (one) => {
        const { load, loadings } = weighBoat({ items: BOAT, contingency: 0.05, aboard: one });
        const { mass: whole, people } = loadings['as ordered'];
        const rigged = loadings['with engine'].mass;
        expect(people).toBe(one.people.count);
        expect(load).toBeCloseTo(whole - rigged + 20, 6);
      }),
    );
  });

  it('has its crowd on the side that the boat leans to, at the edge or further out, mirrored with the boat', () => {
    const leaning = (y: number) => [...BOAT, item('extra', 5000, at(2, y, 0.3))];
    const mirrored = (one: Aboard): Aboard => ({
      ...one,
      people: {
        ...one.people,
        seats: one.people.seats.map((seat) => ({ ...seat, y: metres(0 - seat.y) })),
      },
    });
    fc.assert(
      fc.property(aboard, (one) => {
        const sides = (with_: Aboard, y: number) =>
          peopleIn(loadingsOf(with_, leaning(y))['people to one side']).map((each) => each.at.y);
        const starboard = sides(one, 2);
        for (const y of starboard) expect(y).toBeGreaterThanOrEqual(one.cockpit.halfBreadth - 0.2);
        expect(sides(mirrored(one), -2)).toEqual(starboard.map((y) => 0 - y));
      }),
    );
  });

  it('sends those first who lean it most, so that it leans further with each', () => {
    fc.assert(
      fc.property(aboard, (one) => {
        const seated = loadingsOf(one, [...BOAT, item('extra', 5000, at(2, 2, 0.3))]).rated;
        const centres = Array.from(
          { length: seated.people + 1 },
          (_, count) => toSide(seated, one.cockpit, count).centre.y,
        );
        expect(centres.toSorted((a, b) => a - b)).toEqual(centres);
        const steps = centres.slice(1).map((y, index) => y - (centres[index] ?? 0));
        for (const [index, step] of steps.slice(1).entries()) {
          expect(step).toBeLessThanOrEqual((steps[index] ?? 0) + 1e-9);
        }
      }),
    );
  });
});

describe('the demonstration’s loadings', () => {
  it.each(byNumber)('have everyone that the order names: %s', (_, { build, mass }) => {
    const { people } = build.order.boat;
    expect(mass.loadings['as ordered'].people).toBe(people);
    expect(massOf(mass.loadings['fully loaded'], 'person')).toBeCloseTo(
      people * build.yard.personMass,
      9,
    );
    expect(massOf(mass.loadings['stowed for the road'], 'person')).toBe(0);
  });
});
