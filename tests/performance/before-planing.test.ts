import { describe, expect, it } from 'vitest';
import {
  climbOf,
  fastestOn,
  joinedCurve,
  planingStates,
  runAt,
  SEA_WATER,
  FRESH_WATER,
} from '../../src/performance/index.ts';
import {
  outsidePrePlaning,
  prePlaningDrag,
  speedAtFroude,
  PRE_PLANING,
} from '../../src/performance/pre-planing.ts';
import { cubicMetres, kilograms, metres, radians, watts } from '../../src/units/index.ts';
import { hullOf } from './generic-boats.ts';

const DEGREE = Math.PI / 180;
/** The constructed case of the check values: worked apart from Orlop. */
const HULL = {
  length: metres(4),
  beam: metres(1.45),
  draught: metres(0.19),
  volume: cubicMetres(0.45),
  entrance: radians(22 * DEGREE),
  transomShare: 0.95,
};
const overWeight = (hull: typeof HULL, froude: number, water = FRESH_WATER): number => {
  const drag = prePlaningDrag(hull, froude, water);
  return typeof drag === 'number' ? drag / (hull.volume * water.density * 9.80665) : Number.NaN;
};

describe('drag before planing', () => {
  // Mercier and Savitsky 1973, coefficients second hand: R/W at 100,000 lb by FnV, worked apart from Orlop.
  it.each([
    [1, 0.0255],
    [1.1, 0.0432],
    [1.2, 0.0537],
    [1.3, 0.0648],
    [1.4, 0.0743],
    [1.5, 0.07],
    [1.6, 0.0691],
    [1.7, 0.076],
    [1.8, 0.0795],
    [1.9, 0.0809],
    [2, 0.0804],
  ])('of the standard displacement is the table’s sum at FnV %f', (froude, expected) => {
    const scale = Math.cbrt(44.245 / HULL.volume);
    const standard = {
      ...HULL,
      length: metres(HULL.length * scale),
      beam: metres(HULL.beam * scale),
      draught: metres(HULL.draught * scale),
      volume: cubicMetres(44.245),
    };
    // There the friction is the standard's own: what is left is the allowance of 0.0004 on the wetted surface.
    const slender = HULL.length / Math.cbrt(HULL.volume);
    const flat = HULL.beam / HULL.draught;
    const surface = 2.262 * Math.sqrt(slender) * (1 + 0.046 * flat + 0.00287 * flat ** 2);
    const allowance = (0.0004 * surface * froude ** 2) / 2;
    expect(overWeight(standard, froude, SEA_WATER) - allowance).toBeCloseTo(expected, 4);
  });

  it('of the boat itself has the friction of its size', () => {
    // Worked apart from Orlop, fresh water at 15 °C, with other figures for its viscosity: 0.0308 and 0.0991.
    expect(Math.abs(overWeight(HULL, 1) - 0.0308)).toBeLessThan(0.0002);
    expect(Math.abs(overWeight(HULL, 2) - 0.0991)).toBeLessThan(0.0004);
  });

  it('is not computed outside FnV 1.0 to 2.0, and between its rows lies between them', () => {
    expect(overWeight(HULL, 0.99)).toBeNaN();
    expect(overWeight(HULL, 2.01)).toBeNaN();
    expect(overWeight(HULL, 1.05)).toBeGreaterThan(overWeight(HULL, 1));
    expect(overWeight(HULL, 1.05)).toBeLessThan(overWeight(HULL, 1.1));
  });

  it('names what of the hull is unlike the hulls of the data', () => {
    expect(outsidePrePlaning(HULL)).toEqual({ terms: [], besides: [] });
    const blunt = { ...HULL, entrance: radians(29 * DEGREE), beam: metres(1.6) };
    expect(outsidePrePlaning(blunt)).toEqual({
      terms: ['half angle of entrance'],
      besides: ['length over beam'],
    });
  });
});

/** The row of the regression at a speed. */
const froudeAt = (speed: number): number =>
  PRE_PLANING.find((one) => speedAtFroude(one, HULL.volume) === speed) ?? Number.NaN;

describe('the curve from before planing to full speed', () => {
  const of = (forward: number) => ({
    hull: hullOf({
      mass: kilograms(450),
      beam: metres(1.4),
      length: metres(4),
      centre: { x: metres(forward), z: metres(0.45) },
    }),
    water: FRESH_WATER,
  });
  const running = of(1.2);
  const curve = joinedCurve(running, HULL);
  if ('notComputed' in curve) throw new Error(curve.notComputed);
  const { points } = curve;

  it('rises in speed, and goes evenly from the one method to the other', () => {
    const speeds = points.map(({ speed }) => speed);
    expect(speeds).toEqual(speeds.toSorted((a, b) => a - b));
    expect([...new Set(points.map(({ by }) => by))]).toEqual(['pre-planing', 'between', 'planing']);
    const [from, to] = [planingStates(running)[0]?.speed ?? 0, speedAtFroude(2, HULL.volume)];
    for (const { speed, drag } of points.filter(({ by }) => by === 'between')) {
      const [slow, state] = [
        prePlaningDrag(HULL, froudeAt(speed), FRESH_WATER),
        runAt(running, speed),
      ];
      const planing = 'notComputed' in state ? Number.NaN : state.drag;
      const share = (speed - from) / (to - from);
      expect(drag.likely).toBeCloseTo(Number(slow) * (1 - share) + planing * share, 6);
      expect([drag.low, drag.high].toSorted((a, b) => a - b)).toEqual(
        [Number(slow), planing].toSorted((a, b) => a - b),
      );
    }
  });

  it('gives the speed of a power where the drag takes just that, as a band', () => {
    const middle = points[4];
    if (!middle) throw new Error('no point');
    const power = watts((middle.drag.likely * middle.speed) / 0.5);
    const found = fastestOn({ points: points.slice(0, 7), outside: [] }, power, {
      low: 0.45,
      likely: 0.5,
      high: 0.55,
    });
    if ('notComputed' in found) throw new Error(found.notComputed);
    expect(found.speed.likely).toBeGreaterThanOrEqual(middle.speed);
    expect(found.speed.low).toBeLessThan(found.speed.likely);
    expect(found.speed.high).toBeGreaterThan(found.speed.likely);
    const even = { low: 0.5, likely: 0.5, high: 0.5 };
    expect(fastestOn(curve, watts(1), even)).toHaveProperty('notComputed');
    expect(fastestOn(curve, watts(1e7), even)).toHaveProperty('notComputed');
  });

  it('has a hump that a small outboard does not get over and a large one does', () => {
    const shareOf = (power: number): number =>
      climbOf(curve, watts(power), 0.5)?.share.likely ?? Number.NaN;
    const top = points.find(({ speed }) => speed === climbOf(curve, watts(1), 0.5)?.speed);
    expect(top?.by).not.toBe('pre-planing');
    const takes = (top?.drag.likely ?? 0) * (top?.speed ?? 0);
    expect(shareOf(takes / 0.5)).toBeCloseTo(1, 9);
    expect(shareOf(0.5 * takes)).toBeGreaterThan(1);
    expect(shareOf(4 * takes)).toBeLessThan(1);
    const rises = joinedCurve(of(1.9), HULL);
    expect('points' in rises && climbOf(rises, watts(1), 0.5)).toBeUndefined();
  });
});
