import { DEGREE, type Radians, radians } from '../units/index.ts';
import type { Computed } from './types.ts';

/** Deadrise in degrees, and √(CLβ/2), that the regression is taken to hold for (from memory, rounded). */
const DEADRISES = { least: 5, greatest: 25 };
const LOADINGS = { least: 0.13, greatest: 0.36 };
/** A trillionth of slack for what arithmetic leaves behind. */
const SLACK = 1e-12;

/**
 * The trim above which a planing hull begins to porpoise,
 * τ = 0.1197 β^0.7651 exp(15.7132 √(CLβ/2) β^-0.2629), τ and β in degrees.
 *
 * @param lift - CLβ of the hull on the square of its beam
 * @param deadrise - β
 * @returns the trim; `notComputed` outside the range of the regression, as a very lightly loaded hull is
 * @validity 5° <= β <= 25°, 0.13 <= √(CLβ/2) <= 0.36; a prismatic hull in calm water
 * @source Celano, The prediction of porpoising inception for modern planing craft, US Naval Academy, Trident Scholar
 * report, 1998: regression through model tests (formula from memory)
 */
export function porpoisingTrim(lift: number, deadrise: Radians): Computed<Radians> {
  const loading = Math.sqrt(lift / 2);
  const degrees = deadrise / DEGREE;
  if (!isWithin(loading, LOADINGS)) {
    return {
      notComputed: 'the square root of CL/2 is outside 0.13 to 0.36, the range of the regression',
    };
  }
  if (!isWithin(degrees, DEADRISES)) {
    return { notComputed: 'the deadrise is outside 5° to 25°, the range of the regression' };
  }
  const limit = 0.1197 * degrees ** 0.7651 * Math.exp(15.7132 * loading * degrees ** -0.2629);
  return radians(limit * DEGREE);
}

const isWithin = (
  value: number,
  { least, greatest }: { readonly least: number; readonly greatest: number },
): boolean => value >= least - SLACK && value <= greatest + SLACK;
