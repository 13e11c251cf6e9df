import { metres, type Metres, type Point3 } from '../units/index.ts';
import type { WaterPlane } from './types.ts';

/**
 * Height of a point above the water, square to the surface, m; below zero when it is under water.
 *
 * @source derived: n = (sin t, -sin h cos t, cos h cos t) points up when it trims by t and heels by h; the
 * height is n . r - level
 */
export function heightAbove({ level, trim, heel }: WaterPlane, { x, y, z }: Point3): Metres {
  const upright = z * Math.cos(heel) - y * Math.sin(heel);
  return metres(x * Math.sin(trim) + upright * Math.cos(trim) - level);
}

/** A point in axes of the water: along the keel's projection, to starboard, and up; from the same origin. */
export interface WaterPoint {
  readonly along: number;
  readonly across: number;
  readonly up: number;
}

/**
 * A point of the boat in the axes of the water, m.
 *
 * @source derived: rotation by heel about the keel, then by trim about the horizontal athwartships
 */
export function inWaterAxes({ trim, heel }: WaterPlane, { x, y, z }: Point3): WaterPoint {
  const across = y * Math.cos(heel) + z * Math.sin(heel);
  const upright = z * Math.cos(heel) - y * Math.sin(heel);
  return {
    along: x * Math.cos(trim) - upright * Math.sin(trim),
    across,
    up: x * Math.sin(trim) + upright * Math.cos(trim),
  };
}

/**
 * A point given in the axes of the water, in the axes of the boat, m.
 *
 * @source derived: the inverse rotation of `inWaterAxes`
 */
export function inBoatAxes({ trim, heel }: WaterPlane, point: WaterPoint): Point3 {
  const upright = point.up * Math.cos(trim) - point.along * Math.sin(trim);
  return {
    x: metres(point.along * Math.cos(trim) + point.up * Math.sin(trim)),
    y: metres(point.across * Math.cos(heel) - upright * Math.sin(heel)),
    z: metres(upright * Math.cos(heel) + point.across * Math.sin(heel)),
  };
}
