import {
  type Equilibrium,
  felt,
  findEquilibrium,
  type FloatingBody,
  type Freeboard,
  type GrowthMargin,
  growthUntil,
  lowestOf,
  type Opening,
} from '../../float/index.ts';
import {
  centreOf,
  edgeOf,
  leanOf,
  type Loading,
  massOf,
  type MassResult,
  toSide,
} from '../../mass/index.ts';
import type { Build } from '../../resolve/index.ts';
import {
  type Computed,
  type Kilograms,
  kilograms,
  metres,
  type NotComputed,
  type Radians,
  radians,
} from '../../units/index.ts';
import { cockpitOf } from '../mass/cockpit.ts';

/** Share of the rated people that the edge of the cockpit bears: the idea of 33 CFR 183.41(a)(2), for every hull. */
const AT_EDGE = 0.6;

interface Afloat {
  readonly body: FloatingBody;
  readonly openings: readonly Opening[];
}

/** The same with where its people may be. */
interface Boat extends Afloat {
  readonly cockpit: CrewFigures['cockpit'];
}

/** How many may go to one side while the others sit, of so many aboard. */
export interface PeopleToSide {
  readonly people: number;
  /** As computed, or as it was tested on the water. */
  readonly most: Computed<number>;
  /** True where fewer may be there, or it leans further, with nothing stowed than with stores up to the rated load. */
  readonly isBare?: true;
  /** With so many there; missing where they are none, or it is not computed. */
  readonly leans?: { readonly heel: Radians; readonly lowest: Freeboard };
}

/** What people may do aboard, in still water. */
export interface CrewFigures {
  readonly cockpit: ReturnType<typeof cockpitOf>;
  /** Fully loaded, with the people that are ordered. */
  readonly ordered: PeopleToSide;
  /** At the shop’s rating. */
  readonly rated: PeopleToSide;
  /** Everyone of the rated people on the edge of the cockpit: said, and no limit. */
  readonly everyone: Equilibrium;
  /** One person there, nobody else aboard. */
  readonly one: Equilibrium;
  /** Mass there until water comes in, nobody aboard and tanks full, and what is wanted. */
  readonly edge: { readonly bears: GrowthMargin; readonly wanted: Kilograms };
}

/** What people may do aboard: how many to one side, and what the edge of the cockpit bears. */
export function crewFigures(build: Build, { loadings }: MassResult, afloat: Afloat): CrewFigures {
  const cockpit = cockpitOf(build);
  const aboard = { ...afloat, cockpit };
  const { rated } = loadings;
  const each = build.yard.personMass;
  const bare = centreOf(
    rated.masses.filter(({ kind }) => !['person', 'gear', 'stores'].includes(kind)),
  );
  const at = edgeOf(cockpit, leanOf(bare));
  const alone = centreOf([
    { mass: bare.mass, at: bare.centre },
    { mass: each, at },
  ]);
  const wanted = kilograms(AT_EDGE * massOf(rated, 'person'));
  const most = kilograms(2 * Math.max(wanted, each));
  const rest = (loading: Loading): Equilibrium =>
    findEquilibrium(afloat.body, felt(loading), afloat.openings);
  return {
    cockpit,
    ordered: peopleToSide(build, loadings['fully loaded'], aboard),
    rated: ratedToSide(build, rated, aboard),
    everyone: rest(toSide(rated, cockpit, rated.people, 'edge')),
    one: findEquilibrium(afloat.body, alone, afloat.openings),
    edge: {
      wanted,
      bears: growthUntil(
        { ...afloat, load: bare, at, most },
        { kind: 'freeboard', least: metres(0) },
      ),
    },
  };
}

/** At the rating, with stores or without: what lies low steadies the boat, and it need not be aboard. */
function ratedToSide(build: Build, rated: Loading, aboard: Boat): PeopleToSide {
  const masses = rated.masses.filter(({ kind }) => kind !== 'stores');
  const light = peopleToSide(build, { ...rated, masses, ...centreOf(masses) }, aboard);
  const laden = peopleToSide(build, rated, aboard);
  if (typeof light.most === 'object') return light;
  return typeof laden.most === 'object' || laden.most < light.most
    ? laden
    : { ...light, ...(light.leans && masses.length < rated.masses.length && { isBare: true }) };
}

/**
 * The most people to one side that leave the heel and the freeboard of the shop's screen, and every opening dry.
 *
 * Who changes the heel most goes first, so that the search may halve: with one more the boat leans further.
 */
function peopleToSide(build: Build, loading: Loading, aboard: Boat): PeopleToSide {
  const { people } = loading;
  const { side } = build.hull.tested;
  if (side) return { people, most: Math.min(people, side.result) };
  let [most, fails] = [-1, people + 1];
  let leans: PeopleToSide['leans'];
  while (fails - most > 1) {
    const count = Math.floor((most + fails) / 2);
    const state = held(build, toSide(loading, aboard.cockpit, count), aboard);
    if (state && 'notComputed' in state) return { people, most: state };
    if (state) [most, leans] = [count, state];
    else fails = count;
  }
  return { people, most: Math.max(0, most), ...(leans && most > 0 && { leans }) };
}

/** How it leans within the shop's screen; undefined when it does not. */
function held(
  { yard: { offsetLoad } }: Build,
  loading: Loading,
  { body, openings }: Afloat,
): PeopleToSide['leans'] | NotComputed {
  const lies = findEquilibrium(body, felt(loading), openings);
  if (lies.outcome === 'not computed') return lies;
  if (lies.outcome !== 'floats') return undefined;
  const heel = radians(Math.abs(lies.plane.heel));
  const lowest = lowestOf(body.hull, openings, lies.plane);
  if (!lowest || heel > (offsetLoad?.heel ?? Infinity)) return undefined;
  return lowest.freeboard >= (offsetLoad?.freeboard ?? 0) ? { heel, lowest } : undefined;
}
