import {
  HORSEPOWER,
  type Kilograms,
  type MetresPerSecond,
  metresPerSecond,
  POUND,
  UNIT_KINDS,
  type Watts,
} from '../units/index.ts';

/** Kinds of hull that Crouch's constant is given for. */
export type CrouchHull = 'runabout' | 'fast runabout' | 'race boat' | 'three-point hydroplane';

/**
 * Crouch's constant by kind of hull, for speed in statute miles an hour.
 *
 * 172, 218, 240 and 253 as attributed to G. Crouch wherever his formula is taught; the same table in knots (150, 190,
 * 210, 220) stands in Gerr, Propeller Handbook (from memory).
 */
export const CROUCH_CONSTANTS: Readonly<Record<CrouchHull, number>> = {
  runabout: 172,
  'fast runabout': 218,
  'race boat': 240,
  'three-point hydroplane': 253,
};

/**
 * Speed of a planing boat by Crouch's formula, V = C √(P / W).
 *
 * @param constant - C for V in statute miles an hour, P in horsepower and W in pounds
 * @param power - P at the propeller shaft
 * @param mass - W, of all that moves
 * @returns V; 0 without power or mass
 * @validity planing hulls only; the constant carries the whole of the hull and the drive, so a check, not a method
 * @source G. Crouch, as given in Gerr, Propeller Handbook (from memory)
 */
export function crouchSpeed(constant: number, power: Watts, mass: Kilograms): MetresPerSecond {
  if (!(power > 0 && mass > 0)) return metresPerSecond(0);
  const horsepower = power / HORSEPOWER;
  const pounds = mass / POUND;
  return metresPerSecond(constant * Math.sqrt(horsepower / pounds) * UNIT_KINDS.speed.mph);
}

/**
 * The constant that a speed stands for: what Crouch's formula would have to use to give it.
 *
 * @source as `crouchSpeed`, solved for C
 */
export function crouchConstant(speed: MetresPerSecond, power: Watts, mass: Kilograms): number {
  const one = crouchSpeed(1, power, mass);
  return one > 0 ? speed / one : 0;
}
