import { describe, expect, it } from 'vitest';
import {
  FOUR_STROKE,
  FRESH_WATER,
  fuelFlow,
  fuelRange,
  type Holding,
  holdingForce,
  holdingTime,
  pitchBand,
  pitchFor,
  THIRDS_RESERVE,
  windageFrom,
} from '../../src/performance/index.ts';
import {
  cubicMetres,
  metres,
  metresPerSecond,
  newtons,
  squareMetres,
  watts,
} from '../../src/units/index.ts';
import { catalogueHulls } from './catalogue-hulls.ts';

const LITRE_AN_HOUR = 0.001 / 3600;

describe('fuel', () => {
  it('goes with the part-load curve of the engine', () => {
    const half = Number(fuelFlow(watts(85_000), 0.5, FOUR_STROKE));
    expect(half / LITRE_AN_HOUR).toBeCloseTo(18.378 * 1.02, 2);
  });

  it('is computed just inside the part-load figures and not just outside', () => {
    expect(typeof fuelFlow(watts(85_000), 0.05, FOUR_STROKE)).toBe('number');
    expect(fuelFlow(watts(85_000), 0.049, FOUR_STROKE)).toHaveProperty('notComputed');
    expect(fuelFlow(watts(85_000), 1, FOUR_STROKE)).toBeGreaterThan(0);
    expect(fuelFlow(watts(85_000), 1.001, FOUR_STROKE)).toHaveProperty('notComputed');
  });

  it('takes her two thirds of the way when a third is kept back', () => {
    const speed = metresPerSecond(10);
    const all = Number(fuelRange(cubicMetres(0.1), 0, speed, 10 * LITRE_AN_HOUR));
    expect(all).toBeCloseTo(360_000, 6);
    expect(
      Number(fuelRange(cubicMetres(0.1), THIRDS_RESERVE, speed, 10 * LITRE_AN_HOUR)),
    ).toBeCloseTo(240_000, 6);
    expect(fuelRange(cubicMetres(0.1), 0, speed, 0)).toHaveProperty('notComputed');
    expect(fuelRange(cubicMetres(0.1), 1.01, speed, 1)).toHaveProperty('notComputed');
    expect(fuelFlow(watts(Number.NaN), 1, FOUR_STROKE)).toHaveProperty('notComputed');
  });
});

describe('a propeller', () => {
  const gearing = { ratio: 2, slip: 0.12 };
  const speed = metresPerSecond(14);

  it('slips through the water by the share that its pitch was chosen with', () => {
    const pitch = Number(pitchFor(speed, 5500, gearing));
    expect(speed / ((5500 / 60 / gearing.ratio) * pitch)).toBeCloseTo(1 - gearing.slip, 12);
  });

  it('is coarser for the lower end of the engine’s band', () => {
    const band = pitchBand(speed, [5000, 6000], gearing);
    if ('notComputed' in band) throw new Error(band.notComputed);
    expect(band.finest).toBeLessThan(band.middle);
    expect(band.middle).toBeLessThan(band.coarsest);
  });

  it('is computed for a slip just below 1 and not for 1', () => {
    expect(typeof pitchFor(speed, 5500, { ratio: 2, slip: 0.99 })).toBe('number');
    expect(pitchFor(speed, 5500, { ratio: 2, slip: 1 })).toHaveProperty('notComputed');
    expect(pitchFor(speed, 0, gearing)).toHaveProperty('notComputed');
    expect(pitchBand(speed, [5000, 6000], { ratio: 0, slip: 0 })).toHaveProperty('notComputed');
  });
});

describe('holding with a bow motor', () => {
  const holding = (wind: number, current: number, sheer?: number): Holding => ({
    windage: { front: squareMetres(1.2), side: squareMetres(3) },
    immersed: { surface: squareMetres(5), transom: squareMetres(0.12) },
    length: 4,
    water: FRESH_WATER,
    wind: metresPerSecond(wind),
    current: metresPerSecond(current),
    ...(sheer !== undefined && { sheer }),
  });

  it('takes four times the force for twice the wind', () => {
    const [one, two] = [holdingForce(holding(4, 0)), holdingForce(holding(8, 0))];
    if ('notComputed' in one || 'notComputed' in two) throw new Error('not computed');
    expect(two.wind / one.wind).toBeCloseTo(4, 9);
    expect(one.current).toBe(0);
  });

  it('is ½ρ Cd A V² head to wind, half as much again for gusts', () => {
    const force = holdingForce(holding(10, 0, 0));
    if ('notComputed' in force) throw new Error(force.notComputed);
    expect(force.wind).toBeCloseTo(0.5 * 1.225 * 0.9 * 1.2 * 100, 9);
    expect(force.needed).toBeCloseTo(1.5 * force.wind, 9);
  });

  it('rubs on the wetted surface and drags at the transom in a current, worked by hand', () => {
    // Re 3.5088e6, Cf 0.0036305: 500 x (5 x Cf x 1.3 + 0.12 x 0.6).
    const force = holdingForce(holding(0, 1));
    if ('notComputed' in force) throw new Error(force.notComputed);
    expect(force.current).toBeCloseTo(47.8, 1);
    expect(force.needed).toBe(force.current);
  });

  it('is computed for a current of 1.5 m/s and not for more', () => {
    expect(holdingForce(holding(5, 1.5))).toHaveProperty('needed');
    expect(holdingForce(holding(5, 1.51))).toHaveProperty('notComputed');
    expect(holdingForce(holding(Number.NaN, 0))).toHaveProperty('notComputed');
  });

  it('sees a box as its height above the water times length and breadth', () => {
    const box = [0, 2, 4].map((x) => ({
      x: metres(x),
      points: [
        [metres(0), metres(0)],
        [metres(1), metres(0)],
        [metres(1), metres(1)],
      ] as const,
    }));
    const { front, side } = windageFrom(box, metres(0.3));
    expect(front).toBeCloseTo(2 * 0.7, 9);
    expect(side).toBeCloseTo(4 * 0.7, 9);
    expect(windageFrom(box, metres(1))).toEqual({ front: 0, side: 0 });
    expect(windageFrom([], metres(0))).toEqual({ front: 0, side: 0 });
  });

  it('sees each hull of the catalogue from ahead within her beam, from the side within her length', () => {
    for (const { lines, dimensions } of catalogueHulls()) {
      const { front, side } = windageFrom(lines, metres(0.15));
      expect(front).toBeLessThan(dimensions.beam * dimensions.depth * 1.3);
      expect(front).toBeGreaterThan(dimensions.beam * (dimensions.depth - 0.15) * 0.8);
      expect(side).toBeLessThan(dimensions.length * dimensions.depth);
    }
  });

  const motor = { thrust: newtons(250), current: 50 };

  it('draws the full current at full thrust, and an eighth at a quarter', () => {
    expect(holdingTime(newtons(250), motor, 80)).toMatchObject({
      share: 1,
      current: 50,
      hours: 1.6,
    });
    expect(holdingTime(newtons(62.5), motor, 80)).toMatchObject({ current: 6.25, hours: 12.8 });
  });

  it('is not computed when the motor is too weak, or nothing is to be held', () => {
    expect(holdingTime(newtons(250.1), motor, 80)).toHaveProperty('notComputed');
    expect(holdingTime(newtons(0), motor, 80)).toHaveProperty('notComputed');
    expect(holdingTime(newtons(50), { ...motor, current: 0 }, 80)).toHaveProperty('notComputed');
  });
});
