import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Equilibrium,
  findEquilibrium,
  freeboards,
  heightAbove,
  hydrostatics,
  metacentricHeight,
  type WaterPlane,
  withMasses,
} from '../../src/float/index.ts';
import { kilograms, metres, radians } from '../../src/units/index.ts';
import { at, box, DEGREE, type DemonstrationHull, demonstrationHulls, loadAt } from './boats.ts';

const HULLS = demonstrationHulls();
const BARGE = box(5, 2, 0.8);
/** With 3075 kg, 0.3 m deep: KB + BM. */
const BARGE_KM = 0.15 + 2 ** 2 / (12 * 0.3);
/** By its index, so that a counterexample prints short. */
const hull = fc.integer({ min: 0, max: HULLS.length - 1 });
function boatOf(index: number): DemonstrationHull {
  const found = HULLS[index];
  if (!found) throw new Error(`no hull ${index}`);
  return found;
}

function planeOf(result: Equilibrium): WaterPlane {
  if (result.outcome !== 'floats') throw new Error(result.outcome);
  return result.plane;
}

describe('a boat at rest', () => {
  const laden = fc.record({
    index: hull,
    mass: fc.double({ min: 150, max: 700, noNaN: true }),
    along: fc.double({ min: 0.33, max: 0.5, noNaN: true }),
    across: fc.double({ min: -0.06, max: 0.06, noNaN: true }),
    height: fc.double({ min: 0.25, max: 0.6, noNaN: true }),
  });

  it('displaces her mass, with the centre of buoyancy plumb under the centre of mass', () => {
    fc.assert(
      fc.property(laden, ({ index, mass, along, across, height }) => {
        const boat = boatOf(index);
        const load = loadAt(mass, along * boat.length, across, height);
        const plane = planeOf(findEquilibrium(boat.body, load));
        const all = hydrostatics(boat.body, plane);
        expect(Math.abs((all?.displacement ?? 0) / mass - 1)).toBeLessThan(1e-8);
        const { x, y, z } = all?.centreOfBuoyancy ?? at(0, 0, 0);
        const [dx, dy, dz] = [load.centre.x - x, load.centre.y - y, load.centre.z - z];
        const { trim, heel } = plane;
        const up = [
          Math.sin(trim),
          -Math.sin(heel) * Math.cos(trim),
          Math.cos(heel) * Math.cos(trim),
        ] as const;
        expect(Math.abs(dy * up[2] - dz * up[1])).toBeLessThan(1e-7);
        expect(Math.abs(dz * up[0] - dx * up[2])).toBeLessThan(1e-7);
      }),
      { numRuns: 100 },
    );
  });

  it('leans the other way when the load is mirrored', () => {
    fc.assert(
      fc.property(laden, ({ index, mass, along, across, height }) => {
        const boat = boatOf(index);
        const lean = (y: number): WaterPlane =>
          planeOf(findEquilibrium(boat.body, loadAt(mass, along * boat.length, y, height)));
        const [one, other] = [lean(across), lean(-across)];
        // With nothing across, the boat is her own mirror image, and one that lolls falls to either side.
        expect(other.heel).toBeCloseTo(across === 0 ? one.heel : 0 - one.heel, 5);
        expect(other.trim).toBeCloseTo(one.trim, 5);
        expect(other.level).toBeCloseTo(one.level, 5);
      }),
      { numRuns: 60 },
    );
  });

  it('lies upright to 1e-6 rad under a load amidships, though she is hardly stiff', () => {
    const { body, length } = boatOf(0);
    const load = loadAt(150, 0.3625432603318514 * length, 0, 0.5999999999999981);
    expect(Math.abs(metacentricHeight(body, load)?.byForm ?? 1)).toBeLessThan(1e-7);
    expect(Math.abs(planeOf(findEquilibrium(body, load)).heel)).toBeLessThan(1e-6);
  });

  it('leans to 1e-6 rad as weight and stiffness say, with a GM of 1e-7 m', () => {
    // tan(heel) = y / GM while the heel is small.
    const heel = (y: number): number =>
      planeOf(findEquilibrium(BARGE, loadAt(3075, 2.5, y, BARGE_KM - 1e-7))).heel;
    expect(Math.abs(heel(1e-12) - 1e-5)).toBeLessThan(1e-6);
    expect(Math.abs(heel(-1e-12) + 1e-5)).toBeLessThan(1e-6);
  });

  it.each([1e-6, 1e-4, 1e-2])(
    'falls to the side that her weight lies on, however little, with a GM of %d m below nothing',
    (less) => {
      const heel = (y: number): number =>
        planeOf(findEquilibrium(BARGE, loadAt(3075, 2.5, y, BARGE_KM + less))).heel;
      // Angle of loll of a wall-sided boat: tan(heel) = sqrt(-2 GM / BM).
      const loll = Math.atan(Math.sqrt((2 * less) / (2 ** 2 / (12 * 0.3))));
      expect(heel(1e-11)).toBeCloseTo(loll, 5);
      expect(heel(-1e-11)).toBeCloseTo(0 - loll, 5);
    },
  );

  it('rests at the first lean that carries her, though further over she would turn right over', () => {
    const shallow = box(4, 1.6, 0.6);
    const draught = 570 / (1025 * 4 * 1.6);
    const radius = 1.6 ** 2 / (12 * draught);
    const high = loadAt(570, 2, 0, draught / 2 + radius + 0.006);
    const { heel } = planeOf(findEquilibrium(shallow, high));
    // Wall-sided: tan(heel) = sqrt(-2 GM / BM), before the bilge comes out at 6.2 degrees.
    expect(heel).toBeCloseTo(Math.atan(Math.sqrt(0.012 / radius)), 5);
    const from = { level: metres(0.2), trim: radians(0), heel: radians(0.5) };
    expect(findEquilibrium(shallow, high, [], from).outcome).toBe('capsizes');
  });

  it('has her centre of mass lower over the water when she is heavier', () => {
    fc.assert(
      fc.property(laden, fc.double({ min: 1, max: 150, noNaN: true }), (one, more) => {
        const boat = boatOf(one.index);
        const over = (mass: number): number => {
          const load = loadAt(mass, one.along * boat.length, one.across, one.height);
          return heightAbove(planeOf(findEquilibrium(boat.body, load)), load.centre);
        };
        expect(over(one.mass + more)).toBeLessThan(over(one.mass));
      }),
      { numRuns: 60 },
    );
  });

  it('has less freeboard all round when mass is put over her centre of flotation', () => {
    for (const { body, length, transom } of HULLS) {
      const load = loadAt(450, 0.42 * length, 0, 0.4);
      const light = planeOf(findEquilibrium(body, load));
      const { x = 0 } = hydrostatics(body, light)?.centreOfFlotation ?? {};
      const crew = { mass: kilograms(80), at: at(x, 0, 0.4) };
      const heavy = planeOf(findEquilibrium(body, withMasses(load, [crew])));
      const [before, after] = [light, heavy].map((plane) =>
        freeboards(body.hull, plane, [transom]),
      );
      for (const where of ['bow', 'side', 'transom', 'lowest'] as const) {
        expect(after?.[where].freeboard).toBeLessThan(before?.[where].freeboard ?? 0);
      }
    }
  });

  it('trims by the stern as weight moves aft, and to the side that it moves to', () => {
    for (const { body, length } of HULLS) {
      const trims = [0.45, 0.42, 0.39, 0.36].map(
        (share) => planeOf(findEquilibrium(body, loadAt(450, share * length, 0.01, 0.4))).trim,
      );
      expect(trims.toSorted((a, b) => a - b)).toEqual(trims);
      expect(
        planeOf(findEquilibrium(body, loadAt(450, 0.4 * length, 0.03, 0.4))).heel,
      ).toBeGreaterThan(0);
    }
  });

  it('rests in the same plane wherever the search begins', () => {
    for (const { body, length } of HULLS) {
      const load = loadAt(500, 0.4 * length, 0.02, 0.45);
      const known = planeOf(findEquilibrium(body, load));
      for (const [level, trim, heel] of [
        [0.6, 0.2, -0.5],
        [0.05, -0.2, 0.5],
        [2, 0.1, 0],
        [-1, 0, 0.2],
      ] as const) {
        const start = {
          ...known,
          level: level as typeof known.level,
          trim: trim as typeof known.trim,
          heel: heel as typeof known.heel,
        };
        const found = planeOf(findEquilibrium(body, load, [], start));
        expect(found.level).toBeCloseTo(known.level, 7);
        expect(found.trim).toBeCloseTo(known.trim, 7);
        expect(found.heel).toBeCloseTo(known.heel, 7);
      }
    }
  });
});

