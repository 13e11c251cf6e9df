import { kilograms, metres } from '../units/index.ts';
import type { GrowthAllowance, PointMass, WeightedCentre } from './types.ts';

/**
 * Mass that a boat puts on over its life, and where it lies: its own centre comes to lie higher by the rise.
 *
 * (M + m) (z + rise) = M z + m zm, so zm = z + rise (M + m) / m, with M and z the boat's mass and height of centre.
 *
 * @returns kg, in boat axes; nothing at its own centre where no growth is allowed for
 * @validity along and across it lies at its own centre: paint, repairs, water in fittings, gear that stays aboard
 * @source derived: first moments; an allowance as a share and a rise: common practice, no source
 */
export function growthOf(
  { mass, centre }: WeightedCentre,
  { share, rise }: GrowthAllowance,
): PointMass {
  if (!(share > 0)) return { mass: kilograms(0), at: centre };
  const above = rise * (1 + 1 / share);
  return { mass: kilograms(share * mass), at: { ...centre, z: metres(centre.z + above) } };
}
