import { planingStates } from './equilibrium.ts';
import type { Running } from './savitsky.ts';
import type { Computed, PlaningState } from './types.ts';

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
