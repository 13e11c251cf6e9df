import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  armAt,
  findEquilibrium,
  freeboards,
  freeSurfaceMoment,
  hydrostatics,
  immerse,
  metacentricHeight,
  rightingCurve,
  withMasses,
} from '../../src/float/index.ts';
import { kilograms, kilogramsPerCubicMetre, metres } from '../../src/units/index.ts';
import { at, box, DEGREE, demonstrationHulls, loadAt, plane } from './boats.ts';

const HULLS = demonstrationHulls();
const BARGE = box(5, 2, 0.8);
const LADEN = loadAt(3075, 2.5, 0, 0.6);
const loadOf = ({ length, depth }: (typeof HULLS)[number], mass = 550) =>
  loadAt(mass, 0.4 * length, 0, 0.75 * depth);

describe('GM', () => {
  it.each(HULLS)('of $id is the same by form and by slope, within 0.5 %', (boat) => {
    for (const mass of [350, 450, 550, 700]) {
      const gm = metacentricHeight(boat.body, loadOf(boat, mass));
      expect(gm?.byForm).toBeGreaterThan(0.1);
      expect(Math.abs((gm?.bySlope ?? 0) / (gm?.byForm ?? 1) - 1)).toBeLessThan(0.005);
    }
  });

  it('falls by as much as the centre of mass rises, and by the free surface', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.9, noNaN: true }), (height) => {
        const gm = metacentricHeight(BARGE, loadAt(3075, 2.5, 0, height), 30);
        expect(gm?.byForm).toBeCloseTo(1.261111 - height - 30 / 3075, 5);
        expect(gm?.freeSurfaceLoss).toBeCloseTo(30 / 3075, 12);
      }),
      { numRuns: 20 },
    );
  });

  it('is undefined for a mass that the hull cannot carry', () => {
    for (const mass of [9000, 0, -5, Number.NaN]) {
      expect(metacentricHeight(BARGE, loadAt(mass, 2.5, 0, 0.6))).toBeUndefined();
    }
  });

  it('loses a quarter as much to a tank with a baffle', () => {
    const tank = {
      length: metres(1),
      breadth: metres(0.6),
      density: kilogramsPerCubicMetre(740),
    };
    const moment = freeSurfaceMoment([{ ...tank, compartments: 1 }]);
    expect(moment / 1000).toBeCloseTo(0.01332, 9);
    expect(freeSurfaceMoment([{ ...tank, compartments: 2 }])).toBeCloseTo(moment / 4, 12);
  });
});

