import { kilograms, type Kilograms, metres, type Metres } from '../units/index.ts';
import { findEquilibrium } from './equilibrium.ts';
import { immerse } from './immerse.ts';
import { levelFor } from './solve-equilibrium.ts';
import type { FloatingBody, Load, Opening } from './types.ts';

/** The least that lets a boat float which does not. */
export type FloatRemedy =
  | {
      readonly what: 'move';
      readonly way: 'forward' | 'aft' | 'to port' | 'to starboard' | 'lower';
      /** Mass times distance, kg.m. */
      readonly moment: number;
    }
  | { readonly what: 'take out'; readonly mass: Kilograms };

/** Shares of a change that are tried in turn, and halvings between the last that fails and the first that floats. */
const TRIES = 10;
const HALVINGS = 7;
/** Most that the middle of all weight comes down, and that is taken out: shares of its height and of the mass. */
const MAX_LOWER = 0.6;
const MAX_OUT = 0.95;

/**
 * The least change with which the boat floats with every opening dry: its weight moved along, across or down,
 * whichever takes the least moment; where none does, the mass to take out, evenly.
 *
 * @param load - with which it does not float
 * @returns undefined when none of these lets it float
 * @validity still water; the boat just floats then, with nothing to spare
 * @source derived: full equilibrium at tenths of each change, then bisection to a thousandth of it
 */
export function floatRemedy(
  body: FloatingBody,
  load: Load,
  openings: readonly Opening[],
): FloatRemedy | undefined {
  const { mass, centre } = load;
  const floats = (one: Load): boolean => findEquilibrium(body, one, openings).outcome === 'floats';
  const least = (at: (share: number) => Load): number | undefined => {
    const first = Array.from({ length: TRIES }, (_, index) => (index + 1) / TRIES).find((share) =>
      floats(at(share)),
    );
    if (first === undefined) return undefined;
    let [fails, holds] = [first - 1 / TRIES, first];
    for (let count = 0; count < HALVINGS; count++) {
      const middle = (fails + holds) / 2;
      if (floats(at(middle))) holds = middle;
      else fails = middle;
    }
    return holds;
  };
  const moves = movesOf(body, load).flatMap(({ way, by, axis }) => {
    const share = least((part) => ({
      mass,
      centre: { ...centre, [axis]: metres(centre[axis] + part * by) },
    }));
    return share === undefined
      ? []
      : [{ what: 'move', way, moment: share * mass * Math.abs(by) } as const];
  });
  const [move] = moves.toSorted((a, b) => a.moment - b.moment);
  if (move) return move;
  const out = least((part) => ({ centre, mass: kilograms(mass * (1 - part * MAX_OUT)) }));
  return out === undefined
    ? undefined
    : { what: 'take out', mass: kilograms(out * MAX_OUT * mass) };
}

interface WeightMove {
  readonly way: Extract<FloatRemedy, { what: 'move' }>['way'];
  readonly axis: 'x' | 'y' | 'z';
  readonly by: Metres;
}

/** As far as each way leads: over the middle of the water that it displaces when level, to the centreline, and down. */
function movesOf(body: FloatingBody, load: Load): readonly WeightMove[] {
  const { x, y, z } = load.centre;
  const level = levelFor(body, load, 0, 0);
  const sums = level && immerse(body, level);
  const along = sums && sums.volume > 0 ? sums.volumeAlong / sums.volume - x : 0;
  const all: readonly WeightMove[] = [
    { way: along > 0 ? 'forward' : 'aft', axis: 'x', by: metres(along) },
    { way: y > 0 ? 'to port' : 'to starboard', axis: 'y', by: metres(0 - y) },
    { way: 'lower', axis: 'z', by: metres(0 - MAX_LOWER * Math.max(0, z)) },
  ];
  return all.filter(({ by }) => by !== 0);
}
