import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatArea } from '../../src/laminate/index.ts';
import { metres, type Station } from '../../src/units/index.ts';

/** A wedge 4 m long: a V of 45 degrees to 1 m of half-breadth, drawn in evenly to a point at the bow. */
const wedge = (stations: number): readonly Station[] =>
  Array.from({ length: stations + 1 }, (_, index) => {
    const half = 1 - index / stations;
    return {
      x: metres((4 * index) / stations),
      points: [
        [metres(0), metres(0)],
        [metres(half), metres(1)],
      ],
    };
  });
const flat = (from: number, to: number, height?: number) => ({
  from: metres(from),
  to: metres(to),
  ...(height !== undefined && { height: metres(height) }),
});

describe('the area of a floor', () => {
  it('is that of the triangle that the wedge is at the sheer, and as wide as she is high up below it', () => {
    // Seen from above a triangle of 2 m by 4 m; at half the height every half-breadth is half as much.
    expect(flatArea(wedge(8), flat(0, 4))).toBeCloseTo(4, 9);
    expect(flatArea(wedge(8), flat(0, 4, 0.5))).toBeCloseTo(2, 9);
    // The aft half of the triangle: a trapezium of 2 m and 1 m over 2 m.
    expect(flatArea(wedge(8), flat(0, 2))).toBeCloseTo(3, 9);
  });

  it('does not change with sections between, nor with where it is cut in two', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 3.9, noNaN: true }), (cut) => {
        const part = (from: number, to: number): number =>
          flatArea(wedge(5), flat(from, to, 0.7)) as number;
        expect(part(0, cut) + part(cut, 4)).toBeCloseTo(part(0, 4), 9);
      }),
    );
  });

  it('ends where the keel rises through it', () => {
    const rising = wedge(4).map(({ x, points }) => ({
      x,
      points: points.map(([half, z]) => [half, metres(z + (x > 2 ? 0.6 : 0))] as const),
    }));
    // Half-breadths at 0.5 m: 0.5, 0.375, 0.25, then nothing at 3 m and 4 m.
    expect(flatArea(rising, flat(0, 4, 0.5))).toBeCloseTo(2 * (0.4375 + 0.3125 + 0.125), 9);
  });

  it('is refused above the sheer and beyond the sections, and not just inside', () => {
    expect(flatArea(wedge(4), flat(0, 4, 1.001))).toEqual({
      notComputed: 'it stands above the sheer',
    });
    expect(flatArea(wedge(4), flat(0, 4, 0.999))).toBeGreaterThan(3.9);
    for (const [from, to] of [
      [-0.1, 2],
      [0, 4.1],
      [2, 2],
    ] as const) {
      expect(flatArea(wedge(4), flat(from, to))).toHaveProperty('notComputed');
    }
    expect(flatArea([], flat(0, 1))).toHaveProperty('notComputed');
  });
});
