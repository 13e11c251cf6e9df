import { type KilogramsPerCubicMetre, metres, type Metres } from '../units/index.ts';
import type { Load } from './types.ts';

/** A tank that is neither empty nor full, as a box seen from above. */
export interface FreeSurface {
  readonly length: Metres;
  readonly breadth: Metres;
  readonly density: KilogramsPerCubicMetre;
  /** Equal compartments side by side. */
  readonly compartments: number;
}

/**
 * Moment of transference of free surfaces, kg.m: density times the second moment of each surface about its
 * own middle. Divided by the mass of the boat it is the virtual rise of its centre of mass.
 *
 * @validity small heels and a tank that is not nearly full or empty; not the true slosh, which is less then
 * @source derived: i = l b3 / 12 for each compartment
 */
export function freeSurfaceMoment(surfaces: readonly FreeSurface[]): number {
  return surfaces.reduce((sum, { length, breadth, density, compartments }) => {
    const each = breadth / compartments;
    return sum + (density * compartments * length * each ** 3) / 12;
  }, 0);
}

/**
 * The load with its centre as high as the boat feels it: what moves in its tanks acts as if all weight stood higher.
 *
 * @param moment - of transference, kg.m
 * @validity at any heel, a little unfavourable beyond small ones: a surface that reaches a corner of its tank moves less
 * @source derived: the moment of the surface goes with the sine of the heel, as that of a rise of moment / mass
 */
export function raisedByFreeSurface({ mass, centre }: Load, moment: number): Load {
  if (!(mass > 0)) return { mass, centre };
  return { mass, centre: { ...centre, z: metres(centre.z + moment / mass) } };
}

/**
 * What is aboard as the boat feels it: with the free surfaces of its tanks.
 *
 * @source derived: a sum
 */
export const felt = ({
  mass,
  centre,
  masses,
}: Load & { readonly masses: readonly { readonly surface?: FreeSurface }[] }): Load =>
  raisedByFreeSurface(
    { mass, centre },
    freeSurfaceMoment(masses.flatMap(({ surface }) => surface ?? [])),
  );
