import { clamp } from '../../maths/index.ts';

/** A value along the boat. */
export type Lengthwise = (x: number) => number;

/**
 * A curve through values given at increasing places, with the slope at each of the parabola through it and
 * its neighbours; straight when there are two. Beyond the ends it goes on as its last piece.
 *
 * @source derived: cubic Hermite interpolation with three-point slopes; exact for parabolas
 */
export function curveThrough(xs: readonly number[], values: readonly number[]): Lengthwise {
  const slopes = xs.map((_, index) => slopeAt(xs, values, index));
  return (x) => {
    const following = xs.findIndex((place, index) => index > 0 && place >= x);
    const end = following === -1 ? xs.length - 1 : following;
    const [from = 0, to = 0] = [xs[end - 1], xs[end]];
    const [start = 0, stop = 0] = [values[end - 1], values[end]];
    const [leaving = 0, arriving = 0] = [slopes[end - 1], slopes[end]];
    const length = to - from;
    const share = (x - from) / length;
    const rest = 1 - share;
    return (
      start * (1 + 2 * share) * rest * rest +
      stop * (3 - 2 * share) * share * share +
      length * share * rest * (leaving * rest - arriving * share)
    );
  };
}

function slopeAt(xs: readonly number[], values: readonly number[], index: number): number {
  if (xs.length < 3) return secant(xs, values, 0);
  const middle = clamp(index, 1, xs.length - 2);
  const [before, after] = [secant(xs, values, middle - 1), secant(xs, values, middle)];
  const [back = 0, here = 0, ahead = 0] = xs.slice(middle - 1, middle + 2);
  const bend = (after - before) / (ahead - back);
  return before + bend * (2 * (xs[index] ?? 0) - back - here);
}

function secant(xs: readonly number[], values: readonly number[], index: number): number {
  const [from = 0, to = 0] = [xs[index], xs[index + 1]];
  const [start = 0, stop = 0] = [values[index], values[index + 1]];
  return (stop - start) / (to - from);
}
