import type { HullShape, Station } from './types.ts';

/** A point of a line that runs along the hull, m. */
export interface CurvePoint {
  readonly x: number;
  readonly halfBreadth: number;
  readonly height: number;
}

export type Curve = readonly CurvePoint[];

export interface HullCurves {
  /** Keel and stem. */
  readonly keel: Curve;
  /** Empty when the stations do not have the same count of points. */
  readonly chines: readonly Curve[];
  readonly sheer: Curve;
}

/** Nearer than this is the same place: a millimetre. */
const SAME = 0.001;

/**
 * Lines along the hull through its stations, closed at the stem.
 *
 * Between the last station and the hull's length the stem rises straight from the keel to where the sheer, carried on
 * straight, comes to the centreline. A hull whose last station is at its full length keeps that station as a blunt bow.
 *
 * @returns curves from the transom forward, m
 * @source common practice, no source: the bow ahead of the last station is not in the lines and is sketched
 */
export function hullCurves({ lines, length }: HullShape): HullCurves {
  const stations = inOrder(lines);
  const counts = new Set(stations.map(({ points }) => points.length));
  const [count = 0] = counts;
  const chineCount = counts.size === 1 ? Math.max(count - 2, 0) : 0;
  const keel = stations.map((station) => pointAt(station, 0));
  const sheer = stations.map((station) => pointAt(station, -1));
  const chines = Array.from({ length: chineCount }, (_, chine) =>
    stations.map((station) => pointAt(station, chine + 1)),
  );
  const end = sheer.at(-1);
  if (!end || end.halfBreadth < SAME || length < end.x + SAME) return { keel, chines, sheer };
  const stem = { x: length, halfBreadth: 0, height: Math.max(heightAt(sheer, length), end.height) };
  return {
    keel: [...keel, stem],
    chines: chines.map((chine) => [...chine, meetStem(chine, keel, stem)]),
    sheer: [...sheer, stem],
  };
}

/** Stations from the transom forward, the first of each place. */
export function inOrder(lines: readonly Station[]): readonly Station[] {
  const sorted = lines.filter(({ points }) => points.length > 0).toSorted((a, b) => a.x - b.x);
  return sorted.filter((station, index) => {
    const before = sorted[index - 1];
    return !before || station.x - before.x >= SAME;
  });
}

function pointAt({ x, points }: Station, index: number): CurvePoint {
  const [halfBreadth, height] = points.at(index) ?? [0, 0];
  return { x, halfBreadth, height };
}

/** Height of a curve carried on straight beyond its last two points. */
function heightAt(curve: Curve, x: number): number {
  const [before, last] = curve.slice(-2);
  if (!before || !last) return before?.height ?? 0;
  return last.height + riseOf(before, last) * (x - last.x);
}

const riseOf = (from: CurvePoint, to: CurvePoint): number =>
  (to.height - from.height) / (to.x - from.x);

/** Where a chine, carried on straight in the side view, runs into the stem. */
function meetStem(chine: Curve, keel: Curve, stem: CurvePoint): CurvePoint {
  const [before, last] = chine.slice(-2);
  const foot = keel.at(-1);
  if (!before || !last || !foot) return stem;
  const stemRise = riseOf(foot, stem);
  const closing = stemRise - riseOf(before, last);
  const ahead = closing > 0 ? (last.height - foot.height) / closing : Infinity;
  if (ahead <= SAME || last.x + ahead > stem.x) return stem;
  return { x: last.x + ahead, halfBreadth: 0, height: foot.height + stemRise * ahead };
}
