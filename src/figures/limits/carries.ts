import {
  felt,
  findEquilibrium,
  type FloatingBody,
  growthUntil,
  lowestOf,
  type Opening,
} from '../../float/index.ts';
import {
  type Computed,
  type Governing,
  governingLimit,
  type PeopleLimit,
  type Rating,
} from '../../limits/index.ts';
import { centreOf, type Loading, massOf, type MassResult } from '../../mass/index.ts';
import { type Build, placeInHull } from '../../resolve/index.ts';
import type { Hull } from '../../schema/index.ts';
import {
  formatDate,
  type IsoDate,
  kilograms,
  type Kilograms,
  type Watts,
} from '../../units/index.ts';
import { openingsOf } from '../float/input.ts';
import { whyLost } from '../float/outcome.ts';
import { leastFreeboardOf } from '../hull-defaults.ts';

/** What it may carry as it then floats: seated, tanks full, to freeboard, heel and the lowest opening. */
export interface AsLoaded {
  /** At most as many as the rated load leaves room for. */
  readonly people: Computed<number>;
  /** In the sense of the shop's rating, with those people; at most the rated load. */
  readonly load: Computed<Kilograms>;
}

/** What a document says that the boat may carry: the least of all limits, and which that is. */
export interface Carries {
  readonly people: Governing;
  readonly load: { readonly mass: Kilograms; readonly by: string };
  /** Of the outboard: the shop's rating, or a method's where that is less. */
  readonly power: { readonly power: Watts; readonly by: string };
  /** What was tried on the water, and what is the shop's own word alone. */
  readonly standing: readonly string[];
}

const SHOP = 'the shop’s rating';
const AS_LOADED = 'freeboard as loaded';
const ESTIMATE = 'Estimate by ';

/** People and load by equilibria of the boat as it is loaded. */
export function asLoaded(build: Build, mass: MassResult, body: FloatingBody): AsLoaded {
  const openings = openingsOf(build);
  const { rated } = mass.loadings;
  let why: Computed<number> = 0;
  for (let people = mass.ratedPeople; people > 0; people -= 1) {
    const loading = withPeople(rated, people);
    const holds = keepsFreeboard(build, loading, body, openings);
    if (holds === true) return { people, load: loadWith(build, mass, loading, body, openings) };
    if (holds !== false) why = holds;
  }
  const none = { notComputed: 'with one person and full tanks the boat has too little freeboard' };
  return { people: why, load: typeof why === 'object' ? why : none };
}

/** The rated loading with so many of its people and their gear, without stores. */
function withPeople(rated: Loading, people: number): Loading {
  const seated = rated.masses.filter(({ kind }) => kind === 'person');
  const gone = new Set(seated.slice(people));
  const masses = rated.masses.flatMap((one) => {
    if (gone.has(one) || one.kind === 'stores') return [];
    const share = people / seated.length;
    return one.kind === 'gear' ? [{ ...one, mass: kilograms(one.mass * share) }] : [one];
  });
  return { ...rated, people, masses, ...centreOf(masses) };
}

function keepsFreeboard(
  build: Build,
  loading: Loading,
  body: FloatingBody,
  openings: readonly Opening[],
): Computed<boolean> {
  const lies = findEquilibrium(body, felt(loading), openings);
  if (lies.outcome === 'not computed') return whyLost(lies);
  if (lies.outcome !== 'floats') return false;
  const left = lowestOf(body.hull, openings, lies.plane)?.freeboard ?? 0;
  const leans = Math.abs(lies.plane.heel);
  return left >= leastFreeboardOf(build) && leans <= (build.yard.offsetLoad?.heel ?? Infinity);
}

