import { lerp } from '../maths/index.ts';
import { metres } from '../units/index.ts';
import type { HullForm, WaterPlane } from './types.ts';
import { heightAbove, inWaterAxes, type WaterPoint } from './water-plane.ts';

/** A corner of the form, with its height above the water. */
export interface Corner extends WaterPoint {
  readonly above: number;
}

/**
 * The corners of each section, station after station, as the water sees them.
 *
 * @source derived: rotation into the axes of the water
 */
export function cornersOf(form: HullForm, plane: WaterPlane): readonly (readonly Corner[])[] {
  return Array.from(form.xs, (x, station) =>
    Array.from({ length: form.ring }, (_, index) => {
      const at = station * form.ring + index;
      const point = { x: metres(x), y: metres(form.y[at] ?? 0), z: metres(form.z[at] ?? 0) };
      return { ...inWaterAxes(plane, point), above: heightAbove(plane, point) };
    }),
  );
}

/**
 * Area of the largest immersed section at a station, m2, square to the keel.
 *
 * @source derived: Green's theorem on the clipped polygon
 */
export function largestSection(form: HullForm, plane: WaterPlane): number {
  return Math.max(...cornersOf(form, plane).map((row) => immersedArea(row, plane)));
}

/**
 * Immersed area of one section, m2, square to the keel.
 *
 * @source derived: Green's theorem on the clipped polygon; the height above the water is foreshortened by
 * the trim
 */
export function immersedArea(row: readonly Corner[], { trim }: WaterPlane): number {
  let area = 0;
  row.forEach((corner, index) => {
    const [from, to] = clipEdge(corner, row[(index + 1) % row.length] ?? corner);
    area += (from.across * to.above - to.across * from.above) / 2;
  });
  return area / Math.cos(trim);
}

/**
 * Where an edge passes the surface; undefined when it does not, or there is no other end.
 *
 * @source derived: straight between its ends
 */
export function surfacing(from: Corner, to: Corner | undefined): Corner | undefined {
  if (!to || from.above < 0 === to.above < 0) return undefined;
  const share = from.above / (from.above - to.above);
  const [along, across] = [lerp(from.along, to.along, share), lerp(from.across, to.across, share)];
  return { ...from, along, across, above: 0 };
}

function clipEdge(from: Corner, to: Corner): readonly [Corner, Corner] {
  const cut = surfacing(from, to);
  if (!cut) return from.above < 0 ? [from, to] : [from, from];
  return from.above < 0 ? [from, cut] : [cut, to];
}
