import { type MetresPerSecond, type Watts, watts } from '../units/index.ts';
import { planingStates, runAt } from './equilibrium.ts';
import type { Running } from './savitsky.ts';
import { OUTBOARD_EFFICIENCY } from './speed.ts';
import type { Band, Computed, PlaningState } from './types.ts';

/** One point of a curve: what it takes to run at a speed. */
export interface CurvePoint {
  readonly speed: MetresPerSecond;
  /** Shaft power; more of it the lower the efficiency. */
  readonly power: Computed<Band<Watts>>;
  readonly state: Computed<PlaningState>;
}

/**
 * Shaft power against speed.
 *
 * @returns a point for each speed, `notComputed` with its reason where the boat is not planing
 * @validity as `planeAt`
 * @source as `speedFor`
 */
export function powerCurve(
  running: Running,
  speeds: readonly MetresPerSecond[],
  efficiency: Band<number> = OUTBOARD_EFFICIENCY,
): readonly CurvePoint[] {
  return speeds.map((speed) => {
    const state = runAt(running, speed);
    if ('notComputed' in state) return { speed, power: state, state };
    const power = {
      low: watts(state.effectivePower / efficiency.high),
      likely: watts(state.effectivePower / efficiency.likely),
      high: watts(state.effectivePower / efficiency.low),
    };
    return { speed, power, state };
  });
}

/** The speed at which the bow stands highest, and how it runs there. */
export interface Hump {
  readonly state: PlaningState;
  /** True when the drag there is more than at some higher speed: it must be climbed over. */
  readonly isClimb: boolean;
}

/**
 * The hump: the planing speed of greatest trim between 6 and 70 knots.
 *
 * @validity only what Savitsky's method reaches: a hump below the planing range is not found
 * @source Savitsky 1964; the highest trim of the balanced states
 */
export function findHump(running: Running): Computed<Hump> {
  const states = planingStates(running);
  const [first, ...others] = states;
  if (!first) return { notComputed: 'the boat planes at none of the speeds from 6 to 70 knots' };
  const state = others.reduce((best, one) => (one.trim > best.trim ? one : best), first);
  const isClimb = states.some((one) => one.speed > state.speed && one.drag < state.drag);
  return { state, isClimb };
}
