import { type Computed, EFFECTS, type IsoLoad, isoLoad, type Rating } from '../../limits/index.ts';
import { type Loading, massOf, type MassResult } from '../../mass/index.ts';
import type { Build } from '../../resolve/index.ts';
import { type CubicMetres, cubicMetres, type Kilograms, kilograms } from '../../units/index.ts';

/** What it is loaded with as ordered, counted as the ISO-style method counts it. */
export interface LoadAsOrdered extends IsoLoad {
  /** What the method allows, less the load on the plate: below zero when it is passed. */
  readonly left: Computed<Kilograms>;
}

/** The load of an order in the manner of ISO 14946; undefined where the yard does not go by that method. */
export function loadAsOrdered(
  build: Build,
  ratings: Computed<readonly Rating[]>,
  { loadings }: MassResult,
): LoadAsOrdered | undefined {
  if ('notComputed' in ratings) return undefined;
  const allowed = ratings.find(({ method }) => method === 'iso')?.load;
  if (allowed === undefined) return undefined;
  const load = isoLoad(loadOf(build, loadings['tanks full']));
  const left = typeof allowed === 'number' ? kilograms(allowed - load.onPlate) : allowed;
  return { ...load, left };
}

/** Fuel in a tank that is built in: all of it where one is ordered, or where it is more than the outboard's own holds. */
export function fixedVolume({ order, tank }: Build): CubicMetres {
  const { fuel = cubicMetres(0) } = order;
  return tank.builtIn > 0 || fuel > tank.portable ? fuel : cubicMetres(0);
}

function loadOf(build: Build, loading: Loading): Parameters<typeof isoLoad>[0] {
  const { order, yard } = build;
  const { people } = loading;
  const fixed = fixedVolume(build);
  return {
    people,
    gear: kilograms(Math.max(people * EFFECTS, massOf(loading, 'gear'))),
    fixedFuel: fixed,
    portableFuel: cubicMetres((order.fuel ?? 0) - fixed),
    fuelDensity: yard.fuelDensity,
    ballastWater: massOf(loading, 'live-well', 'ballast'),
  };
}
