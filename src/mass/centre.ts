import { kilograms, type Kilograms, metres, type Point3 } from '../units/index.ts';
import type { PointMass, WeightedCentre } from './types.ts';

/**
 * Total mass and its centre; no mass at all gives 0 kg at the origin.
 *
 * @source derived: first moments about the boat's axes
 */
export function centreOf(masses: readonly PointMass[]): WeightedCentre {
  const total = sumMass(masses);
  if (total === 0) return { mass: total, centre: { x: metres(0), y: metres(0), z: metres(0) } };
  const along = (axis: keyof Point3) =>
    metres(masses.reduce((moment, { mass, at }) => moment + mass * at[axis], 0) / total);
  return { mass: total, centre: { x: along('x'), y: along('y'), z: along('z') } };
}

/**
 * All masses together, kg.
 *
 * @source derived: a sum
 */
export function sumMass(masses: readonly { readonly mass: Kilograms }[]): Kilograms {
  return kilograms(masses.reduce((total, { mass }) => total + mass, 0));
}
