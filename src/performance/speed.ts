import { findRoot, type Root } from '../maths/index.ts';
import {
  type Kilograms,
  type MetresPerSecond,
  metresPerSecond,
  searchFailed,
  type Watts,
} from '../units/index.ts';
import { type CrouchHull, CROUCH_CONSTANTS, crouchConstant, crouchSpeed } from './crouch.ts';
import { planingStates, runAt, SPEEDS } from './equilibrium.ts';
import type { Running } from './savitsky.ts';
import type { Band, Computed, PlaningState } from './types.ts';

/** Share of the engine's shaft power that moves the boat: propeller, leg and slip together. */
export const OUTBOARD_EFFICIENCY: Band<number> = { low: 0.45, likely: 0.52, high: 0.6 };

/** Power that is off by less than this is not off, W, nor is speed, m/s. */
const BALANCED = { close: 1e-4, within: 1e-13 };

export interface Driven {
  readonly running: Running;
  /** Rated power at the propeller shaft. */
  readonly power: Watts;
  /** Overall propulsive efficiency, 0 to 1. */
  readonly efficiency?: Band<number>;
  readonly kind?: CrouchHull;
}

export interface SpeedEstimate {
  readonly speed: Band<MetresPerSecond>;
  /** How it runs at the likely speed. */
  readonly state: PlaningState;
  /** By another formula, that knows only mass and power. */
  readonly crouch: MetresPerSecond;
  /** The constant that Crouch's formula would need for the likely speed. */
  readonly crouchConstant: number;
  /** True when the two methods are within a fifth of each other. */
  readonly agree: boolean;
  readonly caution: string;
}

/**
 * Greatest speed that an engine drives a planing hull to, as a band, with a second formula beside it.
 *
 * @returns the highest speed at which drag x speed equals power x efficiency, for the lowest, the likely and the
 * highest efficiency; `notComputed` when it does not plane on that power
 * @validity as `planeAt`; calm water, clean bottom, a propeller that lets the engine reach its rated speed
 * @source Savitsky 1964 for the drag; efficiency 0.45 to 0.60 overall for outboards: common practice, no source
 */
export function speedFor({
  running,
  power,
  efficiency = OUTBOARD_EFFICIENCY,
  kind = 'runabout',
}: Driven): Computed<SpeedEstimate> {
  const states = new Map(planingStates(running).map((state) => [state.speed as number, state]));
  const needed = SPEEDS.map((speed) => states.get(speed)?.effectivePower);
  const fastest = (share: number): Root => {
    const off = (speed: number): number => (neededAt(running, speed) ?? 0) - power * share;
    const index = needed.findLastIndex((one) => one !== undefined && one <= power * share);
    const [from, to] = [SPEEDS[index], SPEEDS[index + 1]];
    const [below, above] = [needed[index], needed[index + 1]];
    if (!from || !to || below === undefined || above === undefined) return { outcome: 'no root' };
    return findRoot(off, [from, below - power * share], [to, above - power * share], BALANCED);
  };
  const roots = [efficiency.low, efficiency.likely, efficiency.high].map(fastest);
  if (roots.some(({ outcome }) => outcome === 'not converged')) {
    return searchFailed('the search for the speed did not end');
  }
  const [low, likely, high] = roots.map((root) => ('at' in root ? root.at : undefined));
  if (low === undefined || likely === undefined || high === undefined) {
    return { notComputed: whyNone(needed, power * efficiency.low) };
  }
  const state = runAt(running, metresPerSecond(likely));
  if ('notComputed' in state) return state;
  const speed = {
    low: metresPerSecond(low),
    likely: metresPerSecond(likely),
    high: metresPerSecond(high),
  };
  return { speed, state, ...crossCheck(speed.likely, power, running.hull.mass, kind) };
}

/** Why no planing speed balances a power: too little of it, or more than the method reaches. */
function whyNone(needed: readonly (number | undefined)[], least: number): string {
  const planing = needed.filter((one) => one !== undefined);
  if (planing.length === 0) return 'the boat planes at none of the speeds from 6 to 70 knots';
  return least < Math.min(...planing)
    ? 'too little power to plane'
    : 'so much power that the boat is faster than the method reaches';
}

function crossCheck(likely: MetresPerSecond, power: Watts, mass: Kilograms, kind: CrouchHull) {
  const crouch = crouchSpeed(CROUCH_CONSTANTS[kind], power, mass);
  return {
    crouch,
    crouchConstant: crouchConstant(likely, power, mass),
    agree: Math.abs(crouch / likely - 1) <= 0.2,
    caution: 'estimated to Savitsky 1964, checked by Crouch’s formula; verify by trial',
  };
}

function neededAt(running: Running, speed: number): number | undefined {
  const state = runAt(running, metresPerSecond(speed));
  return 'notComputed' in state ? undefined : state.effectivePower;
}
