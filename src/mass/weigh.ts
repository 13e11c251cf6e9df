import { kilograms, type Kilograms } from '../units/index.ts';
import { centreOf, sumMass } from './centre.ts';
import { growthOf } from './growth.ts';
import { loadingsOf, massOf } from './loadings.ts';
import type { MassGroup, MassInput, MassItem, MassResult, PlacedMass, PointMass } from './types.ts';

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
  const outboards = of('outboard').map(({ mass, at }): PlacedMass => ({
    name: 'Outboard',
    kind: 'outboard',
    mass,
    at,
  }));
  const loadings = loadingsOf({ completed, growth }, outboards, aboard);
  const { ready } = loadings;
  const added = sumMass(of('option', 'extra'));
  return {
    bareHull: centreOf(of('shell')),
    completed,
    ready: { mass: ready.mass, centre: ready.centre },
    onTrailer: kilograms(loadings['stowed for the road'].mass + sumMass(of('trailer'))),
    contingency: allowance,
    load: kilograms(massOf(loadings['as ordered'], 'person', 'gear', 'fuel') + added),
    growth,
    groups: groupsOf(
      [
        ...of('shell', 'structure', 'option', 'extra', 'outboard'),
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
