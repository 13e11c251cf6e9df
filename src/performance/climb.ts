import { lerp } from '../maths/index.ts';
import { metresPerSecond, type MetresPerSecond, type Watts } from '../units/index.ts';
import { addedDragAt } from './drag.ts';
import { planingStates, runAt } from './equilibrium.ts';
import {
  type HullAtRest,
  outsidePrePlaning,
  PRE_PLANING,
  prePlaningDrag,
  speedAtFroude,
} from './pre-planing.ts';
import type { Running } from './savitsky.ts';
import type { Band, Computed } from './types.ts';

/** What it takes to run at a speed, planing or not. */
export interface JoinedPoint {
  readonly speed: MetresPerSecond;
  /** N; where both methods answer it lies between what they say. */
  readonly drag: Band<number>;
  readonly by: 'pre-planing' | 'between' | 'planing';
}

/** The curve, and what of the hull is unlike the hulls that the slow part was made from. */
export interface JoinedCurve {
  readonly points: readonly JoinedPoint[];
  readonly outside: readonly string[];
}

/** The fastest speed with a power, before planing or between. */
export interface SlowEstimate {
  readonly speed: Band<MetresPerSecond>;
  readonly outside: readonly string[];
}

/** The drag that rises before the boat planes and then falls. */
export interface Climb {
  readonly speed: MetresPerSecond;
  /** Power that it takes over what of the outboard’s power likely moves the boat; above 1 it is not got over. */
  readonly share: Band<number>;
}

/**
 * Drag from FnV 1.0 up to the fastest planing speed: before planing by regression, planing by Savitsky’s method, and where
 * both answer from the one evenly to the other.
 *
 * @returns points by rising speed; `notComputed` where the hull is unlike those of the regression
 * @validity as `prePlaningDrag` and `runAt`; where neither answers between the two, straight
 * @source Mercier and Savitsky 1973, Savitsky 1964; how they are joined: common practice, no source
 */
export function joinedCurve(running: Running, atRest: Computed<HullAtRest>): Computed<JoinedCurve> {
  if ('notComputed' in atRest) return atRest;
  const { terms, besides: outside } = outsidePrePlaning(atRest);
  if (terms.length > 0)
    return { notComputed: `unlike the hulls of the method before planing: ${terms.join(', ')}` };
  const planing = planingStates(running);
  const starts = planing[0]?.speed ?? Number.POSITIVE_INFINITY;
  const ends = speedAtFroude(PRE_PLANING.at(-1) ?? 0, atRest.volume);
  const slow = PRE_PLANING.flatMap((froude): readonly JoinedPoint[] => {
    const speed = speedAtFroude(froude, atRest.volume);
    const bare = prePlaningDrag(atRest, froude, running.water);
    if (typeof bare === 'object') return [];
    const drag = bare + addedDragAt(running.added ?? [], speed, running.water);
    const state = speed > starts ? runAt(running, speed) : undefined;
    if (!state || 'notComputed' in state) return [{ speed, drag: one(drag), by: 'pre-planing' }];
    const likely = lerp(drag, state.drag, (speed - starts) / (ends - starts));
    const [low, high] = [Math.min(drag, state.drag), Math.max(drag, state.drag)];
    return [{ speed, drag: { low, likely, high }, by: 'between' }];
  });
  const fast = planing.filter(({ speed }) => speed > ends);
  const points = fast.map(({ speed, drag }): JoinedPoint => ({
    speed,
    drag: one(drag),
    by: 'planing',
  }));
  return { points: [...slow, ...points], outside };
}

/** A band of one value. */
const one = (value: number): Band<number> => ({ low: value, likely: value, high: value });

/**
 * The fastest speed that a power drives the boat to on such a curve, straight between its points.
 *
 * @param efficiency - share of the power that moves the boat
 * @returns `notComputed` where that is beyond either end of the curve
 * @source derived: power is drag times speed
 */
export function fastestOn(
  { points, outside }: JoinedCurve,
  power: Watts,
  efficiency: Band<number>,
): Computed<SlowEstimate> {
  const at = (share: number, against: keyof Band<number>): number | undefined => {
    const spare = points.map(({ speed, drag }) => power * share - drag[against] * speed);
    const index = spare.findLastIndex((left) => left >= 0);
    const [from, to] = [points[index], points[index + 1]];
    const [left = 0, lack = 0] = [spare[index], spare[index + 1]];
    return from && to && lerp(from.speed, to.speed, left / (left - lack));
  };
  const low = at(efficiency.low, 'high');
  const likely = at(efficiency.likely, 'likely');
  const high = at(efficiency.high, 'low');
  if (low === undefined || likely === undefined || high === undefined)
    return { notComputed: 'the speed is outside both methods' };
  const speed = {
    low: metresPerSecond(low),
    likely: metresPerSecond(likely),
    high: metresPerSecond(high),
  };
  return { speed, outside };
}

/**
 * The hump of such a curve, and what of an outboard’s power it takes.
 *
 * @returns undefined where the drag rises all the way
 * @validity the share of the power that moves the boat taken as at full speed: a propeller that slips more there takes more
 * @source derived: the first of the joined curve’s points with more drag than both neighbours
 */
export function climbOf(
  { points }: JoinedCurve,
  power: Watts,
  efficiency: number,
): Climb | undefined {
  // The regression has a step of its own between FnV 1.4 and 1.5.
  const top = points.find(({ drag: { likely }, by }, index) => {
    const [before, after] = [points[index - 1], points[index + 1]];
    const isTop = before && after && likely > before.drag.likely && likely > after.drag.likely;
    return isTop && by !== 'pre-planing';
  });
  if (!top) return undefined;
  const { drag, speed } = top;
  const shareOf = (force: number): number => (force * speed) / (power * efficiency);
  return {
    speed,
    share: { low: shareOf(drag.low), likely: shareOf(drag.likely), high: shareOf(drag.high) },
  };
}
