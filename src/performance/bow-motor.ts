import {
  AIR_DENSITY,
  type MetresPerSecond,
  type Newtons,
  newtons,
  type SquareMetres,
} from '../units/index.ts';
import { ittc57 } from './drag.ts';
import type { Computed, Water } from './types.ts';

export interface Holding {
  /** Area of the boat and the people above the water, seen from ahead and from the side. */
  readonly windage: { readonly front: SquareMetres; readonly side: SquareMetres };
  /** Area of the hull under water: wetted surface, and the part of the transom that is in it. */
  readonly immersed: { readonly surface: SquareMetres; readonly transom: SquareMetres };
  /** Waterline length, m. */
  readonly length: number;
  readonly water: Water;
  readonly wind: MetresPerSecond;
  readonly current: MetresPerSecond;
  /** Angle in radians that it sheers off the wind while it is held by the bow; common practice, no source: 20°. */
  readonly sheer?: number;
}

/** Drag coefficients of a small open boat; common practice, no source. */
const WINDAGE = 0.9;
const TRANSOM = 0.6;
const FORM = 1.3;
/** Gusts are stronger than the mean wind that people name; on force; common practice, no source. */
const GUST = 1.5;

export interface HoldingForce {
  readonly wind: Newtons;
  readonly current: Newtons;
  /** What the motor must push with: gusts and current from the same side. */
  readonly needed: Newtons;
}

/**
 * Thrust that a bow motor needs to hold the boat on the spot against wind and current from the same side.
 *
 * Wind: ½ρ Cd A V², A as seen at the angle it sheers to, times a factor for gusts. Current: friction of the wetted
 * surface by ITTC-57 with a form factor, and the drag of the immersed transom.
 *
 * @returns forces, N; `notComputed` for what is not a number
 * @validity current below 1.5 m/s, where a small hull makes hardly any waves; no waves from outside
 * @source derived, with coefficients of common practice, no source: estimated, verify by trial
 */
export function holdingForce(holding: Holding): Computed<HoldingForce> {
  const { windage, immersed, length, water, wind, current } = holding;
  const sheer = holding.sheer ?? Math.PI / 9;
  if (!(length > 0) || !(wind >= 0) || !(current >= 0)) {
    return { notComputed: 'length must be above 0, wind and current 0 or more' };
  }
  if (current > 1.5) {
    return { notComputed: 'the current is above 1.5 m/s, where waves of the hull’s own begin' };
  }
  const seen = windage.front * Math.cos(sheer) + windage.side * Math.sin(sheer);
  const ofWind = 0.5 * AIR_DENSITY * WINDAGE * seen * wind ** 2;
  const ofCurrent = currentForce(immersed, length, water, current);
  if (!Number.isFinite(ofWind + ofCurrent)) return { notComputed: 'an area is not a number' };
  return {
    wind: newtons(ofWind),
    current: newtons(ofCurrent),
    needed: newtons(ofWind * GUST + ofCurrent),
  };
}

function currentForce(
  { surface, transom }: Holding['immersed'],
  length: number,
  water: Water,
  current: number,
): number {
  // The friction line has no meaning for the almost still water below this.
  const reynolds = Math.max((current * length) / water.viscosity, 1e5);
  const drag = surface * ittc57(reynolds) * FORM + transom * TRANSOM;
  return 0.5 * water.density * current ** 2 * drag;
}

export interface ElectricMotor {
  /** Thrust at full power, boat standing still. */
  readonly thrust: Newtons;
  /** Current it draws then, A. */
  readonly current: number;
}

/** How long a battery holds the boat, and with what in hand. */
export interface HoldingTime {
  /** Share of the motor's thrust that is used, 0 to 1. */
  readonly share: number;
  /** Mean current, A. */
  readonly current: number;
  readonly hours: number;
}

/**
 * Hours that a battery holds the boat for.
 *
 * The power of a propeller at a standstill goes with thrust to the power 1.5, and so does the current at one voltage.
 *
 * @param needed - thrust, N, above 0
 * @param usable - charge that may be drawn at about that current, A·h: the battery's rule for depth and rate is the
 * caller's
 * @returns `notComputed` when the motor is too weak
 * @source derived: momentum theory of the ideal propeller at zero speed, P = T^1.5 / √(2 ρ A)
 */
export function holdingTime(
  needed: Newtons,
  motor: ElectricMotor,
  usable: number,
): Computed<HoldingTime> {
  if (!(needed > 0)) return { notComputed: 'nothing has to be held against' };
  const share = needed / motor.thrust;
  if (!(motor.current > 0 && usable >= 0)) {
    return { notComputed: 'the motor draws no current, or the battery holds none' };
  }
  if (!(share <= 1)) return { notComputed: 'the motor’s full thrust is less than what is needed' };
  const current = motor.current * share ** 1.5;
  return { share, current, hours: usable / current };
}
