import { type Computed, EFFECTS, type IsoLoad, isoLoad, type Rating } from '../limits/index.ts';
import type { Build } from '../resolve/index.ts';
import { cubicMetres, type Kilograms, kilograms } from '../units/index.ts';
import type { Afloat } from './float-types.ts';

/** What she is loaded with as ordered, counted as the ISO-style method counts it. */
export interface LoadAsOrdered extends IsoLoad {
  /** What the method allows, less the load on the plate: below zero when it is passed. */
  readonly left: Computed<Kilograms>;
}

/** The load of an order in the manner of ISO 14946; undefined where the yard does not go by that method. */
export function loadAsOrdered(
  build: Build,
  ratings: Computed<readonly Rating[]>,
  afloat: Afloat | undefined,
): LoadAsOrdered | undefined {
  if ('notComputed' in ratings) return undefined;
  const allowed = ratings.find(({ method }) => method === 'iso')?.load;
  if (allowed === undefined) return undefined;
  const load = isoLoad(loadOf(build, afloat));
  const left = typeof allowed === 'number' ? kilograms(allowed - load.onPlate) : allowed;
  return { ...load, left };
}

function loadOf(
  { order, outboard, yard, items }: Build,
  afloat: Afloat | undefined,
): Parameters<typeof isoLoad>[0] {
  const { people } = order.boat;
  const wells = items.reduce((sum, { float }) => sum + (float?.liveWell?.mass ?? 0), 0);
  const fuel = order.fuel ?? 0;
  const portable = fuel > (outboard?.model.fuel ?? 0) ? 0 : fuel;
  return {
    people,
    gear: kilograms(people * Math.max(EFFECTS, yard.gearPerPerson)),
    fixedFuel: cubicMetres(fuel - portable),
    portableFuel: cubicMetres(portable),
    fuelDensity: yard.fuelDensity,
    ballastWater: kilograms(wells + (afloat?.ballast?.effect?.water?.mass ?? 0)),
  };
}
