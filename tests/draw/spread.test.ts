import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../src/draw/spread.ts';

describe('places along a line', () => {
  it('stay where they are when nothing is near', () => {
    expect(spread([10, 2, 6], 3, 0, 20)).toEqual([10, 2, 6]);
  });

  it('move apart about the middle of where they were', () => {
    expect(spread([5, 5], 2, 0, 20)).toEqual([4, 6]);
  });

  it('end at least a step apart, within the ends, in their order', () => {
    const places = fc.array(fc.double({ min: -5, max: 45, noNaN: true }), { maxLength: 12 });
    fc.assert(
      fc.property(places, (wanted) => {
        const moved = spread(wanted, 3, 0, 40);
        const sorted = moved.toSorted((a, b) => a - b);
        const gaps = sorted.slice(1).map((place, index) => place - (sorted[index] ?? 0));
        expect(Math.min(...gaps)).toBeGreaterThanOrEqual(3 - 1e-9);
        expect(Math.min(...moved)).toBeGreaterThanOrEqual(0);
        expect(moved.filter((place) => place > 40 + 1e-9)).toEqual([]);
        const inOrder = wanted.every((one, index) =>
          wanted.every((other, at) => one >= other || (moved[index] ?? 0) < (moved[at] ?? 0)),
        );
        expect(inOrder).toBe(true);
      }),
    );
  });
});
