import { findRoot } from '../maths/index.ts';
import {
  DEGREE,
  metresPerSecond,
  type MetresPerSecond,
  radians,
  searchFailed,
} from '../units/index.ts';
import { refusal } from './range.ts';
import { planeAt, type Running } from './savitsky.ts';
import type { Computed, PlaningState } from './types.ts';

/** A moment below this is none, N·m, nor is a change of trim, rad. */
const BALANCED = { close: 1e-7, within: 1e-13 };
/** Trims that are looked through for balance: beyond the method's range on both sides, so that it can say so. */
const TRIMS = Array.from({ length: 15 }, (_, index) => (0.5 + (index * 14.5) / 14) * DEGREE);

/**
 * The trim at which weight, pressure, friction and thrust are in balance at a speed, and the state there.
 *
 * @returns the state whose `moment` is zero; `notComputed` when no trim from 0.5° to 15° balances, or when the
 * balance is not a planing one: the pre-planing range is not computed by this method
 * @validity as `planeAt`; steady running, calm water
 * @source Savitsky 1964, eq (35), solved for τ
 */
export function runAt(running: Running, speed: MetresPerSecond): Computed<PlaningState> {
  const at = (trim: number): number => {
    const state = planeAt(running, speed, radians(trim));
    return 'notComputed' in state ? Number.NaN : state.moment;
  };
  const first = planeAt(running, speed, radians(4 * DEGREE));
  if ('notComputed' in first) return first;
  const [low, high] = bracket(at);
  if (!low || !high) return { notComputed: 'no trim from 0.5° to 15° balances the moments' };
  const root = findRoot(at, low, high, BALANCED);
  if (root.outcome !== 'found') return searchFailed('the search for the trim did not end');
  const state = planeAt(running, speed, radians(root.at));
  if ('notComputed' in state) return state;
  const why = refusal({ ...state, hull: running.hull });
  return why === undefined ? state : { notComputed: why };
}

/** The first two neighbouring trims between which the moment turns from bow-down to bow-up. */
function bracket(
  at: (trim: number) => number,
): readonly [TrimMoment, TrimMoment] | readonly [undefined, undefined] {
  let before: TrimMoment | undefined;
  for (const trim of TRIMS) {
    const here = [trim, at(trim)] as const;
    if (before && before[1] < 0 && here[1] >= 0) return [before, here];
    before = here;
  }
  return [undefined, undefined];
}

type TrimMoment = readonly [trim: number, moment: number];

/** Speeds that are looked through, m/s: about 6 to 70 knots. */
export const SPEEDS = Array.from({ length: 34 }, (_, index) => 3 + index);

const KNOWN = new WeakMap<Running, readonly PlaningState[]>();

/**
 * The states at those speeds in which it planes, by rising speed; found once for each boat.
 *
 * @source as `runAt`
 */
export function planingStates(running: Running): readonly PlaningState[] {
  const known = KNOWN.get(running);
  if (known) return known;
  const states = SPEEDS.flatMap((speed) => {
    const state = runAt(running, metresPerSecond(speed));
    return 'notComputed' in state ? [] : [state];
  });
  KNOWN.set(running, states);
  return states;
}
