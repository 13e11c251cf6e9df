import { CROUCH_CONSTANTS, crouchSpeed } from '../drive/index.ts';
import { kilograms, type MetresPerSecond, UNIT_KINDS } from '../units/index.ts';
import type { Figures } from './types.ts';

/** Speed in knots over the root of the length in feet from which the formula holds. */
const PLANES_FROM = 3;

/**
 * Full speed with everyone aboard, for holding one boat against another.
 *
 * @returns undefined without an outboard, and below planing speed, where the formula says nothing
 * @validity planing hulls only
 * @source Crouch's formula with the constant of an average runabout; planing from V / √L of 3, knots and feet
 */
export function planingSpeed({
  build,
  mass,
}: Pick<Figures, 'build' | 'mass'>): MetresPerSecond | undefined {
  const { outboard, order, yard, hull } = build;
  if (!outboard) return undefined;
  const aboard = order.boat.people * (yard.personMass + yard.gearPerPerson);
  const loaded = kilograms(mass.ready.mass + aboard);
  const speed = crouchSpeed(CROUCH_CONSTANTS.runabout, outboard.model.power, loaded);
  const feet = hull.dimensions.length / UNIT_KINDS.length.ft;
  return speed / UNIT_KINDS.speed.kn / Math.sqrt(feet) < PLANES_FROM ? undefined : speed;
}
