import {
  bestPlace,
  type Condition,
  type FloatingBody,
  type NamedMass,
  type Opening,
  type TrimEffect,
  trimEffects,
  withMasses,
} from '../float/index.ts';
import type { Build, BuildItem } from '../resolve/index.ts';
import { kilograms, radians } from '../units/index.ts';
import { fuelOf } from './inputs.ts';
import type { Movable, Move, TrimAdvice } from './float-types.ts';

/** Items that are tried in full; the others have less moment about her centre than these. */
const TRIED = 8;
const SHOWN = 5;
/** Less than this nobody would move a thing for: a tenth of a degree. Common practice, no source. */
const WORTH_IT = Math.PI / 1800;

/** The five things that move trim most, fully loaded. */
export function effectsOnTrim(
  build: Build,
  body: FloatingBody,
  { load }: Condition,
): readonly TrimEffect[] {
  const fuel = fuelOf(build);
  const things: readonly NamedMass[] = [
    ...build.items.filter(({ kind }) => kind !== 'shell' && kind !== 'trailer'),
    ...(fuel ? [{ name: 'Fuel', ...fuel }] : []),
  ];
  const moment = ({ mass, at }: NamedMass): number => Math.abs(mass * (at.x - load.centre.x));
  const tried = things.toSorted((a, b) => moment(b) - moment(a)).slice(0, TRIED);
  return trimEffects(body, load, tried, SHOWN);
}

/** How her trim lies in the band that the hull likes, and what moving one thing would gain. */
export function trimAdvice(
  build: Build,
  body: FloatingBody,
  { load, state }: Condition,
  openings: readonly Opening[],
): TrimAdvice {
  const { hull, items } = build;
  const { trimBand: band } = hull;
  const things = items.filter(({ float, mass }) => (float?.places.length ?? 0) > 0 && mass > 0);
  const movable = things.map((item) => movableOf(item, hull.dimensions.length));
  if (!state) return { band, moves: [], movable };
  const outside = Math.max(0, band.least - state.trim, state.trim - band.most);
  const moves = things.flatMap((item, index): readonly Move[] => {
    const [thing] = movable.slice(index);
    if (!thing) return [];
    const one = { name: item.name, mass: thing.each, at: item.at };
    const others = withMasses(load, [{ mass: kilograms(0 - thing.each), at: item.at }]);
    const places = item.float?.places ?? [];
    const { tried, gain } = bestPlace({ body, others, item: one, places, band, openings });
    const [to] = tried;
    return to && gain >= WORTH_IT ? [{ item: thing, to, gain }] : [];
  });
  return {
    band,
    outside: radians(outside),
    moves: moves.toSorted((a, b) => b.gain - a.gain),
    movable,
  };
}

function movableOf({ key, name, quantity, mass, at }: BuildItem, length: number): Movable {
  return { key, name, count: quantity, each: kilograms(mass / quantity), along: at.x / length };
}