describe('a boat that does not rest', () => {
  it('turns over when it is top-heavy', () => {
    const result = findEquilibrium(BARGE, loadAt(3075, 2.5, 0, 2.5));
    expect(result).toMatchObject({ outcome: 'capsizes' });
    const to = (y: number) => findEquilibrium(BARGE, loadAt(3075, 2.5, y, 2.5));
    expect(to(0.1)).toMatchObject({ outcome: 'capsizes', to: 'starboard' });
    expect(to(-0.1)).toMatchObject({ outcome: 'capsizes', to: 'port' });
  });

  it('takes in water, or goes down by an end, rather than turns over where it would even held upright', () => {
    const hatch = { name: 'hatch', at: at(2.5, 0, 0.25) };
    expect(findEquilibrium(BARGE, loadAt(3075, 2.5, 0.1, 2.5), [hatch])).toMatchObject({
      outcome: 'swamps',
      opening: { name: 'hatch' },
    });
    expect(findEquilibrium(BARGE, loadAt(3075, 0.4, 0.1, 2.5))).toMatchObject({
      outcome: 'goes down',
      by: 'stern',
    });
  });

  it.each([
    [0, 1],
    [-1, 1],
    [100, Number.NaN],
    [100, Infinity],
  ])('of no mass, or at no place, is not computed: %d kg at %d m', (mass, x) => {
    const none = { outcome: 'not computed', notComputed: 'the boat has no mass' };
    expect(findEquilibrium(BARGE, loadAt(mass, x, 0, 1))).toEqual(none);
  });

  it('lolls to one side when her GM is a little below zero', () => {
    const { heel } = planeOf(findEquilibrium(BARGE, loadAt(3075, 2.5, 0, 1.27)));
    expect(Math.abs(heel) / DEGREE).toBeCloseTo(7.2091, 3);
  });

  it('is swamped when she is heavier than the water that it can displace, and says what she can carry', () => {
    const result = findEquilibrium(BARGE, loadAt(9000, 2.5, 0, 0.4));
    expect(result).not.toHaveProperty('opening');
    expect(result.outcome === 'swamps' && result.capacity).toBeCloseTo(5 * 2 * 0.8 * 1025, 6);
    expect(findEquilibrium(BARGE, loadAt(8200 + 1e-6, 2.5, 0, 0.4)).outcome).toBe('swamps');
  });

  it('is swamped when an opening comes under water, and names it', () => {
    const opening = { name: 'engine well', at: at(0, 0, 0.35) };
    const load = loadAt(3075, 2.1, 0, 0.4);
    expect(findEquilibrium(BARGE, load).outcome).toBe('floats');
    expect(findEquilibrium(BARGE, load, [opening])).toMatchObject({
      outcome: 'swamps',
      opening: { name: 'engine well' },
    });
  });

  it('goes down by the end that the load is at', () => {
    const down = (along: number) => findEquilibrium(BARGE, loadAt(3075, along, 0, 0.3));
    expect(down(4.6)).toMatchObject({ outcome: 'goes down', by: 'bow' });
    expect(down(0.4)).toMatchObject({ outcome: 'goes down', by: 'stern' });
  });

  it('never answers with a number that is none, however strange the load', () => {
    const anything = fc.record({
      mass: fc.oneof(
        fc.double({ min: -10, max: 20_000 }),
        fc.constantFrom(0, Number.NaN, Infinity),
      ),
      x: fc.double({ min: -20, max: 20, noNaN: true }),
      y: fc.double({ min: -5, max: 5, noNaN: true }),
      z: fc.double({ min: -3, max: 10 }),
    });
    fc.assert(
      fc.property(hull, anything, (index, { mass, x, y, z }) => {
        const { body, transom } = boatOf(index);
        const result = findEquilibrium(body, loadAt(mass, x, y, z), [transom]);
        // A boat of a gram or more, wherever its weight is, has an answer.
        const isBoat = mass > 0.001 && Number.isFinite(mass + z);
        expect(isBoat && result.outcome === 'not computed').toBe(false);
        const numbers = 'plane' in result && result.plane ? Object.values(result.plane) : [];
        expect(numbers.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});
