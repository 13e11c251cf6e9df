import {
  bestPlace,
  clash,
  type Condition,
  type FloatingBody,
  type NamedMass,
  type Opening,
  type TrimEffect,
  trimEffects,
  withMasses,
} from '../../float/index.ts';
import type { DerivedBuild, DerivedItem } from '../../derive/index.ts';
import type { MassResult } from '../../mass/index.ts';
import type { Build } from '../../resolve/index.ts';
import { DEGREE, kilograms, radians } from '../../units/index.ts';
import { inTheWay, roomAt } from './spaces.ts';
import type { Movable, Move, TrimAdvice } from './types.ts';

/** Items that are tried in full; the others have less moment about its centre than these. */
const TRIED = 8;
const SHOWN = 5;
/** Less than this nobody would move a thing for: a tenth of a degree. Common practice, no source. */
const WORTH_IT = DEGREE / 10;

/** The five things that move trim most, fully loaded. */
export function effectsOnTrim(
  build: Build,
  body: FloatingBody,
  { load }: Condition,
  { loadings }: Pick<MassResult, 'loadings'>,
): readonly TrimEffect[] {
  const things: readonly NamedMass[] = [
    ...build.items.filter(({ kind }) => kind !== 'shell' && kind !== 'trailer'),
    ...loadings.ready.masses.filter(({ kind }) => kind === 'fuel'),
  ];
  const moment = ({ mass, at }: NamedMass): number => Math.abs(mass * (at.x - load.centre.x));
  const tried = things.toSorted((a, b) => moment(b) - moment(a)).slice(0, TRIED);
  return trimEffects(body, load, tried, SHOWN);
}

/** How its trim lies in the band that the hull likes, and what moving one thing would gain. */
export function trimAdvice(
  build: DerivedBuild,
  body: FloatingBody,
  { load, state }: Condition,
  openings: readonly Opening[],
): TrimAdvice {
  const { hull, items } = build;
  const { trimBand: band } = hull;
  const things = items.filter(({ float, mass }) => (float?.places.length ?? 0) > 0 && mass > 0);
  const movable = things.map((item) => movableOf(item, hull.dimensions.length));
  if (!state) return { band, moves: [], movable, taken: [] };
  const outside = Math.max(0, band.least - state.trim, state.trim - band.most);
  const searched = things.map((item) => search(build, item, { body, load, band, openings }));
  return {
    band,
    outside: radians(outside),
    moves: withoutClashes(searched.map(({ tries }) => tries)).map(({ item, to, gain }) => ({
      item: movableOf(item, hull.dimensions.length),
      to,
      gain,
    })),
    movable,
    taken: outside > 0 ? searched.flatMap(({ taken }) => taken) : [],
  };
}

/** A place that is worth moving one of an item to. */
interface Try {
  readonly item: DerivedItem;
  readonly to: Move['to'];
  readonly gain: Move['gain'];
}

/** The free places of an item that are worth it, best first, and those that something stands in. */
function search(
  build: DerivedBuild,
  item: DerivedItem,
  boat: Pick<Parameters<typeof bestPlace>[0], 'body' | 'band' | 'openings'> & {
    readonly load: Condition['load'];
  },
): { readonly tries: readonly Try[]; readonly taken: TrimAdvice['taken'] } {
  const { load, ...rest } = boat;
  const [{ mass, at }] = item.instances;
  const places = (item.float?.places ?? []).map((place) => ({
    ...place,
    by: inTheWay(build, item, place.at),
  }));
  const { now, tried } = bestPlace({
    ...rest,
    others: withMasses(load, [{ mass: kilograms(0 - mass), at }]),
    item: { name: item.name, mass, at },
    places: places.filter(({ by }) => by === undefined),
  });
  const tries = tried.flatMap((to): readonly Try[] => {
    const gain = now ? now.outside - to.outside : 0;
    return gain >= WORTH_IT ? [{ item, to, gain: radians(gain) }] : [];
  });
  const taken = places.flatMap(({ name, by }) =>
    by === undefined || by === item.name ? [] : [{ item: item.name, place: name, by }],
  );
  return { tries, taken };
}

/** One move of each item, the greatest gain first; no two into each other's room. */
function withoutClashes(all: readonly (readonly Try[])[]): readonly Try[] {
  const chosen: Try[] = [];
  for (const tries of all.toSorted((a, b) => (b[0]?.gain ?? 0) - (a[0]?.gain ?? 0))) {
    const free = tries.find(({ item, to }) =>
      chosen.every((other) => !clash(roomAt(item, to.at), roomAt(other.item, other.to.at))),
    );
    if (free) chosen.push(free);
  }
  return chosen.toSorted((a, b) => b.gain - a.gain);
}

function movableOf({ key, name, instances }: DerivedItem, length: number): Movable {
  const [{ mass: each, at }] = instances;
  return { key, name, count: instances.length, each, along: at.x / length };
}
