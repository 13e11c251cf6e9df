import type { Hull } from '../schema/index.ts';
import { metres, type Point3 } from '../units/index.ts';
import type { BuildItem } from './build.ts';
import { placeInHull } from './hull-coordinates.ts';

/** Where the fuel is, boat axes: in the tanks that are ordered, several filled alike, else where the hull file says. */
export function fuelPlace(items: readonly BuildItem[], hull: Hull): Point3 {
  const tanks = items.flatMap(({ float, at, quantity }) =>
    float?.fuelTank === undefined ? [] : [{ at, holds: float.fuelTank * quantity }],
  );
  const whole = tanks.reduce((sum, { holds }) => sum + holds, 0);
  if (whole === 0) return placeInHull(hull.tank, hull.dimensions);
  const along = (axis: keyof Point3) =>
    metres(tanks.reduce((sum, { at, holds }) => sum + at[axis] * holds, 0) / whole);
  return { x: along('x'), y: along('y'), z: along('z') };
}
