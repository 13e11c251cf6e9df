import { describe, expect, it } from 'vitest';
import {
  buildHull,
  endsOf,
  findEquilibrium,
  hydrostatics,
  linesSpread,
} from '../../src/float/index.ts';
import { afloat, box, formOf, linesOf, loadAt, plane } from './boats.ts';

type Half = readonly (readonly [number, number])[];

/** A flat bottom `rise` up, sides to 0.8 m. */
const flat = (half: number, rise = 0): Half => [
  [0, rise],
  [half, rise],
  [half, 0.8],
];
const between = (way: 'straight' | 'curved', rows: readonly (readonly [number, Half])[]) =>
  linesOf(rows, { between: way });
const hullOf = (rows: readonly (readonly [number, Half])[]) =>
  formOf(buildHull(between('straight', rows)));

describe('what the water meets at the ends', () => {
  it('is the transom below it, and nothing between sides that do not close', () => {
    const ends = endsOf(box(5, 2, 0.8).hull, plane(0.3));
    expect(ends?.transom).toBeCloseTo(0.6, 12);
    expect(ends?.entrance).toBeCloseTo(0, 12);
    expect(endsOf(box(5, 2, 0.8).hull, plane(-0.1))).toBeUndefined();
  });

  it('is the slope of the sides over the foremost tenth where they close', () => {
    const ends = endsOf(
      hullOf([
        [0, flat(1)],
        [2.5, flat(0.6)],
        [5, flat(0.2)],
      ]),
      plane(0.3),
    );
    expect(ends?.transom).toBeCloseTo(0.6, 12);
    expect(ends?.entrance).toBeCloseTo(Math.atan(0.8 / 5), 9);
  });

  it('ends the waterline where the keel rises out of it', () => {
    // The bottom passes the water at 4.5 m, between sides of 0.6 m: a blunt end, whose tenth begins at 4.05 m.
    const ends = endsOf(
      hullOf([
        [0, flat(1)],
        [4, flat(1)],
        [5, flat(0.2, 0.6)],
      ]),
      plane(0.3),
    );
    expect(ends?.entrance).toBeCloseTo(Math.atan(0.96 / 0.45), 2);
  });
});

describe('the same sections with other lines between them', () => {
  const FULL = [
    [0, flat(0.9)],
    [1.25, flat(1)],
    [2.5, flat(1)],
    [3.75, flat(0.85)],
    [5, flat(0.4)],
  ] as const;
  const load = loadAt(2400, 2.35, 0, 0.4);
  const spreadOf = (rows: typeof FULL, way: 'straight' | 'curved') => {
    const lines = between(way, rows);
    const body = afloat(formOf(buildHull(lines)));
    const rest = findEquilibrium(body, load);
    if (rest.outcome !== 'floats') throw new Error(rest.outcome);
    const openings = [{ name: 'rim', at: loadAt(0, 0, 0, 0.5).centre }];
    return {
      body,
      at: rest.plane,
      spread: linesSpread(lines, body, { load, plane: rest.plane, openings }),
    };
  };

  it('displace as much more as the other form at the same waterline, and lie as much higher', () => {
    const { body, at, spread } = spreadOf(FULL, 'straight');
    const curved = afloat(formOf(buildHull(between('curved', FULL))));
    const [here, there] = [body, curved].map((one) => hydrostatics(one, at)?.volume ?? 0);
    expect(spread?.other).toBe('curved');
    expect(spread?.displacement).toBeCloseTo(((there ?? 0) - (here ?? 0)) * 1025, 6);
    expect(spread?.share).toBeCloseTo((there ?? 0) / (here ?? 1) - 1, 9);
    expect(spread?.share).toBeGreaterThan(0.002);
    const rest = findEquilibrium(curved, load);
    const rim = (lies: typeof at): number => 0.5 * Math.cos(lies.trim) - lies.level;
    expect(spread?.freeboard).toBeCloseTo(
      rest.outcome === 'floats' ? rim(rest.plane) - rim(at) : Number.NaN,
      6,
    );
  });

  it('are told the other way about for curved lines, with the other sign', () => {
    const { spread } = spreadOf(FULL, 'curved');
    expect(spread?.other).toBe('straight');
    expect(spread?.share).toBeLessThan(-0.002);
  });
});
