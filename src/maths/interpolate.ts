import { clamp } from './numbers.ts';

/** A table: pairs of argument and value, arguments rising. */
export type Points = readonly (readonly [argument: number, value: number])[];

/** The value at a share of the way from one to another, exact at both; beyond 0 and 1 it goes on straight. */
export const lerp = (from: number, to: number, share: number): number =>
  share === 1 ? to : from + share * (to - from);

/**
 * The value of a table at an argument, on straight lines between its points.
 *
 * @param beyond - outside the table: the value of its end is `held`, or its last piece goes `straight on`; left out:
 * there is no value
 * @returns undefined outside the table, or NaN of an empty one where a value is always asked for
 * @source derived: linear interpolation
 */
export function interpolate(points: Points, at: number): number | undefined;
export function interpolate(points: Points, at: number, beyond: 'held' | 'straight on'): number;
export function interpolate(
  points: Points,
  at: number,
  beyond?: 'held' | 'straight on',
): number | undefined {
  const ahead = points.findIndex(([argument], index) => index > 0 && argument >= at);
  const end = ahead === -1 ? points.length - 1 : ahead;
  const to = points[end];
  const from = points[end - 1] ?? to;
  const isWithin = from !== undefined && to !== undefined && at >= from[0] && at <= to[0];
  if (!from || !to || (beyond === undefined && !isWithin)) return beyond && Number.NaN;
  const share = to[0] === from[0] ? 0 : (at - from[0]) / (to[0] - from[0]);
  return lerp(from[1], to[1], beyond === 'held' ? clamp(share, 0, 1) : share);
}

/** How far from either end of an interval of length 1 the two points of Gauss's rule lie; each has half the weight. */
export const GAUSS_INSET = 0.5 - Math.sqrt(1 / 12);

/**
 * Area under the straight lines through points, between two arguments; nothing is added outside the points.
 *
 * @returns argument times value; a piece that runs backwards is taken off
 * @source trapezium rule, exact for straight lines
 */
export function areaUnder(
  points: Points,
  from = Number.NEGATIVE_INFINITY,
  to = Number.POSITIVE_INFINITY,
): number {
  return points.reduce((area, [end, last], index) => {
    const [start, first] = points[index - 1] ?? [end, last];
    const [low, high] = [clamp(start, from, to), clamp(end, from, to)];
    if (low === high) return area;
    const at = (place: number): number => lerp(first, last, (place - start) / (end - start));
    return area + ((at(low) + at(high)) / 2) * (high - low);
  }, 0);
}
