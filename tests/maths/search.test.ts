import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot, findSummit } from '../../src/maths/index.ts';

type Curve = (at: number) => number | undefined;

/** Searches between two arguments, with the values that the function has there. */
const search = (
  value: Curve,
  from: number,
  to: number,
  tolerance: { within: number; close?: number } = { within: 1e-12 },
) => findRoot(value, [from, value(from) ?? Number.NaN], [to, value(to) ?? Number.NaN], tolerance);

describe('the root finder', () => {
  it.each([
    ['a parabola', (x: number) => x ** 2 - 2, 0, 2, Math.SQRT2],
    ['the same from the other end', (x: number) => x ** 2 - 2, 2, 0, Math.SQRT2],
    ['a cosine', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    [
      'a function that is almost flat at one end',
      (x: number) => x ** 9 - 1e-3,
      0,
      1,
      10 ** (-1 / 3),
    ],
    ['a root at the first end', (x: number) => x, 0, 1, 0],
    ['a root at the second end', (x: number) => x, -1, 0, 0],
  ] as const)('finds the root of %s', (_, value, from, to, root) => {
    expect(search(value, from, to)).toEqual({ outcome: 'found', at: expect.closeTo(root, 11) });
  });

  it('finds where a cubic of any steepness passes any height', () => {
    const size = { noNaN: true, noDefaultInfinity: true };
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 1, ...size }),
        fc.double({ min: 0.01, max: 100, ...size }),
        (root, steep) => {
          const value = (x: number): number => steep * (x - root) * (1 + (x - root) ** 2);
          const found = search(value, -2, 3);
          expect(found).toEqual({ outcome: 'found', at: expect.closeTo(root, 9) });
        },
      ),
    );
  });

  it('is content with a value near enough to zero', () => {
    const found = search((x) => x ** 2 - 2, 0, 2, { within: 0, close: 0.1 });
    expect(found).toEqual({ outcome: 'found', at: expect.closeTo(Math.SQRT2, 1) });
    expect('at' in found && found.at).not.toBeCloseTo(Math.SQRT2, 6);
  });

  it('says that there is no root where the ends have one sign', () => {
    expect(search((x) => x ** 2 + 1, -1, 1)).toEqual({ outcome: 'no root' });
    expect(search((x) => -(x ** 2) - 1, -1, 1)).toEqual({ outcome: 'no root' });
    expect(search(() => Number.NaN, -1, 1)).toEqual({ outcome: 'no root' });
  });

  it.each([
    ['is undefined on the way', (x: number) => (Math.abs(x) < 1 ? undefined : x)],
    ['is not a number on the way', (x: number) => (Math.abs(x) < 1 ? Number.NaN : x)],
  ])('tells no root from a function that %s', (_, value) => {
    expect(search(value, -2, 3)).toEqual({ outcome: 'not converged' });
  });

  it('tells no root from a search that did not end', () => {
    const jump = (x: number): number => (x < Math.E ? -1 : 1);
    expect(search(jump, 0, 4, { within: 0 })).toEqual({ outcome: 'not converged' });
    expect(search(jump, 0, 4)).toEqual({ outcome: 'found', at: expect.closeTo(Math.E, 11) });
  });
});

describe('the search for a summit', () => {
  it('finds it within the tolerance, inside and at an end', () => {
    expect(Math.abs(findSummit(Math.sin, 0, 3, 1e-6) - Math.PI / 2)).toBeLessThan(1e-6);
    expect(Math.abs(findSummit((x) => x, 0, 3, 1e-6) - 3)).toBeLessThan(1e-6);
  });
});
