import { kilograms, type Kilograms, metres, type Point3 } from '../units/index.ts';
import type { Load } from './types.ts';

/** A mass and where it is. */
export interface PointMass {
  readonly mass: Kilograms;
  readonly at: Point3;
}

/**
 * A load with further masses on it; those below zero are taken away.
 *
 * @source derived: first moments; nothing at all gives 0 kg at the origin
 */
export function withMasses(load: Load, added: readonly PointMass[]): Load {
  const all = [{ mass: load.mass, at: load.centre }, ...added];
  const mass = all.reduce((sum, one) => sum + one.mass, 0);
  const along = (axis: keyof Point3) =>
    metres(mass === 0 ? 0 : all.reduce((sum, one) => sum + one.mass * one.at[axis], 0) / mass);
  return { mass: kilograms(mass), centre: { x: along('x'), y: along('y'), z: along('z') } };
}
