import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centreOf, weighBoat } from '../../src/mass/index.ts';
import { kilograms } from '../../src/units/index.ts';
import { byNumber, catalogue, figuresOf, footprintOf } from '../demonstration/workspace.ts';
import { ABOARD, at, BOAT } from './boat.ts';

describe('weighing a boat', () => {
  const weigh = (contingency = 0.05) => weighBoat({ items: BOAT, contingency, aboard: ABOARD });

  it('counts in each condition what belongs to it', () => {
    const weighed = weigh();
    expect(weighed.bareHull.mass).toBe(80);
    expect(weighed.completed.mass).toBeCloseTo(147, 9);
    expect(weighed.ready.mass).toBeCloseTo(147 + 60 + 18, 9);
    expect(weighed.loadings['stowed for the road'].mass).toBeCloseTo(225 + 20, 9);
    expect(weighed.onTrailer).toBeCloseTo(245 + 200, 9);
  });

  it('loads people, gear, fuel and options, and not the outboard', () => {
    const weighed = weigh();
    expect(weighed.load).toBeCloseTo(2 * 90 + 18 + 20, 9);
  });

  it('moves the centre aft when the outboard is hung on', () => {
    const weighed = weigh();
    expect(weighed.ready.centre.x).toBeLessThan(weighed.completed.centre.x);
  });

  it('shares the whole out over groups that add up to it, contingency and fuel named', () => {
    const weighed = weigh();
    expect(weighed.groups.reduce((total, { mass }) => total + mass, 0)).toBeCloseTo(
      weighed.ready.mass,
      9,
    );
    expect(weighed.groups.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 12);
    expect(weighed.groups.map(({ group }) => group)).toContain('Contingency');
  });

  it('names each group with its mass, share and centre, and no contingency where none is counted', () => {
    const { groups } = weigh();
    const shares = groups.map(({ group, mass, share }) => [group, mass, share * 225]);
    expect(shares).toEqual(
      [
        ['shell', 80],
        ['structure', 40],
        ['option', 20],
        ['outboard', 60],
        ['Contingency', 7],
        ['Fuel', 18],
      ].map(([group, mass]) => [
        group,
        expect.closeTo(Number(mass), 9),
        expect.closeTo(Number(mass), 9),
      ]),
    );
    expect(groups.at(-1)?.centre).toEqual(ABOARD.fluids[0]?.at);
    expect(weigh(0).groups.map(({ group }) => group)).not.toContain('Contingency');
    expect(weigh(0).contingency).toBe(0);
  });

  it('weighs the rigging with the outboard, by names of their own', () => {
    const rigging = {
      group: 'outboard',
      kind: 'rigging',
      mass: kilograms(8),
      at: at(1, 0, 0.5),
    } as const;
    const { ready, loadings, completed } = weighBoat({
      items: [...BOAT, rigging],
      contingency: 0,
      aboard: ABOARD,
    });
    expect([completed.mass, ready.mass]).toEqual([140, 140 + 68 + 18]);
    const [, outboard, beside] = loadings['with engine'].masses;
    expect(outboard).toEqual({
      name: 'Outboard',
      kind: 'outboard',
      mass: 60,
      at: at(-0.25, 0, 0.6),
    });
    expect(beside).toEqual({ name: 'Rigging', kind: 'rigging', mass: 8, at: at(1, 0, 0.5) });
  });

  it('has room at the rating for as many people as what is fitted and full tanks leave, at most the rated', () => {
    const rated = (load: number) =>
      weighBoat({
        items: BOAT,
        contingency: 0,
        aboard: { ...ABOARD, rating: { people: 3, load: kilograms(load) } },
      }).ratedPeople;
    // 20 kg of option and 18 kg of fuel; 90 kg a person with gear.
    expect([38, 127.9, 128, 218, 308, 900].map(rated)).toEqual([0, 0, 1, 2, 3, 3]);
    expect(rated(10)).toBe(0);
  });
});

describe('the centre of any masses', () => {
  const place = fc.record({
    x: fc.double({ min: -5, max: 5, noNaN: true }),
    y: fc.double({ min: -2, max: 2, noNaN: true }),
    z: fc.double({ min: 0, max: 3, noNaN: true }),
  });
  const masses = fc.array(
    fc.record({ mass: fc.double({ min: 0.1, max: 900, noNaN: true }), place }),
    { minLength: 1, maxLength: 20 },
  );
  const points = (list: readonly { mass: number; place: { x: number; y: number; z: number } }[]) =>
    list.map(({ mass, place: { x, y, z } }) => ({ mass: kilograms(mass), at: at(x, y, z) }));

  it('lies within the span of the masses', () => {
    fc.assert(
      fc.property(masses, (list) => {
        const { centre } = centreOf(points(list));
        const along = list.map((one) => one.place.x);
        expect(centre.x).toBeGreaterThanOrEqual(Math.min(...along) - 1e-9);
        expect(centre.x).toBeLessThanOrEqual(Math.max(...along) + 1e-9);
      }),
    );
  });

  it('mirrors when the masses do', () => {
    fc.assert(
      fc.property(masses, (list) => {
        const mirrored = list.map((one) => ({ ...one, place: { ...one.place, y: -one.place.y } }));
        expect(centreOf(points(mirrored)).centre.y).toBeCloseTo(
          -Number(centreOf(points(list)).centre.y),
          9,
        );
      }),
    );
  });

  it('is the origin when there is no mass at all', () => {
    expect(centreOf([])).toEqual({ mass: 0, centre: { x: 0, y: 0, z: 0 } });
  });
});

describe('the demonstration’s boats', () => {
  it.each([...catalogue.hulls.keys()])(
    'weigh bare, with floor and gunwales, 9 to 19 kg a square metre of length times beam (common practice, no source): %s',
    (hull) => {
      const { build, mass } = figuresOf(hull);
      const each = mass.completed.mass / footprintOf(build.hull);
      expect(each).toBeGreaterThan(9);
      expect(each).toBeLessThan(19);
    },
  );

  it.each(byNumber)(
    'have their centre aft of the middle, near the centreline and below the sheer: %s',
    (_, { build, mass }) => {
      const { length, beam, depth } = build.hull.dimensions;
      const { x, y, z } = mass.ready.centre;
      expect(x / length).toBeGreaterThan(0.2);
      expect(x / length).toBeLessThan(0.45);
      expect(Math.abs(y / beam)).toBeLessThan(0.04);
      expect(z / depth).toBeGreaterThan(0.3);
      expect(z / depth).toBeLessThan(0.8);
    },
  );
});
