import { lerp } from '../../maths/index.ts';
import type { HullForm } from '../types.ts';

/** The starboard half of a section, from the keel to where it is closed across. */
export interface HalfSection {
  readonly x: number;
  readonly points: readonly (readonly [halfBreadth: number, height: number])[];
}

/**
 * The closed form of half-sections that all have the same number of points, mirrored to port.
 *
 * @source derived: symmetry about the centreline
 */
export function formOf(sections: readonly HalfSection[]): HullForm {
  const half = sections[0]?.points.length ?? 0;
  const ring = 2 * half;
  const y = new Float64Array(sections.length * ring);
  const z = new Float64Array(sections.length * ring);
  sections.forEach(({ points }, station) => {
    const row = station * ring;
    points.forEach(([halfBreadth, height], index) => {
      y[row + index] = halfBreadth;
      z[row + index] = height;
      y[row + ring - 1 - index] = -halfBreadth;
      z[row + ring - 1 - index] = height;
    });
  });
  return { xs: Float64Array.from(sections, ({ x }) => x), ring, y, z };
}

/**
 * The starboard half of the section at any x within the form; undefined outside.
 *
 * @source derived: straight lines between neighbouring sections
 */
export function halfSectionAt(form: HullForm, x: number): HalfSection | undefined {
  const { xs, ring, y, z } = form;
  const ahead = xs.findIndex((place, index) => index > 0 && place >= x);
  if (ahead === -1 || x < (xs[0] ?? 0)) return undefined;
  const [from = 0, to = 0] = [xs[ahead - 1], xs[ahead]];
  const share = (x - from) / (to - from);
  const blend = (values: Float64Array, index: number): number =>
    lerp(values[(ahead - 1) * ring + index] ?? 0, values[ahead * ring + index] ?? 0, share);
  const points = Array.from(
    { length: ring / 2 },
    (_, index) => [blend(y, index), blend(z, index)] as const,
  );
  return { x, points };
}

/**
 * How far a form reaches: along, across, and above the baseline, m.
 *
 * @source derived: the furthest points
 */
export function boundsOf({ xs, y, z }: HullForm): {
  readonly length: number;
  readonly beam: number;
  readonly height: number;
} {
  let [halfBreadth, height] = [0, 0];
  for (const value of y) halfBreadth = Math.max(halfBreadth, value);
  for (const value of z) height = Math.max(height, value);
  return { length: (xs.at(-1) ?? 0) - (xs[0] ?? 0), beam: 2 * halfBreadth, height };
}