/** What is aboard with so many people, and stores until the freeboard is what it must be. */
function loadWith(
  build: Build,
  { load, loadings }: MassResult,
  loading: Loading,
  body: FloatingBody,
  openings: readonly Opening[],
): AsLoaded['load'] {
  const { hull } = build;
  const counted = (one: Loading): number => massOf(one, 'person', 'gear', 'fuel');
  const carried = kilograms(load - counted(loadings['as ordered']) + counted(loading));
  const most = kilograms(Math.max(0, hull.ratings.load - carried));
  const at = placeInHull(hull.gearAt, hull.dimensions);
  const margin = growthUntil(
    { body, openings, load: felt(loading), at, most },
    { kind: 'freeboard', least: leastFreeboardOf(build) },
  );
  switch (margin.outcome) {
    case 'met':
      return kilograms(carried + margin.growth);
    case 'not met':
      return kilograms(carried + most);
    case 'already past':
      return carried;
    case 'not found':
      return margin;
  }
}

/** The least of the shop's rating, what is fitted, each method, and the boat as loaded or as it was tried. */
export function carriesOf(
  build: Build,
  { ratedPeople }: MassResult,
  ratings: Computed<readonly Rating[]>,
  loaded: Computed<AsLoaded>,
): Carries {
  const { hull, yard } = build;
  const { people, load } = hull.ratings;
  const { tested } = hull;
  const as: AsLoaded = 'notComputed' in loaded ? { people: loaded, load: loaded } : loaded;
  const byTest = ({ by, date }: { by: string; date: IsoDate }): string =>
    `test by ${by} on ${formatDate(date, yard.locale)}`;
  const [most, heaviest] = [
    tested.people ? { name: byTest(tested.people), at: tested.people.result } : known(as.people),
    tested.load ? { name: byTest(tested.load), at: tested.load.result } : known(as.load),
  ];
  const limits: readonly PeopleLimit[] = [
    ...(ratedPeople < people
      ? [{ name: 'the rated load, with what is fitted and full tanks', people: ratedPeople }]
      : []),
    ...('notComputed' in ratings ? [] : ratings).flatMap(({ name, people: count }) =>
      typeof count === 'number' ? [{ name: methodName(name), people: count }] : [],
    ),
    ...(most ? [{ name: most.name, people: most.at }] : []),
  ];
  const least = Math.min(people, ...limits.map((one) => one.people));
  const first = limits.find((one) => one.people === least);
  const governing = governingLimit([
    people === least || !first ? { name: SHOP, people } : first,
    ...(people === least ? [] : [{ name: SHOP, people }]),
    ...limits.filter((one) => one.people > least),
  ]);
  const isLess = heaviest !== undefined && heaviest.at < load;
  return {
    people: governing,
    load: isLess
      ? { mass: kilograms(heaviest.at), by: heaviest.name }
      : { mass: kilograms(load), by: SHOP },
    power: powerOf(hull, ratings),
    standing: standingOf(hull, most !== undefined, heaviest !== undefined, yard.locale),
  };
}

function powerOf(
  { ratings: { power } }: Hull,
  ratings: Computed<readonly Rating[]>,
): Carries['power'] {
  const methods = ('notComputed' in ratings ? [] : ratings).flatMap((one) =>
    typeof one.power === 'number' ? [{ power: one.power, by: methodName(one.name) }] : [],
  );
  return [{ power, by: SHOP }, ...methods].reduce((least, one) =>
    one.power < least.power ? one : least,
  );
}

/** A method within a sentence. */
export const methodName = (name: string): string =>
  name.startsWith(ESTIMATE) ? name.slice(ESTIMATE.length) : `the method of the ${name}`;

const known = (value: Computed<number>) =>
  typeof value === 'number' ? { name: AS_LOADED, at: value } : undefined;

function standingOf(
  { tested }: Hull,
  people: boolean,
  load: boolean,
  locale: string,
): Carries['standing'] {
  const alone = [...(people ? [] : ['people']), ...(load ? [] : ['load'])];
  const tests = [
    ['people', tested.people],
    ['load', tested.load],
    ['people to one side', tested.side],
  ] as const;
  return [
    ...tests.flatMap(([what, test]) =>
      test
        ? [`Tested for ${what} by ${test.by} on ${formatDate(test.date, locale)}: ${test.how}`]
        : [],
    ),
    ...(alone.length > 0
      ? [`For ${alone.join(' and ')} it is the shop’s own rating, not computed here`]
      : []),
  ];
}
