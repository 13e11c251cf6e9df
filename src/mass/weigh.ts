import { clamp } from '../maths/index.ts';
import { kilograms, type Kilograms } from '../units/index.ts';
import { centreOf, sumMass } from './centre.ts';
import { growthOf } from './growth.ts';
import { loadingsOf, massOf } from './loadings.ts';
import type {
  Aboard,
  MassGroup,
  MassInput,
  MassItem,
  MassResult,
  PlacedMass,
  PointMass,
} from './types.ts';

/**
 * Mass and centre of mass of the boat in the conditions that documents speak of, and all its loadings.
 *
 * @returns masses in kg, centres in boat axes; the contingency lies at the centre of what was counted
 * @source derived: the centre is the sum of mass x position over the sum of mass. The conditions follow common
 * practice, no source: the light craft of a standard may include the engine and is a later figure.
 */
export function weighBoat({ items, contingency, aboard }: MassInput): MassResult {
  const of = (...kinds: readonly MassItem['kind'][]) =>
    items.filter((item) => kinds.includes(item.kind));
  const fitted = centreOf(of('shell', 'structure', 'option', 'extra'));
  const allowance = kilograms(fitted.mass * contingency);
  const completed = { mass: kilograms(fitted.mass + allowance), centre: fitted.centre };
  const growth = growthOf(completed, aboard.growth);
  const placed = (name: string, kind: 'outboard' | 'rigging'): readonly PlacedMass[] =>
    of(kind).map(({ mass, at }) => ({ name, kind, mass, at }));
  const outboards = [...placed('Outboard', 'outboard'), ...placed('Rigging', 'rigging')];
  const added = sumMass(of('option', 'extra'));
  const ratedPeople = peopleWithin(aboard, added);
  const loadings = loadingsOf({ completed, growth, ratedPeople }, added, outboards, aboard);
  const { ready } = loadings;
  return {
    bareHull: centreOf(of('shell')),
    completed,
    ready: { mass: ready.mass, centre: ready.centre },
    onTrailer: kilograms(loadings['stowed for the road'].mass + sumMass(of('trailer'))),
    contingency: allowance,
    load: kilograms(massOf(loadings['as ordered'], 'person', 'gear', 'fuel') + added),
    ratedPeople,
    growth,
    groups: groupsOf(
      [
        ...of('shell', 'structure', 'option', 'extra', 'outboard', 'rigging'),
        ...(allowance > 0 ? [{ group: 'Contingency', mass: allowance, at: fitted.centre }] : []),
        ...aboard.fluids
          .filter(({ kind }) => kind === 'fuel')
          .map(({ mass, at }) => ({ group: 'Fuel', mass, at })),
      ],
      ready.mass,
    ),
    loadings,
  };
}

/**
 * The load of an order with its tanks brimful, kg: what the hull's load rating is held against.
 *
 * @source derived: the fuel that is ordered changed for what its tanks hold
 */
export const loadTanksFull = ({ load, loadings }: MassResult): Kilograms =>
  kilograms(load - massOf(loadings['as ordered'], 'fuel') + massOf(loadings.rated, 'fuel'));

/**
 * People with their gear that the rated load leaves room for beside what is fitted, kg, and full tanks.
 *
 * @returns at most the rated number
 * @source derived: a division
 */
export function peopleWithin({ rating, people, gear, fluids }: Aboard, fitted: Kilograms): number {
  const fuel = fluids
    .filter(({ kind }) => kind === 'fuel')
    .reduce((sum, { capacity }) => sum + capacity, 0);
  const left = rating.load - fitted - fuel;
  return clamp(Math.floor(left / (people.mass + gear.mass)), 0, rating.people);
}

function groupsOf(
  items: readonly (PointMass & { readonly group: string })[],
  whole: Kilograms,
): readonly MassGroup[] {
  const names = [...new Set(items.map((item) => item.group))];
  return names.map((group) => {
    const { mass, centre } = centreOf(items.filter((item) => item.group === group));
    return { group, mass, share: whole > 0 ? mass / whole : 0, centre };
  });
}
