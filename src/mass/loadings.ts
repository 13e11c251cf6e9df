import { kilograms, type Kilograms, metres, type Point3 } from '../units/index.ts';
import { centreOf, sumMass } from './centre.ts';
import { toEnd, toSide } from './crew.ts';
import type {
  Aboard,
  Fluid,
  Loading,
  Loadings,
  MassKind,
  MassResult,
  PlacedMass,
} from './types.ts';

/** How full tanks are in the fully loaded condition. ISO 14946:2021 cl. 4 to 6, public preview: 95 %. */
export const FULL_TANK = 0.95;

/**
 * Everything that a boat is weighed, floated, driven and towed with, by name.
 *
 * @param fitted - of options and extras, which are part of the rated load
 * @source common practice, no source; full tanks as ISO 14946:2021 cl. 4 to 6 (public preview) has them
 */
export function loadingsOf(
  { completed, growth, ratedPeople }: Pick<MassResult, 'completed' | 'growth' | 'ratedPeople'>,
  fitted: Kilograms,
  outboards: readonly PlacedMass[],
  aboard: Aboard,
): Loadings {
  const { fluids, people, trial, cockpit, ballast, custom } = aboard;
  const boat = { name: 'Boat', kind: 'boat', mass: completed.mass, at: completed.centre } as const;
  const rigged = [boat, ...outboards];
  const ready = [...rigged, ...asOrdered(fluids).filter(({ kind }) => kind === 'fuel')];
  const water = ballast?.water ? [ballast.water] : [];
  const seats = seatsFor(people, people.count);
  const gear = gearOf(aboard, people.count);
  const alone = [...ready, ...crewOf(aboard, seatsFor(people, 1)), gearOf(aboard, 1)];
  const ordered = [...ready, ...crewOf(aboard, seats), gear];
  const wells = asOrdered(fluids).filter(({ kind }) => kind === 'live-well');
  const test = [
    ...rigged,
    ...filled(fluids, trial.fluidShare),
    ...crewOf(aboard, seats.slice(0, trial.people)),
  ];
  const full = loading([...rigged, gear, ...filled(fluids, FULL_TANK), ...crewOf(aboard, seats)]);
  const rated = (share: number): Loading =>
    loading([...rigged, ...ratedLoad(aboard, ratedPeople, fitted, share)]);
  return {
    light: loading([boat]),
    'with engine': loading(rigged),
    ready: loading(ready),
    'one aboard': loading(alone),
    'as ordered': loading(ordered),
    'tanks full': loading([...ordered, ...wells, ...water]),
    'stowed for the road': loading([...ready, gear]),
    'performance test': loading(test),
    'fully loaded': full,
    'people to one side': toSide(full, cockpit),
    'people aft': toEnd(full, cockpit, 'aft'),
    'people forward': toEnd(full, cockpit, 'forward'),
    ...atRating(aboard, rated),
    ...(growth.mass > 0 && {
      grown: loading([...full.masses, { name: 'Growth', kind: 'growth', ...growth }]),
    }),
    ...(ballast && {
      'ballast flooded at rest': loading(test, true),
      'ballast drained': loading(test),
    }),
    ...(ballast?.water && {
      'one aboard with ballast': loading([...alone, ...water]),
      'as ordered with ballast': loading([...ordered, ...water]),
    }),
    ...(custom && {
      custom: loading(
        [...rigged, ...custom.masses, ...filled(fluids, custom.fluidShare)],
        custom.ballastFlooded,
      ),
    }),
  };
}

/**
 * All masses of some kinds in a loading together, kg.
 *
 * @source derived: a sum
 */
export const massOf = ({ masses }: Loading, ...kinds: readonly MassKind[]): Kilograms =>
  sumMass(masses.filter(({ kind }) => kinds.includes(kind)));

const loading = (masses: readonly PlacedMass[], flooded = false): Loading => ({
  people: masses.filter(({ kind }) => kind === 'person').length,
  masses,
  flooded,
  ...centreOf(masses),
});

/** The loadings at the shop's rating, with tanks full, or filled to a share. */
function atRating({ fluids, cockpit }: Aboard, rated: (share: number) => Loading) {
  const brimful = rated(1);
  return {
    rated: brimful,
    ...(fluids.some(({ isWide }) => isWide) && { 'rated half tanks': rated(0.5) }),
    'rated to one side': toSide(brimful, cockpit),
    'rated aft': toEnd(brimful, cockpit, 'aft'),
    'rated forward': toEnd(brimful, cockpit, 'forward'),
  };
}

/** What the shop rates the hull for: its people with their gear, tanks filled to a share, stores up to its load. */
function ratedLoad(
  aboard: Aboard,
  count: number,
  fitted: Kilograms,
  share: number,
): readonly PlacedMass[] {
  const { fluids, people, gear, rating } = aboard;
  const crew = crewOf(aboard, seatsFor(people, count));
  const carried = [...crew, gearOf(aboard, count)];
  const inTanks = filled(fluids, share);
  const fuel = inTanks.filter(({ kind }) => kind === 'fuel');
  const left = rating.load - fitted - sumMass([...carried, ...fuel]);
  const stores = { name: 'Stores up to the rated load', kind: 'stores', at: gear.at } as const;
  return [...carried, ...inTanks, ...(left > 0 ? [{ ...stores, mass: kilograms(left) }] : [])];
}

/** Tanks filled to a share of what they hold, 0 to 1; nothing moves in one that is full or empty. */
const filled = (fluids: readonly Fluid[], share: number): readonly PlacedMass[] =>
  fluids.map((fluid) => contents(fluid, kilograms(fluid.capacity * share)));

const asOrdered = (fluids: readonly Fluid[]): readonly PlacedMass[] =>
  fluids.map((fluid) => contents(fluid, fluid.mass));

function contents({ name, kind, at, capacity, surface }: Fluid, mass: Kilograms): PlacedMass {
  const moves = mass > 0 && mass < capacity;
  return { name, kind, at, mass, ...(surface && moves && { surface }) };
}

const crewOf = ({ people: { mass } }: Aboard, seats: readonly Point3[]): readonly PlacedMass[] =>
  seats.map((at, index) => ({ name: `Person ${index + 1}`, kind: 'person', mass, at }));

const gearOf = ({ gear: { mass, at } }: Aboard, people: number): PlacedMass => ({
  name: 'Loose gear',
  kind: 'gear',
  mass: kilograms(people * mass),
  at,
});

/** A place for each of so many people: the seats, then along the centreline. */
function seatsFor({ seats, beyond }: Aboard['people'], count: number): readonly Point3[] {
  const given = seats.slice(0, count);
  const rest = count - given.length;
  const spread = Array.from({ length: rest }, (_, index) => ({
    x: metres(beyond.length * (0.3 + (0.3 * (index + 0.5)) / rest)),
    y: metres(0),
    z: beyond.height,
  }));
  return [...given, ...spread];
}
