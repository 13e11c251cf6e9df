import { centreOf, type MassResult, type WeightedCentre } from '../mass/index.ts';
import type { Build, BuildItem } from '../resolve/index.ts';
import { kilograms, metres, type Metres, type Point3 } from '../units/index.ts';

/** A boat with her people, as she runs. */
export interface Loading extends WeightedCentre {
  readonly name: 'light' | 'loaded' | 'light with ballast' | 'loaded with ballast';
  readonly people: number;
}

type Weighed = Pick<MassResult, 'ready'>;

/** Shares of length and depth at which people are; common practice, no source. */
const HELM_WITH_WHEEL = 0.38;
const HELM_WITH_TILLER = 0.17;
const CROWD = 0.45;
const HEIGHT = 0.85;

/** True when she is steered by a wheel. */
export const hasHelm = (items: readonly BuildItem[], what: 'wheel' | 'remote-control'): boolean =>
  items.some(({ performance }) => performance?.helm === what);

/**
 * Light: ready, and one person at the helm. Loaded: ready, and everyone ordered for with their gear; both once more
 * with the ballast tank full, when there is one.
 */
export function loadingsOf(build: Build, { ready }: Weighed): readonly Loading[] {
  const { order, items } = build;
  const tanks = items.flatMap(({ performance, quantity, at }) => {
    const water = performance?.ballastWater;
    return water === undefined ? [] : [{ mass: kilograms(water * quantity), at }];
  });
  const boat = { mass: ready.mass, at: ready.centre };
  const of = (name: 'light' | 'loaded', people: number): readonly Loading[] => {
    const crew = peopleOf(build, people);
    const dry = { name, people, ...centreOf([boat, ...crew]) };
    if (tanks.length === 0) return [dry];
    const wet = centreOf([boat, ...crew, ...tanks]);
    return [dry, { name: `${name} with ballast`, people, ...wet }];
  };
  return [...of('light', 1), ...of('loaded', order.boat.people)];
}

/** One person at the helm, the others around the middle, each with gear. */
function peopleOf(build: Build, people: number) {
  const { yard, hull, items } = build;
  const each = yard.personMass + yard.gearPerPerson;
  const helm = hasHelm(items, 'wheel') ? HELM_WITH_WHEEL : HELM_WITH_TILLER;
  return [
    { mass: kilograms(each), at: placeOf(hull.dimensions, helm) },
    { mass: kilograms((people - 1) * each), at: crowdPlace(hull.dimensions) },
  ];
}

type Dimensions = Build['hull']['dimensions'];

/** Where the middle of a crowd is, by default on the centreline. */
export const crowdPlace = (dimensions: Dimensions, y: Metres = metres(0)): Point3 => ({
  ...placeOf(dimensions, CROWD),
  y,
});

const placeOf = ({ length, depth }: Dimensions, share: number): Point3 => ({
  x: metres(share * length),
  y: metres(0),
  z: metres(HEIGHT * depth),
});

/** The same with another outboard, or one where there was none. */
export function withOutboard(
  loading: Loading,
  { items, hull, outboard }: Build,
  mass: number,
): WeightedCentre {
  const hung = items.find(({ kind }) => kind === 'outboard')?.at ?? {
    x: metres(-0.25),
    y: metres(0),
    z: metres(hull.dimensions.transomHeight + 0.1),
  };
  const other = { mass: kilograms(mass - (outboard?.mass ?? 0)), at: hung };
  return centreOf([{ mass: loading.mass, at: loading.centre }, other]);
}
