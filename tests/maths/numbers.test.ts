import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaUnder,
  clamp,
  interpolate,
  lerp,
  solveSpd,
  wholeDown,
  wholeUp,
} from '../../src/maths/index.ts';

const TABLE = [
  [1, 10],
  [2, 30],
  [4, 20],
] as const;

const number = fc.double({ min: -100, max: 100, noNaN: true });

describe('interpolation', () => {
  it('goes straight between points and gives their own values at them', () => {
    expect(TABLE.map(([at]) => interpolate(TABLE, at))).toEqual([10, 30, 20]);
    expect(interpolate(TABLE, 1.5)).toBe(20);
    expect(interpolate(TABLE, 3.5)).toBe(22.5);
  });

  it('has no value just outside the table, unless it is asked for one', () => {
    expect(interpolate(TABLE, 0.999)).toBeUndefined();
    expect(interpolate(TABLE, 4.001)).toBeUndefined();
    expect(interpolate(TABLE, Number.NaN)).toBeUndefined();
    expect(interpolate(TABLE, 0, 'held')).toBe(10);
    expect(interpolate(TABLE, 6, 'held')).toBe(20);
    expect(interpolate(TABLE, 0, 'straight on')).toBe(-10);
    expect(interpolate(TABLE, 6, 'straight on')).toBe(10);
  });

  it('takes a table of one point, of none, and two values at one argument', () => {
    expect(interpolate([[1, 5]], 1)).toBe(5);
    expect(interpolate([[1, 5]], 3, 'held')).toBe(5);
    expect(interpolate([], 3)).toBeUndefined();
    expect(interpolate([], 3, 'held')).toBeNaN();
    const step = [
      [0, 1],
      [0, 2],
      [1, 3],
    ] as const;
    expect(interpolate(step, 0)).toBe(1);
    expect(interpolate(step, 0.5)).toBe(2.5);
  });

  it('is exact at both ends of a piece', () => {
    fc.assert(
      fc.property(number, number, (from, to) => {
        expect([lerp(from, to, 0), lerp(from, to, 1)]).toEqual([from, to]);
      }),
    );
  });
});

describe('the area under points', () => {
  it('is that of the trapezia', () => {
    expect(areaUnder(TABLE)).toBe(20 + 50);
    expect(areaUnder(TABLE, 1.5, 3)).toBe(12.5 + 27.5);
    expect(areaUnder(TABLE, -5, 1)).toBe(0);
    expect(areaUnder([])).toBe(0);
  });

  it('takes off a piece that runs backwards', () => {
    const back = [...TABLE, [3, 20]] as const;
    expect(areaUnder(back)).toBe(20 + 50 - 20);
  });

  it('adds up, wherever it is cut', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 4, noNaN: true }), (cut) => {
        expect(areaUnder(TABLE, 1, cut) + areaUnder(TABLE, cut, 4)).toBeCloseTo(70, 9);
      }),
    );
  });
});

describe('whole numbers', () => {
  it('forgive what binary fractions leave behind, and no more', () => {
    expect([wholeUp(0.1 * 3 * 10), wholeUp(3.00001), wholeUp(2.99999)]).toEqual([3, 4, 3]);
    expect([wholeDown(0.7 * 10), wholeDown(6.99999), wholeDown(7.00001)]).toEqual([7, 6, 7]);
    expect([Math.ceil(0.1 * 3 * 10), Math.floor(4.35 * 100)]).toEqual([4, 434]);
    expect(wholeDown(4.35 * 100)).toBe(435);
  });

  it('keep a value between bounds', () => {
    expect([clamp(-1, 0, 2), clamp(1, 0, 2), clamp(3, 0, 2)]).toEqual([0, 1, 2]);
    expect(clamp(1, 2, 0)).toBe(2);
  });
});

describe('three equations', () => {
  it('are solved for any matrix L L′ with a firm diagonal', () => {
    const six = fc.tuple(number, number, number, number, number, number);
    fc.assert(
      fc.property(six, fc.tuple(number, number, number), ([l, m, n, p, q, r], wanted) => {
        const [a, d, f] = [Math.abs(l) + 1, Math.abs(m) + 1, Math.abs(n) + 1];
        const [b, c, e] = [p / 100, q / 100, r / 100];
        const rows = [
          [a * a, a * b, a * c],
          [a * b, b * b + d * d, b * c + d * e],
          [a * c, b * c + d * e, c * c + e * e + f * f],
        ] as const;
        const [x, y, z] = wanted;
        const of = ([one, two, three]: readonly [number, number, number]): number =>
          one * x + two * y + three * z;
        const solved = solveSpd(
          [rows[0][0], rows[0][1], rows[0][2], rows[1][1], rows[1][2], rows[2][2]],
          [of(rows[0]), of(rows[1]), of(rows[2])],
          [1, 1, 1],
        );
        wanted.forEach((value, index) => expect(solved?.[index]).toBeCloseTo(value, 6));
      }),
    );
  });

  it('are not solved where the matrix is not positive definite', () => {
    const one = [1, 1, 1] as const;
    expect(solveSpd([1, 0, 0, 1, 0, 1], one, one)).toEqual([1, 1, 1]);
    expect(solveSpd([-1, 0, 0, 1, 0, 1], one, one)).toBeUndefined();
    expect(solveSpd([1, 1, 0, 1, 0, 1], one, one)).toBeUndefined();
    expect(solveSpd([1, 0, 0, 1, 1, 1], one, one)).toBeUndefined();
    expect(solveSpd([1, 0, 0, 1, 0, 1], one, [1, 1, 1e12])).toBeUndefined();
  });
});
