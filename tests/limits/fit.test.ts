import { describe, expect, it } from 'vitest';
import {
  downfloodingNeeded,
  type EngineFitInput,
  fitEngine,
  offsetHeelAllowed,
  type ScreenInput,
  screenCategories,
  sternFreeboard,
  trimByEngine,
} from '../../src/limits/index.ts';
import { kilograms, metres, radians, watts } from '../../src/units/index.ts';
import { catalogueHulls } from '../performance/catalogue-hulls.ts';

const DEGREE = Math.PI / 180;

describe('screening for a category', () => {
  const boat: ScreenInput = {
    length: metres(5.1),
    downflooding: metres(0.3),
    offsetHeel: radians(15 * DEGREE),
    offsetFreeboard: metres(0.1),
  };
  const passes = (change: Partial<ScreenInput>) =>
    screenCategories({ ...boat, ...change }).map((one) => one.passes);

  it('passes C and D at the height of C, D alone just below, neither just below that of D', () => {
    expect(passes({})).toEqual([true, true]);
    expect(passes({ downflooding: metres(0.299) })).toEqual([false, false]);
    expect(passes({ length: metres(4), downflooding: metres(0.299) })).toEqual([false, true]);
    expect(passes({ length: metres(3), downflooding: metres(0.2) })).toEqual([false, true]);
    expect(passes({ length: metres(3), downflooding: metres(0.199) })).toEqual([false, false]);
  });

  it('wants the heel within its limit: at it and just above', () => {
    const limit = offsetHeelAllowed(5.1);
    expect(passes({ offsetHeel: radians((limit - 1e-6) * DEGREE) })).toEqual([true, true]);
    expect(passes({ offsetHeel: radians((limit + 0.01) * DEGREE) })).toEqual([false, false]);
  });

  it('wants 75 mm of freeboard heeled: at it and just below', () => {
    expect(passes({ offsetFreeboard: metres(0.075) })).toEqual([true, true]);
    expect(passes({ offsetFreeboard: metres(0.0749) })).toEqual([false, false]);
  });

  it('keeps the height between its bounds, and the heel of small boats at that of 6 m', () => {
    expect(downfloodingNeeded(metres(3), 'D')).toBe(0.2);
    expect(downfloodingNeeded(metres(17), 'D')).toBe(0.4);
    expect(downfloodingNeeded(metres(17), 'C')).toBe(0.75);
    expect(offsetHeelAllowed(4)).toBe(offsetHeelAllowed(6));
    // ISO 12217-1:2015 table 4, second hand.
    expect(offsetHeelAllowed(6)).toBeCloseTo(22.7, 1);
    expect(offsetHeelAllowed(10)).toBeCloseTo(16.8, 1);
  });
});

describe('an engine on a hull', () => {
  const fit = (
    engine: Partial<EngineFitInput['engine']>,
    fitted = { wheel: true, remoteControl: true },
  ) =>
    fitEngine({
      engine: {
        power: watts(37_000),
        mass: kilograms(104),
        shaft: 'long',
        steering: 'remote',
        ...engine,
      },
      hull: { power: watts(37_000), engineMass: kilograms(104), transomHeight: metres(0.51) },
      fitted,
    });
  const held = (engine: Partial<EngineFitInput['engine']>) =>
    fit(engine).margins.map(({ holds }) => holds);

  it('may have the rated power and mass, and no more', () => {
    expect(held({})).toEqual([true, true, true]);
    expect(held({ power: watts(37_001) })).toEqual([false, true, true]);
    expect(held({ mass: kilograms(104.1) })).toEqual([true, false, true]);
  });

  it('wants the shaft that the transom is high for', () => {
    expect(held({ shaft: 'short' })[2]).toBe(false);
    expect(held({ shaft: 'extra-long' })[2]).toBe(false);
    const at = (height: number) =>
      fitEngine({
        engine: { power: watts(1), mass: kilograms(1), shaft: 'long', steering: 'tiller' },
        hull: { power: watts(1), engineMass: kilograms(1), transomHeight: metres(height) },
        fitted: { wheel: false, remoteControl: false },
      }).margins[2]?.holds;
    expect([at(0.548), at(0.5481), at(0.468), at(0.4679)]).toEqual([true, false, true, false]);
  });

  it('wants wheel and control with a remote engine, and neither with a tiller', () => {
    expect(fit({}).faults).toEqual([]);
    expect(fit({}, { wheel: false, remoteControl: true }).faults).toHaveLength(1);
    expect(fit({}, { wheel: false, remoteControl: false }).faults).toHaveLength(2);
    expect(fit({ steering: 'tiller' }).faults).toHaveLength(2);
    expect(fit({ steering: 'tiller' }, { wheel: false, remoteControl: false }).faults).toEqual([]);
  });

  it('suits each hull of the catalogue with the shaft that is written there', () => {
    for (const { ratings, dimensions, shaft } of catalogueHulls()) {
      const { margins } = fitEngine({
        engine: { power: ratings.power, mass: ratings.engineMass, shaft, steering: 'tiller' },
        hull: { ...ratings, transomHeight: dimensions.transomHeight },
        fitted: { wheel: false, remoteControl: false },
      });
      expect(margins.every(({ holds }) => holds)).toBe(true);
    }
  });

  it('trims her by the stern by moment over displacement and GM', () => {
    const trim = trimByEngine(kilograms(100), metres(2), kilograms(600), metres(5));
    expect(Math.tan(Number(trim))).toBeCloseTo(200 / 3000, 12);
    expect(trimByEngine(kilograms(100), metres(2), kilograms(600), metres(0))).toHaveProperty(
      'notComputed',
    );
  });

  it('leaves the freeboard aft at its least, and not just below', () => {
    expect(sternFreeboard(metres(0.15), metres(0.15)).holds).toBe(true);
    expect(sternFreeboard(metres(0.149), metres(0.15))).toMatchObject({ holds: false });
  });
});
