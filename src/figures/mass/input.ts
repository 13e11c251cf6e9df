import type { MassInput } from '../../mass/index.ts';
import { type Build, placeInHull } from '../../resolve/index.ts';
import { decimalToNumber, type Kilograms, kilograms, type Point3 } from '../../units/index.ts';

/** What the mass room needs of a Build. */
export function massInput({ items, yard, order }: Build, fuel: MassInput['fuel']): MassInput {
  return {
    items,
    contingency: decimalToNumber(yard.massContingency),
    ...(fuel && { fuel }),
    people: { count: order.boat.people, mass: yard.personMass, gear: yard.gearPerPerson },
  };
}

/** The fuel that the order is weighed with, at the hull's tank; undefined when there is none. */
export function fuelOf({ order, yard, tank }: Build): MassInput['fuel'] {
  if (order.fuel === undefined || order.fuel === 0) return undefined;
  return { mass: kilograms(order.fuel * yard.fuelDensity), at: tank };
}

/** Loose gear of so many people, where the hull stows it. */
export function looseGear(
  { yard, hull }: Pick<Build, 'yard' | 'hull'>,
  people: number,
): { readonly mass: Kilograms; readonly at: Point3 } {
  return {
    mass: kilograms(people * yard.gearPerPerson),
    at: placeInHull(hull.gearAt, hull.dimensions),
  };
}
