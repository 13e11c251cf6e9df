import type { MassInput } from '../mass/index.ts';
import type { PriceInput } from '../price/index.ts';
import type { Build } from '../resolve/index.ts';
import { decimalToNumber, kilograms } from '../units/index.ts';

/** What the price room needs of a Build. */
export function priceInput({ items, yard, order, charges, currency }: Build): PriceInput {
  return {
    items: items.map((item) => ({
      key: item.key,
      marginClass: item.marginClass,
      materials: item.parts,
      hours: item.hours,
      ...(item.otherCost && { otherCost: item.otherCost }),
      ...(item.fixedPrice && { fixedPrice: item.fixedPrice }),
    })),
    rules: {
      currency,
      rates: yard.rates,
      overhead: yard.overhead,
      margins: yard.margins,
      marginFloor: yard.marginFloor,
      wastage: yard.wastage,
      taxRate: yard.tax.rate,
      taxRounding: yard.tax.rounding,
    },
    charges,
    ...(order.discount && { discount: order.discount }),
    payments: yard.payments,
  };
}

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
