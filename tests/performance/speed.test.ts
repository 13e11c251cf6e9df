import { describe, expect, it } from 'vitest';
import {
  bottomFrom,
  type Computed,
  crouchConstant,
  crouchSpeed,
  type Driven,
  findHump,
  type PlaningHull,
  porpoisingTrim,
  SEA_WATER,
  type SpeedEstimate,
  speedFor,
} from '../../src/performance/index.ts';
import {
  kilograms,
  metres,
  metresPerSecond,
  radians,
  squareMetres,
  type Station,
  watts,
} from '../../src/units/index.ts';
import { catalogueHulls } from './catalogue-hulls.ts';
import { hullOf } from './generic-boats.ts';

const KNOT = 1852 / 3600;
const HORSEPOWER = 745.699872;
const DEGREE = Math.PI / 180;
const AIR = { name: 'boat and people', medium: 'air', area: squareMetres(0.9), coefficient: 0.7 };

function found<Value extends object>(result: Computed<Value>): Value {
  if ('notComputed' in result) throw new Error(result.notComputed);
  return result;
}
const driven = (hull: PlaningHull, horsepower: number): Driven => ({
  running: { hull, water: SEA_WATER, added: [{ ...AIR, medium: 'air' }] },
  power: watts(horsepower * HORSEPOWER),
});
const knots = (hull: PlaningHull, horsepower: number): SpeedEstimate['speed'] => {
  const { low, likely, high } = found(speedFor(driven(hull, horsepower))).speed;
  const inKnots = (speed: number) => metresPerSecond(speed / KNOT);
  return { low: inKnots(low), likely: inKnots(likely), high: inKnots(high) };
};

describe('the speed for a power', () => {
  it('is a band with the likely speed inside, and power x efficiency is what the drag takes', () => {
    const estimate = found(speedFor(driven(hullOf(), 90)));
    expect(estimate.speed.low).toBeLessThan(estimate.speed.likely);
    expect(estimate.speed.likely).toBeLessThan(estimate.speed.high);
    expect(estimate.state.effectivePower).toBeCloseTo(90 * HORSEPOWER * 0.52, 3);
    expect(estimate.caution).toContain('verify by trial');
  });

  it('rises with power and falls with mass', () => {
    expect(knots(hullOf(), 115).likely).toBeGreaterThan(knots(hullOf(), 90).likely);
    const heavy = hullOf({ mass: kilograms(1300) });
    expect(knots(heavy, 90).likely).toBeLessThan(knots(hullOf(), 90).likely);
  });

  it('is not computed for an engine that cannot lift her onto the plane', () => {
    expect(speedFor(driven(hullOf(), 10))).toHaveProperty('notComputed');
  });

  it('agrees with Crouch’s formula within a fifth for an ordinary boat, and says when it does not', () => {
    expect(found(speedFor(driven(hullOf(), 90))).agree).toBe(true);
    const raced = { ...driven(hullOf(), 90), kind: 'three-point hydroplane' } as const;
    expect(found(speedFor(raced)).agree).toBe(false);
  });
});

it('a light open boat of 5.2 m with 50 hp runs at 23 to 35 knots: common practice, no source', () => {
  const boat = hullOf({
    mass: kilograms(590),
    beam: metres(1.85),
    length: metres(5),
    deadrise: radians(16 * DEGREE),
    centre: { x: metres(1.45), z: metres(0.4) },
    thrust: { x: metres(-0.3), z: metres(-0.23), angle: radians(-4 * DEGREE) },
  });
  const { low, high } = knots(boat, 50);
  expect(low).toBeGreaterThan(23);
  expect(high).toBeLessThan(35);
});

describe('Crouch’s formula', () => {
  it('gives back the constant that it was given', () => {
    const speed = crouchSpeed(172, watts(30_000), kilograms(500));
    expect(crouchConstant(speed, watts(30_000), kilograms(500))).toBeCloseTo(172, 9);
  });

  it('gives no speed without power', () => {
    expect(crouchSpeed(172, watts(0), kilograms(500))).toBe(0);
    expect(crouchConstant(metresPerSecond(5), watts(0), kilograms(500))).toBe(0);
  });
});

