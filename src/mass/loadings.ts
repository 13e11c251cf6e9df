import { kilograms, type Kilograms, metres, type Point3 } from '../units/index.ts';
import { centreOf, sumMass } from './centre.ts';
import type { Aboard, Loading, Loadings, MassKind, MassResult, PlacedMass } from './types.ts';

/** How full tanks are in the fully loaded condition. ISO 14946:2021 cl. 4 to 6, public preview: 95 %. */
export const FULL_TANK = 0.95;

/**
 * Everything that a boat is weighed, floated, driven and towed with, by name.
 *
 * @source common practice, no source; full tanks as ISO 14946:2021 cl. 4 to 6 (public preview) has them
 */
export function loadingsOf(
  { completed, growth }: Pick<MassResult, 'completed' | 'growth'>,
  outboards: readonly PlacedMass[],
  aboard: Aboard,
): Loadings {
  const { fluids, people, trial, crowd, ballast, custom } = aboard;
  const boat = { name: 'Boat', kind: 'boat', mass: completed.mass, at: completed.centre } as const;
  const rigged = [boat, ...outboards];
  const brimful = filled(fluids, 1);
  const ready = [...rigged, ...brimful.filter(({ kind }) => kind === 'fuel')];
  const water = ballast?.water ? [ballast.water] : [];
  const seats = seatsFor(people, people.count);
  const gear = gearOf(aboard, people.count);
  const alone = [...ready, ...crewOf(aboard, seatsFor(people, 1)), gearOf(aboard, 1)];
  const ordered = [...ready, ...crewOf(aboard, seats), gear];
  const wells = brimful.filter(({ kind }) => kind === 'live-well');
  const test = [
    ...rigged,
    ...filled(fluids, trial.fluidShare),
    ...crewOf(aboard, seats.slice(0, trial.people)),
  ];
  const full = (at: readonly Point3[]) => [
    ...rigged,
    gear,
    ...filled(fluids, FULL_TANK),
    ...crewOf(aboard, at),
  ];
  const leansToPort = centreOf(ready).centre.y < 0;
  const side = leansToPort ? { ...crowd.side, y: metres(0 - crowd.side.y) } : crowd.side;
  return {
    light: loading([boat]),
    'with engine': loading(rigged),
    ready: loading(ready),
    'one aboard': loading(alone),
    'as ordered': loading(ordered),
    'tanks full': loading([...ordered, ...wells, ...water]),
    'stowed for the road': loading([...ready, gear]),
    'performance test': loading(test),
    'fully loaded': loading(full(seats)),
    'people to one side': loading(full(seats.map(() => side))),
    'people aft': loading(full(seats.map(() => crowd.aft))),
    ...(growth.mass > 0 && {
      grown: loading([...full(seats), { name: 'Growth', kind: 'growth', ...growth }]),
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

/** Tanks filled to a share, 0 to 1; nothing moves in one that is full or empty. */
const filled = (fluids: readonly PlacedMass[], share: number): readonly PlacedMass[] =>
  fluids.map(({ surface, mass, ...fluid }) => ({
    ...fluid,
    mass: kilograms(mass * share),
    ...(surface && share > 0 && share < 1 && { surface }),
  }));

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
