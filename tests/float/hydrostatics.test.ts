import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type FloatingBody,
  hydrostatics,
  immerse,
  momentToTrim,
  type WaterPlane,
} from '../../src/float/index.ts';
import { metres } from '../../src/units/index.ts';
import { box, type DemonstrationHull, demonstrationHulls, plane } from './boats.ts';

const HULLS = demonstrationHulls();
const planes = fc.record({
  level: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
  trim: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
  heel: fc.double({ min: -1.2, max: 1.2, noNaN: true }),
});
/** By its index, so that a counterexample prints short. */
const hull = fc.integer({ min: 0, max: HULLS.length - 1 });
function boatOf(index: number): DemonstrationHull {
  const found = HULLS[index];
  if (!found) throw new Error(`no hull ${index}`);
  return found;
}

/** Counts little blocks of the section polygon that lie under the water. */
function countedVolume({ hull: { xs, ring, y, z } }: FloatingBody, at: WaterPlane): number {
  const cells = 120;
  const inside = (station: number, py: number, pz: number): boolean => {
    let odd = false;
    for (let index = 0; index < ring; index++) {
      const a = station * ring + index;
      const b = station * ring + ((index + 1) % ring);
      const [ay = 0, az = 0, by = 0, bz = 0] = [y[a], z[a], y[b], z[b]];
      if (az > pz !== bz > pz && py < ay + ((by - ay) * (pz - az)) / (bz - az)) odd = !odd;
    }
    return odd;
  };
  const area = (station: number): number => {
    let count = 0;
    for (let i = 0; i < cells; i++) {
      for (let j = 0; j < cells; j++) {
        const [py, pz] = [-1.3 + (2.6 * (i + 0.5)) / cells, -0.1 + (1.4 * (j + 0.5)) / cells];
        const upright = pz * Math.cos(at.heel) - py * Math.sin(at.heel);
        const above =
          (xs[station] ?? 0) * Math.sin(at.trim) + upright * Math.cos(at.trim) - at.level;
        if (above < 0 && inside(station, py, pz)) count++;
      }
    }
    return (count * 2.6 * 1.4) / cells ** 2;
  };
  const areas = Array.from(xs, (_, station) => area(station));
  return areas.slice(1).reduce((sum, here, index) => {
    const step = (xs[index + 1] ?? 0) - (xs[index] ?? 0);
    return sum + ((here + (areas[index] ?? 0)) / 2) * step;
  }, 0);
}

describe('the immersed part', () => {
  it.each(HULLS)('of $id has the volume that counting little blocks gives', ({ body }) => {
    for (const at of [plane(0.25), plane(0.3, 0.05, 0.3), plane(0.2, -0.08, -0.7)]) {
      const volume = immerse(body, at).volume;
      expect(Math.abs(volume / countedVolume(body, at) - 1)).toBeLessThan(0.01);
    }
  });

  it('grows with the level as its waterplane says', () => {
    fc.assert(
      fc.property(hull, planes, (index, { level, trim, heel }) => {
        const { body } = boatOf(index);
        const step = 1e-5;
        const more = immerse(body, plane(level + step, trim, heel)).volume;
        const less = immerse(body, plane(level - step, trim, heel)).volume;
        const { area } = immerse(body, plane(level, trim, heel));
        expect(Math.abs((more - less) / (2 * step) - area)).toBeLessThan(2e-3 * area + 1e-3);
      }),
      { numRuns: 60 },
    );
  });

  it('mirrors when the heel does', () => {
    fc.assert(
      fc.property(hull, planes, (index, { level, trim, heel }) => {
        const { body } = boatOf(index);
        const one = immerse(body, plane(level, trim, heel));
        const other = immerse(body, plane(level, trim, -heel));
        expect(other.volume).toBeCloseTo(one.volume, 10);
        expect(other.volumeAcross).toBeCloseTo(-one.volumeAcross, 10);
        expect(other.areaAcrossAcross).toBeCloseTo(one.areaAcrossAcross, 10);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its volume and inertia when the origin is moved along the boat', () => {
    fc.assert(
      fc.property(planes, fc.double({ min: -5, max: 5, noNaN: true }), (at, from) => {
        const here = immerse(box(4, 1.6, 0.7), plane(at.level, at.trim, at.heel));
        const level = at.level + from * Math.sin(at.trim);
        const there = immerse(box(4, 1.6, 0.7, from), plane(level, at.trim, at.heel));
        expect(there.volume).toBeCloseTo(here.volume, 9);
        expect(there.areaAcrossAcross).toBeCloseTo(here.areaAcrossAcross, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('and the dry part make up the whole: a plane and its reverse', () => {
    const body = box(4, 1.6, 0.7);
    fc.assert(
      fc.property(planes, ({ level, trim, heel }) => {
        const below = immerse(body, plane(level, trim, heel)).volume;
        const above = immerse(body, plane(-level, -trim, heel + Math.PI)).volume;
        expect(below + above).toBeCloseTo(4 * 1.6 * 0.7, 9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('hydrostatics', () => {
  it('are undefined out of the water', () => {
    expect(hydrostatics(box(4, 1.6, 0.7), plane(-0.1))).toBeUndefined();
  });

  it('have coefficients that multiply: block is prismatic times midship', () => {
    for (const { body } of HULLS) {
      const all = hydrostatics(body, plane(0.25, 0.02));
      const { block, prismatic, midship } = all?.coefficients ?? {
        block: 0,
        prismatic: 0,
        midship: 0,
      };
      expect(block).toBeCloseTo(prismatic * midship, 9);
      expect(block).toBeGreaterThan(0.25);
      expect(block).toBeLessThan(0.6);
    }
  });

  it('use the true GMl, not BMl, for the moment to trim', () => {
    const all = hydrostatics(box(5, 2, 0.8), plane(0.3));
    expect(all && momentToTrim(all, metres(0.6))).toBeCloseTo(39.94083, 5);
    expect(all && (all.displacement * all.longitudinalRadius) / 500).toBeCloseTo(42.708, 3);
  });

  it('count the immersed transom and no deck in the wetted surface', () => {
    expect(hydrostatics(box(5, 2, 0.8), plane(1))?.wettedSurface).toBeCloseTo(
      5 * 2 + 2 * 5 * 0.8 + 2 * 2 * 0.8,
      9,
    );
  });
});
