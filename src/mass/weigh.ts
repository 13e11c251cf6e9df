import { type Kilograms, kilograms, metres, type Point3 } from '../units/index.ts';
import type { MassGroup, MassInput, MassItem, MassResult, WeightedCentre } from './types.ts';

interface PointMass {
  readonly mass: Kilograms;
  readonly at: Point3;
}

/**
 * Mass and centre of mass of the boat in the conditions that documents speak of.
 *
 * @returns masses in kg, centres in boat axes; the contingency lies at the centre of what was counted
 * @source derived: the centre is the sum of mass x position over the sum of mass. The conditions follow common
 * practice, no source: the light craft of a standard may include the engine and is a later figure.
 */
export function weighBoat({ items, contingency, fuel, people }: MassInput): MassResult {
  const of = (...kinds: readonly MassItem['kind'][]) =>
    items.filter((item) => kinds.includes(item.kind));
  const fitted = centreOf(of('shell', 'structure', 'option', 'extra'));
  const allowance = kilograms(fitted.mass * contingency);
  const completed = { mass: kilograms(fitted.mass + allowance), centre: fitted.centre };
  const afloat = [
    { mass: completed.mass, at: completed.centre },
    ...of('outboard'),
    ...(fuel ? [fuel] : []),
  ];
  const ready = centreOf(afloat);
  const towedBoat = kilograms(ready.mass + people.count * people.gear);
  const tare = sumMass(of('trailer'));
  const added = sumMass(of('option', 'extra'));
  return {
    bareHull: centreOf(of('shell')),
    completed,
    ready,
    onTrailer: kilograms(towedBoat + tare),
    towedBoat,
    contingency: allowance,
    load: kilograms(people.count * (people.mass + people.gear) + (fuel?.mass ?? 0) + added),
    groups: groupsOf(
      [
        ...of('shell', 'structure', 'option', 'extra', 'outboard'),
        ...(allowance > 0 ? [{ group: 'Contingency', mass: allowance, at: fitted.centre }] : []),
        ...(fuel ? [{ group: 'Fuel', mass: fuel.mass, at: fuel.at }] : []),
      ],
      ready.mass,
    ),
  };
}

/**
 * Total mass and its centre; no mass at all gives 0 kg at the origin.
 *
 * @source derived: first moments about the boat's axes
 */
export function centreOf(masses: readonly PointMass[]): WeightedCentre {
  const total = sumMass(masses);
  if (total === 0) return { mass: total, centre: { x: metres(0), y: metres(0), z: metres(0) } };
  const along = (axis: keyof Point3) =>
    metres(masses.reduce((moment, { mass, at }) => moment + mass * at[axis], 0) / total);
  return { mass: total, centre: { x: along('x'), y: along('y'), z: along('z') } };
}

function sumMass(masses: readonly { readonly mass: Kilograms }[]): Kilograms {
  return kilograms(masses.reduce((total, { mass }) => total + mass, 0));
}

function groupsOf(
  items: readonly { readonly group: string; readonly mass: Kilograms; readonly at: Point3 }[],
  whole: Kilograms,
): readonly MassGroup[] {
  const names = [...new Set(items.map((item) => item.group))];
  return names.map((group) => {
    const { mass, centre } = centreOf(items.filter((item) => item.group === group));
    return { group, mass, share: whole > 0 ? mass / whole : 0, centre };
  });
}