describe('righting arms', () => {
  it.each(HULLS)('of $id have an area that is the rise of weight against buoyancy', (boat) => {
    const load = loadOf(boat);
    const steps = 40;
    const until = 0.7;
    const heels = Array.from({ length: steps + 1 }, (_, index) => (until * index) / steps);
    const arms = heels.map((heel) => armAt(boat.body, load, heel));
    const area = arms.reduce((sum, arm, index) => {
      const weight = index === 0 || index === steps ? 1 : index % 2 === 1 ? 4 : 2;
      const along = Math.cos(arm?.trim ?? 0);
      return sum + (weight * (until / steps) * (arm?.arm ?? Number.NaN) * along) / 3;
    }, 0);
    const lift = (heel: number): number => {
      const arm = armAt(boat.body, load, heel);
      const lying = plane(arm?.level ?? 0, arm?.trim ?? 0, heel);
      const { volume, volumeUp } = immerse(boat.body, lying);
      const { x, z } = load.centre;
      const weight = x * Math.sin(lying.trim) + z * Math.cos(heel) * Math.cos(lying.trim);
      return weight - volumeUp / volume;
    };
    expect(area).toBeGreaterThan(0.02);
    expect(Math.abs(area / (lift(until) - lift(0)) - 1)).toBeLessThan(1e-3);
  });

  it('begin and end as the barge of the textbooks has them', () => {
    const curve = rightingCurve(BARGE, LADEN);
    expect(curve?.arms.length).toBe(19);
    expect(curve?.arms[8]?.arm).toBeCloseTo(0.2570617, 6);
    expect(curve?.downflooding?.heel).toBeCloseTo(Math.atan(0.5333), 1);
    expect((curve?.vanishing ?? 0) / DEGREE).toBeCloseTo(69.989, 2);
    const greatest = curve?.greatest;
    expect(armAt(BARGE, LADEN, greatest?.heel ?? 0)?.arm).toBeCloseTo(greatest?.arm ?? 0, 9);
    for (const { arm } of curve?.arms ?? []) expect(arm).toBeLessThanOrEqual(greatest?.arm ?? 0);
  });

  it('of that barge are greatest and flood by hand, and so is the work done up to there', () => {
    // Bilge dry and deck under: 0.6 m2 of the section in a trapezium 0.8 m high, (1.5 +- 0.8/t)/2 wide at bottom and deck.
    const arms = Array.from({ length: 2000 }, (_, step) => {
      const heel = (30 + step / 100) * DEGREE;
      const [bottom, deck] = [1, -1].map((way) => (1.5 + (way * 0.8) / Math.tan(heel)) / 2);
      if (bottom === undefined || deck === undefined) return 0;
      const across = 1 - (bottom ** 2 + bottom * deck + deck ** 2) / 4.5;
      const up = (0.8 * (bottom + 2 * deck)) / 4.5;
      return across * Math.cos(heel) + (up - 0.6) * Math.sin(heel);
    });
    const most = Math.max(...arms);
    const curve = rightingCurve(BARGE, LADEN);
    expect(curve?.greatest.arm).toBeCloseTo(most, 7);
    expect((curve?.greatest.heel ?? 0) / DEGREE).toBeCloseTo(30 + arms.indexOf(most) / 100, 1);
    // The deck comes awash at a tangent of 0.8/1.5: buoyancy 0.5 m out and 0.8/3 m up, from 0.45 m under the weight.
    expect(curve?.downflooding?.heel).toBeCloseTo(Math.atan(0.8 / 1.5), 6);
    const [sine, cosine] = [8 / 17, 15 / 17];
    expect(curve?.area).toBeCloseTo(0.5 * sine + (0.6 - 0.8 / 3) * cosine - 0.45, 6);
  });

  it('flood by an opening on the side that they heel to alone, and the work ends there', () => {
    const well = [{ name: 'well', at: at(2.5, 0.8, 0.5) }];
    const [to, from] = (['starboard', 'port'] as const).map((side) =>
      rightingCurve(BARGE, LADEN, side, well),
    );
    expect(to?.downflooding).toEqual({ heel: expect.closeTo(Math.atan(0.25), 6), opening: 'well' });
    expect(from?.downflooding?.heel).toBeCloseTo(Math.atan(0.8 / 1.5), 6);
    // Upright sides: buoyancy (10/9)/4 m out and (10/9)/32 m higher.
    const [sine, cosine] = [0.25, 1].map((leg) => leg / Math.hypot(0.25, 1));
    const [out, higher] = [10 / 36, 0.15 + 10 / 288];
    expect(to?.area).toBeCloseTo(out * (sine ?? 0) + (0.6 - higher) * (cosine ?? 0) - 0.45, 7);
    const [wet] = [rightingCurve(BARGE, LADEN, 'port', [{ name: 'hole', at: at(2, 0, 0.1) }])];
    expect(wet?.downflooding).toEqual({ heel: 0, opening: 'hole' });
    expect(wet?.area).toBeCloseTo(0, 12);
  });

  it('are never above nothing for what is top-heavy, and do not vanish for what is heavy below', () => {
    const high = rightingCurve(BARGE, loadAt(3075, 2.5, 0, 2));
    expect(high?.greatest.arm).toBeCloseTo(0, 9);
    expect(high?.vanishing).toBeUndefined();
    const low = rightingCurve(BARGE, loadAt(3075, 2.5, 0, -0.5));
    expect(low?.vanishing).toBeUndefined();
    expect(low?.arms.length).toBe(19);
  });

  it('vanish and flood where they say', () => {
    const curves = HULLS.map((boat) => ({
      boat,
      curve: rightingCurve(boat.body, loadOf(boat), 'starboard', [boat.transom]),
    }));
    const vanishing = curves.flatMap(({ boat, curve }) =>
      curve?.vanishing === undefined ? [] : [armAt(boat.body, loadOf(boat), curve.vanishing)],
    );
    expect(vanishing.length).toBeGreaterThan(0);
    for (const arm of vanishing) expect(arm?.arm).toBeCloseTo(0, 5);
    for (const { boat, curve } of curves) {
      const heel = curve?.downflooding?.heel ?? Number.NaN;
      const { level = 0, trim = 0 } = armAt(boat.body, loadOf(boat), heel) ?? {};
      const lowest = freeboards(boat.body.hull, plane(level, trim, heel), [boat.transom]).lowest;
      expect(lowest.freeboard).toBeCloseTo(0, 5);
      expect(lowest.name).toBe(curve?.downflooding?.opening);
    }
  });

  it('are the same to port and to starboard for a load on the centreline', () => {
    const boat = HULLS[0];
    if (!boat) throw new Error('no hull');
    const [port, starboard] = (['port', 'starboard'] as const).map((side) =>
      rightingCurve(boat.body, loadOf(boat), side, [boat.transom]),
    );
    expect(port?.greatest.arm).toBeCloseTo(starboard?.greatest.arm ?? 0, 9);
    expect(port?.downflooding?.heel).toBeCloseTo(starboard?.downflooding?.heel ?? 0, 9);
  });

  it('are smaller to the side that the load leans to, and to that side flood sooner', () => {
    const load = loadAt(3075, 2.5, 0.05, 0.6);
    const opening = [{ name: 'hatch', at: at(2.5, 0.6, 0.8) }];
    const [to, from] = (['starboard', 'port'] as const).map((side) =>
      rightingCurve(BARGE, load, side, opening),
    );
    expect(to?.greatest.arm).toBeLessThan(from?.greatest.arm ?? 0);
    expect(to?.arms[0]?.arm).toBeCloseTo(-0.05, 9);
    expect(from?.arms[0]?.arm).toBeCloseTo(0.05, 9);
  });

  it('are none when the hull cannot carry the mass', () => {
    expect(rightingCurve(BARGE, loadAt(9000, 2.5, 0, 0.6))).toBeUndefined();
    expect(rightingCurve(BARGE, loadAt(Number.NaN, 2.5, 0, 0.6))).toBeUndefined();
  });
});

it('leans further the more people stand at one side, five of them as the hand calculation has it', () => {
  const heels = [1, 2, 3, 4, 5, 6].map((people) => {
    const load = withMasses(loadAt(3075 - people * 75, 2.5, 0, 0.6), [
      { mass: kilograms(people * 75), at: at(2.5, 0.8, 0.6) },
    ]);
    const lies = findEquilibrium(BARGE, load);
    return lies.outcome === 'floats' ? lies.plane.heel / DEGREE : Number.NaN;
  });
  expect(heels.toSorted((a, b) => a - b)).toEqual(heels);
  expect(heels[4]).toBeCloseTo(8.2509, 4);
});

it('the waterplane of the barge turns about its middle', () => {
  expect(hydrostatics(BARGE, plane(0.3))?.centreOfFlotation.x).toBeCloseTo(2.5, 12);
});
