import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bottomPressure,
  type BottomPanel,
  type PlaningBoat,
  plateFactors,
  screenBottom,
  type Section,
  sectionOf,
  stiffnessOf,
} from '../../src/laminate/index.ts';
import { kilograms, metres, type Radians } from '../../src/units/index.ts';
import { anyLayers, fabric, foam, gelcoat } from './lay-ups.ts';

const EMPTY = { thickness: 0, neutralAxis: 0, stiffness: 0, moment: 0 };
const sound = (layers: Parameters<typeof sectionOf>[0]): Section => {
  const section = sectionOf(layers);
  return 'notComputed' in section ? (EMPTY as Section) : section;
};

describe('the section of a lay-up', () => {
  it('is the textbook strip for one material: E t3 / 12, whatever plies it is cut into', () => {
    const ply = { thickness: metres(0.001), modulus: 14e9 };
    expect(stiffnessOf([ply, ply, ply, ply]).stiffness).toBeCloseTo((14e9 * 0.004 ** 3) / 12, 9);
  });

  it('is as stiff the other way up', () => {
    fc.assert(
      fc.property(anyLayers, (layers) => {
        const there = sound(layers);
        const back = sound(layers.toReversed());
        expect(there.stiffness).toBeGreaterThan(0);
        expect(back.stiffness / there.stiffness).toBeCloseTo(1, 9);
        expect(back.moment / there.moment).toBeCloseTo(1, 9);
        expect(back.neutralAxis).toBeCloseTo(there.thickness - there.neutralAxis, 9);
      }),
    );
  });

  it('is stiffer with a core between the same skins', () => {
    const skins = [fabric(1.2, 0.6), fabric(1.2, 0.6)];
    const sandwich = sound([fabric(1.2, 0.6), foam(0.012), fabric(1.2, 0.6)]);
    expect(sandwich.stiffness).toBeGreaterThan(20 * sound(skins).stiffness);
    expect(sandwich.shear).toBeCloseTo(1.15e6 * (0.012 + (sandwich.thickness - 0.012) / 2), 3);
    expect(sound(skins).shear).toBeUndefined();
  });

  it('carries the moment at which a single skin reaches the weaker of its strengths', () => {
    const section = sound([fabric(1.2, 0.5)]);
    const weaker = Math.min(800 * 0.25 - 40 + 37, 150 * 0.5 + 72) * 1e6;
    expect(section.moment).toBeCloseTo((weaker * section.thickness ** 2) / 6, 6);
  });

  it('is weaker when the core is too soft to keep its skin from wrinkling', () => {
    const soft = {
      ...foam(0.012),
      strength: { shearStrength: 1e5, shearModulus: 2e6, compressiveModulus: 5e6 },
    };
    const around = (core: ReturnType<typeof foam>) =>
      sound([fabric(1.2, 0.6), core, fabric(1.2, 0.6)]).moment;
    expect(around(soft)).toBeLessThan(0.5 * around(foam(0.012)));
  });

  it('is not computed without glass, with two cores, or outside the defaults', () => {
    for (const layers of [
      [gelcoat(0.7)],
      [foam(0.01)],
      [fabric(0.6, 0.6), foam(0.01), fabric(0.6, 0.6), foam(0.01), fabric(0.6, 0.6)],
      [fabric(0.6, 0.75)],
    ]) {
      expect(sectionOf(layers)).toHaveProperty('notComputed');
    }
  });
});

describe('a clamped plate', () => {
  it('bends no less the longer it is, and goes over to the long plate without a step', () => {
    const moment = (aspect: number): number => {
      const factors = plateFactors(aspect);
      return 'notComputed' in factors ? Number.NaN : factors.moment;
    };
    for (let aspect = 1; aspect < 3; aspect += 0.05) {
      expect(moment(aspect + 0.05)).toBeGreaterThanOrEqual(moment(aspect) - 1e-3);
    }
    expect(moment(2.001)).toBeCloseTo(moment(2), 2);
    expect(plateFactors(0.9)).toHaveProperty('notComputed');
    expect(plateFactors(9)).toMatchObject({ shear: 0.5 });
    expect(plateFactors(2.5)).toMatchObject({ shear: expect.closeTo(0.478, 12) as number });
  });
});

describe('screening a bottom panel', () => {
  const boat: PlaningBoat = {
    waterline: metres(3.9),
    chineBeam: metres(1.57),
    loadedMass: kilograms(950),
    speedKnots: 28,
    deadrise: ((14 * Math.PI) / 180) as Radians,
    category: 'C',
  };
  const amidships: BottomPanel = { short: metres(0.3), long: metres(0.6), forward: metres(2.5) };
  const pressureOf = (some: Partial<PlaningBoat>, at: Partial<BottomPanel> = {}): number => {
    const pressure = bottomPressure({ ...boat, ...some }, { ...amidships, ...at });
    return 'notComputed' in pressure ? Number.NaN : pressure.design;
  };

  it('puts less pressure on a larger panel, farther aft, in shelter and at less speed', () => {
    const here = pressureOf({});
    expect(here).toBeGreaterThan(20_000);
    expect(here).toBeLessThan(80_000);
    expect(pressureOf({}, { short: metres(0.5), long: metres(1) })).toBeLessThan(here);
    expect(pressureOf({}, { forward: metres(0.3) })).toBeLessThan(here);
    expect(pressureOf({ category: 'D' })).toBeLessThan(here);
    expect(pressureOf({ speedKnots: 20 })).toBeLessThan(here);
  });

  it('is worked by hand for one panel', () => {
    const nCG = (0.5 * 28) / 950 ** 0.17;
    const base = ((100 * 950) / (3.9 * 1.57)) * (1 + Math.sqrt(0.6) * nCG);
    const kAR = ((1.5 - 0.09) * 0.1 * 950 ** 0.15) / 0.18 ** 0.3;
    expect(pressureOf({})).toBeCloseTo(base * kAR, 6);
  });

  it('says so when the boat is none that the formula knows', () => {
    expect(pressureOf({ speedKnots: 7 })).toBeNaN();
    expect(pressureOf({ speedKnots: 70 })).toBeNaN();
    expect(pressureOf({ waterline: metres(1) })).toBeNaN();
    expect(pressureOf({}, { long: metres(0.2) })).toBeNaN();
  });

  it('compares bending, core shear and deflection, and wants another look at a thin bottom', () => {
    const uses = (
      layers: Parameters<typeof sectionOf>[0],
      sandwich: boolean,
    ): readonly number[] => {
      const screening = screenBottom(boat, amidships, sound(layers), sandwich);
      return 'notComputed' in screening ? [] : screening.rows.map(({ use }) => use);
    };
    const skin = [fabric(0.6, 0.6), fabric(0.8, 0.6)];
    const stout = uses([...skin, foam(0.012), ...skin], true);
    expect(stout).toHaveLength(3);
    expect(Math.max(...stout)).toBeLessThan(1);
    expect(uses([fabric(0.6, 0.6)], false)[0]).toBeGreaterThan(1);
  });
});
