import { describe, expect, it } from 'vitest';
import { hullCurves } from '../../src/draw/hull-curves.ts';
import { planView, sideView } from '../../src/draw/hull-views.ts';
import { COOT } from './invented-hull.ts';

const pairs = (svg: string): ReadonlySet<string> =>
  new Set(Array.from(svg.matchAll(/(-?[\d.]+),(-?[\d.]+)(?=[A-Z"])/g), ([, x, y]) => `${x},${y}`));

const tenfold = (metres: number): number => 10 * metres;
const upwards = (metres: number): number => 100 - 10 * metres;
const rounded = (value: number): number => Math.round(value * 100) / 100;

describe('the lines along a hull', () => {
  const curves = hullCurves(COOT);

  it('run through every point of sheer and keel in the side view', () => {
    const drawn = pairs(sideView(curves, tenfold, upwards));
    for (const { x, points } of COOT.lines) {
      for (const [, height] of [points[0], points.at(-1)].filter((point) => point !== undefined)) {
        expect(drawn).toContain(`${rounded(10 * x)},${rounded(upwards(height))}`);
      }
    }
  });

  it('run through every point of sheer and chine in the plan view, on both sides', () => {
    const drawn = pairs(planView(curves, tenfold, tenfold));
    for (const { x, points } of COOT.lines) {
      for (const [halfBreadth] of points.slice(1)) {
        expect(drawn).toContain(`${rounded(10 * x)},${rounded(10 * halfBreadth)}`);
        expect(drawn).toContain(`${rounded(10 * x)},${rounded(-10 * halfBreadth)}`);
      }
    }
  });

  it('meet on the centreline at the hull’s length', () => {
    const stem = { x: 4, halfBreadth: 0 };
    expect(curves.sheer.at(-1)).toMatchObject(stem);
    expect(curves.keel.at(-1)).toEqual(curves.sheer.at(-1));
    // Carried on straight: 0.77 m, rising 0.09 m in 0.8 m, 0.2 m farther.
    expect(curves.sheer.at(-1)?.height).toBeCloseTo(0.7925, 9);
  });

  it('bring the chine to the centreline on the stem, between the last station and the bow', () => {
    const end = curves.chines[0]?.at(-1);
    // Chine: 0.52 m, rising 0.25 a metre; stem: from 0.45 m, rising (0.7925 - 0.45) / 0.2 a metre.
    const ahead = (0.52 - 0.45) / (0.3425 / 0.2 - 0.25);
    expect(end?.x).toBeCloseTo(3.8 + ahead, 9);
    expect(end?.height).toBeCloseTo(0.52 + 0.25 * ahead, 9);
    expect(end?.halfBreadth).toBe(0);
  });

  it('leave a bow blunt that is a station of its own', () => {
    const pram = { ...COOT, length: 3.8 };
    expect(hullCurves(pram).sheer.at(-1)).toEqual({ x: 3.8, halfBreadth: 0.17, height: 0.77 });
  });

  it('are the same whatever the order of the stations, one given twice or not', () => {
    const [first] = COOT.lines;
    const shuffled = [...COOT.lines.toReversed(), ...(first ? [first] : [])];
    expect(hullCurves({ ...COOT, lines: shuffled })).toEqual(curves);
  });

  it('draw no chine when stations differ in their count of points', () => {
    const [first, ...others] = COOT.lines;
    const fewer = {
      x: 0,
      points: [first?.points[0] ?? [0, 0], first?.points[2] ?? [0, 0]] as const,
    };
    expect(hullCurves({ ...COOT, lines: [fewer, ...others] }).chines).toEqual([]);
  });
});
