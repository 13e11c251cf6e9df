import type { HullForm, WaterPlane } from './types.ts';
import { heightAbove, inWaterAxes, type WaterPoint } from './water-plane.ts';
import { metres } from '../units/index.ts';

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
