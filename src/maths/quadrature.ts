import { lerp, type Points } from './interpolate.ts';
import { clamp } from './numbers.ts';

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
