import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { hydrostatics, standsOut } from '../../src/float/index.ts';
import { metres, radians } from '../../src/units/index.ts';
import { roomOf } from '../../src/figures/float/spaces.ts';
import { figured } from '../demonstration/workspace.ts';
import { demonstrationHulls } from './boats.ts';
import { geometry, shareOutside, solidOf, under, volumeAndCentre } from './solid.ts';

const DEGREE = Math.PI / 180;
let library: ManifoldToplevel;
const solids = new Map<string, Manifold>();
const hulls = demonstrationHulls();

beforeAll(async () => {
  library = await geometry();
  for (const { id, body } of hulls) solids.set(id, solidOf(library, body.hull));
});
afterAll(() => {
  for (const solid of solids.values()) solid.delete();
});

describe.each(hulls.map(({ id, body }) => [id, body] as const))(
  'the hull of the %s',
  (id, body) => {
    /** Below a plane by the library, and by our own sums. */
    const both = (level: number, heel: number, trim: number) => {
      const plane = { level: metres(level), heel: radians(heel), trim: radians(trim) };
      const solid = solids.get(id);
      if (!solid) throw new Error('no solid');
      const wet = under(solid, plane);
      const { volume, centre } = volumeAndCentre(wet);
      wet.delete();
      const ours = hydrostatics(body, plane);
      const { x = 0, y = 0, z = 0 } = ours?.centreOfBuoyancy ?? {};
      return { volume, centre, ours: { volume: ours?.volume ?? 0, centre: [x, y, z] as const } };
    };

    it('holds level what a general geometry library says, with its centre there', () => {
      for (const level of [0.15, 0.3, 0.45]) {
        const { volume, centre, ours } = both(level, 0, 0);
        expect(volume).toBeGreaterThan(0.05);
        expect(Math.abs(ours.volume / volume - 1)).toBeLessThan(1e-4);
        for (const axis of [0, 1, 2] as const)
          expect(Math.abs(ours.centre[axis] - centre[axis])).toBeLessThan(1e-4);
      }
    });

    it('does so under planes tilted at random', () => {
      fc.assert(
        fc.property(
          fc.double({ min: 0.2, max: 0.5, noNaN: true }),
          fc.double({ min: -60, max: 60, noNaN: true }),
          fc.double({ min: -6, max: 6, noNaN: true }),
          (level, heel, trim) => {
            const { volume, centre, ours } = both(level, heel * DEGREE, trim * DEGREE);
            fc.pre(volume > 0.02);
            expect(Math.abs(ours.volume / volume - 1)).toBeLessThan(1e-4);
            for (const axis of [0, 1, 2] as const)
              expect(Math.abs(ours.centre[axis] - centre[axis])).toBeLessThan(1e-4);
          },
        ),
        { numRuns: 60 },
      );
    });
  },
);

describe('a box in a hull', () => {
  it('is outside by the library where ours says that it stands out, and not where ours does not', () => {
    const [hull] = hulls;
    if (!hull) throw new Error('no hull');
    const { body } = hull;
    const open = solidOf(library, body.hull, 3);
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 3.5, noNaN: true }),
        fc.double({ min: -0.8, max: 0.8, noNaN: true }),
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        (x, y, z) => {
          const size = { length: metres(0.4), breadth: metres(0.3), height: metres(0.2) };
          const room = { at: { x: metres(x), y: metres(y), z: metres(z) }, size };
          const out = standsOut(body.hull, room);
          const share = shareOutside(library, open, room);
          // Ours looks at nine sections: a corner between two of them may be a little out.
          expect(out === 0 ? share < 0.01 : share > 0).toBe(true);
        },
      ),
      { numRuns: 100 },
    );
    open.delete();
  });

  it('of every order of the demonstration lies within its hull and the sides carried up', () => {
    const boxes = figured.flatMap(({ build, float }) => {
      const form = float.afloat?.body.hull;
      const rooms = build.items.flatMap((item) => roomOf(item) ?? []);
      return form ? [{ form, rooms }] : [];
    });
    const shares = boxes.flatMap(({ form, rooms }) => {
      const open = solidOf(library, form, 3);
      const found = rooms.map((room) => shareOutside(library, open, room));
      open.delete();
      return found;
    });
    expect(shares.length).toBeGreaterThan(20);
    expect(Math.max(...shares)).toBeLessThan(0.03);
  });
});
