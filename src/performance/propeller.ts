import { type Metres, metres, type MetresPerSecond } from '../units/index.ts';
import type { Computed } from './types.ts';

export interface Gearing {
  /** Turns of the engine for one of the propeller. */
  readonly ratio: number;
  /** Share of the pitch that is lost, 0 to less than 1; 0.10 to 0.20 on a planing boat is common practice, no source. */
  readonly slip: number;
}

const isSound = ({ ratio, slip }: Gearing): boolean => ratio > 0 && slip >= 0 && slip < 1;
const UNSOUND =
  'gear ratio, pitch and engine speed must be above 0, the slip from 0 to less than 1';

/**
 * Pitch that takes a boat to a speed at an engine speed, p = V / (n (1 - s)), n the turns of the propeller a second.
 *
 * @param speed - V
 * @param turns - engine speed, rev/min
 * @returns p, m
 * @validity a stated slip, not a computed one; the propeller's load and cavitation are not looked at
 * @source derived: definition of apparent slip
 */
export function pitchFor(
  speed: MetresPerSecond,
  turns: number,
  gearing: Gearing,
): Computed<Metres> {
  if (!isSound(gearing) || !(turns > 0) || !(speed >= 0)) return { notComputed: UNSOUND };
  return metres(speed / ((turns / 60 / gearing.ratio) * (1 - gearing.slip)));
}

/** What a propeller may be pitched at. */
export interface PitchChoice {
  /** At full throttle the engine reaches the top of its band with the finest, the bottom with the coarsest. */
  readonly finest: Metres;
  readonly coarsest: Metres;
  /** The middle of the band. */
  readonly middle: Metres;
}

/**
 * Pitches that put full-throttle speed inside the engine's band of full-throttle speeds.
 *
 * @param band - lowest and highest full-throttle engine speed that its maker allows, rev/min
 * @source derived: `pitchFor` at both ends and the middle
 */
export function pitchBand(
  speed: MetresPerSecond,
  band: readonly [low: number, high: number],
  gearing: Gearing,
): Computed<PitchChoice> {
  const [low, high] = band;
  const finest = pitchFor(speed, high, gearing);
  const coarsest = pitchFor(speed, low, gearing);
  const middle = pitchFor(speed, (low + high) / 2, gearing);
  if (typeof finest === 'object' || typeof coarsest === 'object' || typeof middle === 'object') {
    return { notComputed: UNSOUND };
  }
  return { finest, coarsest, middle };
}