describe('the hump', () => {
  it('finds the hump: the greatest trim of any planing speed', () => {
    const running = { hull: hullOf(), water: SEA_WATER };
    const hump = found(findHump(running));
    expect(hump.state.speed / KNOT).toBeLessThan(14);
    expect(hump.state.trim / DEGREE).toBeGreaterThan(6);
  });
});

describe('the porpoising limit', () => {
  const lift = (root: number) => 2 * root ** 2;
  const limit = (root: number, degrees: number): unknown =>
    porpoisingTrim(lift(root), radians(degrees * DEGREE));

  it('is what a hand works out from the regression', () => {
    // 20°, 0.2: 0.1197 x 9.8952 = 1.18446; 20^-0.2629 = 0.45494; exp(3.14264 x 0.45494) = 4.1773; 4.948°.
    expect(Number(limit(0.2, 20)) / DEGREE).toBeCloseTo(4.948, 2);
    // 10°, 0.25: 0.1197 x 5.8224 = 0.69694; 10^-0.2629 = 0.54588; exp(3.9283 x 0.54588) = 8.5378; 5.950°.
    expect(Number(limit(0.25, 10)) / DEGREE).toBeCloseTo(5.95, 2);
  });

  it('rises with loading everywhere, and with deadrise on a lightly loaded hull', () => {
    for (const degrees of [5, 10, 15, 20, 25]) {
      const trims = [0.13, 0.18, 0.24, 0.3, 0.36].map((root) => Number(limit(root, degrees)));
      expect(trims).toEqual(trims.toSorted((one, other) => one - other));
    }
    const light = [5, 10, 15, 20, 25].map((degrees) => Number(limit(0.15, degrees)));
    expect(light).toEqual(light.toSorted((one, other) => one - other));
  });

  it('is computed just inside the regression’s range and not just outside it', () => {
    const inside = (root: number, degrees: number) => typeof limit(root, degrees) === 'number';
    expect([inside(0.13, 10), inside(0.1299, 10)]).toEqual([true, false]);
    expect([inside(0.36, 10), inside(0.3601, 10)]).toEqual([true, false]);
    expect([inside(0.2, 5), inside(0.2, 4.99)]).toEqual([true, false]);
    expect([inside(0.2, 25), inside(0.2, 25.01)]).toEqual([true, false]);
  });

  it('gives a reason for what is no hull', () => {
    for (const bad of [Number.NaN, -1, Number.POSITIVE_INFINITY])
      expect(porpoisingTrim(bad, radians(0.2))).toHaveProperty('notComputed');
  });
});

describe('the bottom from a hull’s lines', () => {
  const prism = (x: number): Station => ({
    x: metres(x),
    points: [
      [metres(0), metres(0)],
      [metres(0.8), metres(0.8 * Math.tan(15 * DEGREE))],
      [metres(0.9), metres(0.7)],
    ],
  });

  it('is exact for a prism', () => {
    const bottom = found(bottomFrom([0, 1, 2, 3, 4].map(prism)));
    expect(bottom.beam).toBeCloseTo(1.6, 12);
    expect(bottom.deadrise / DEGREE).toBeCloseTo(15, 9);
    expect(bottom.length).toBe(4);
  });

  it('is not computed for lines without a chine', () => {
    const round = { ...prism(0), points: prism(0).points.slice(0, 2) };
    expect(bottomFrom([round, prism(1), prism(4)])).toHaveProperty('notComputed');
    expect(bottomFrom([])).toHaveProperty('notComputed');
  });

  it('lets every hull of the catalogue plane with her rated power, in a band of her kind', () => {
    const speeds = catalogueHulls().map((hull) => {
      const bottom = found(bottomFrom(hull.lines));
      const mass = kilograms(hull.shell.mass * 2.4 + hull.ratings.engineMass + 160);
      const boat: PlaningHull = {
        ...bottom,
        mass,
        centre: {
          x: metres(hull.dimensions.length * 0.34),
          z: metres(hull.dimensions.depth * 0.6),
        },
        thrust: { x: metres(-0.25), z: metres(-0.2), angle: radians(0) },
      };
      return found(
        speedFor({ running: { hull: boat, water: SEA_WATER }, power: hull.ratings.power }),
      );
    });
    expect(speeds).toHaveLength(3);
    for (const { speed } of speeds) {
      expect(speed.likely / KNOT).toBeGreaterThan(18);
      expect(speed.likely / KNOT).toBeLessThan(45);
    }
  });
});
