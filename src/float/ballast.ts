import {
  cubicMetres,
  type CubicMetres,
  kilograms,
  type Kilograms,
  type Metres,
  metres,
  type Point3,
  type Radians,
  radians,
} from '../units/index.ts';
import { type Equilibrium, findEquilibrium } from './equilibrium.ts';
import { boundsOf } from './hull/form.ts';
import { lowestOf } from './freeboard.ts';
import { immerse } from './immerse.ts';
import { metacentricHeight } from './metacentric-height.ts';
import type { FloatingBody, FloodedSpace, Load, Opening, WaterPlane } from './types.ts';
import { inBoatAxes } from './water-plane.ts';

/** How it lies with the tank dry, or open to the sea. */
export interface BallastState {
  readonly equilibrium: Equilibrium;
  readonly level?: Metres;
  readonly trim?: Radians;
  readonly lowestFreeboard?: Metres;
  /** GM on the boat's own displacement, the same with and without water in the tank. */
  readonly metacentricHeight?: Metres;
  /** Moment that heels it by one radian at first, over gravity, kg.m. */
  readonly stiffness?: number;
}

export interface BallastEffect {
  readonly dry: BallastState;
  readonly flooded: BallastState;
  /** What the tank holds when full. */
  readonly capacity: CubicMetres;
  /** What stands in it at rest, up to the level of the sea. */
  readonly water?: { readonly mass: Kilograms; readonly centre: Point3 };
}

/**
 * What a tank that is open to the sea at rest does to it, whichever way it goes.
 *
 * Lost buoyancy: the water in the tank is part of the sea. It adds no weight; the volume of the tank below the
 * surface carries nothing, and where the surface stands in the tank its area is lost to the waterplane, which
 * is the true effect of the free surface at any heel.
 *
 * @validity vented, and level with the sea: slow heel and trim. An estimate; verify by draught marks
 * @source derived: lost buoyancy method
 */
export function ballastEffect(
  body: FloatingBody,
  load: Load,
  tank: FloodedSpace,
  openings: readonly Opening[] = [],
): BallastEffect {
  const open = { ...body, flooded: [...body.flooded, tank] };
  const full = {
    level: metres(boundsOf(tank.form).height + 1),
    trim: radians(0),
    heel: radians(0),
  };
  const equilibrium = findEquilibrium(open, load, openings);
  const water =
    equilibrium.outcome === 'floats' ? waterIn(body, tank, equilibrium.plane) : undefined;
  return {
    dry: stateOf(body, load, findEquilibrium(body, load, openings), openings),
    flooded: stateOf(open, load, equilibrium, openings),
    capacity: cubicMetres(sumsOf(body, tank, full).volume * tank.permeability),
    ...(water && { water }),
  };
}

function stateOf(
  body: FloatingBody,
  load: Load,
  equilibrium: Equilibrium,
  openings: readonly Opening[],
): BallastState {
  if (equilibrium.outcome !== 'floats') return { equilibrium };
  const { plane } = equilibrium;
  const height = metacentricHeight(body, load)?.byForm;
  const lowest = lowestOf(body.hull, openings, plane);
  return {
    equilibrium,
    level: plane.level,
    trim: plane.trim,
    ...(lowest && { lowestFreeboard: lowest.freeboard }),
    ...(height !== undefined && { metacentricHeight: height, stiffness: load.mass * height }),
  };
}

function waterIn(
  body: FloatingBody,
  tank: FloodedSpace,
  plane: WaterPlane,
): BallastEffect['water'] {
  const sums = sumsOf(body, tank, plane);
  if (!(sums.volume > 0)) return undefined;
  return {
    mass: kilograms(sums.volume * tank.permeability * body.water),
    centre: inBoatAxes(plane, {
      along: sums.volumeAlong / sums.volume,
      across: sums.volumeAcross / sums.volume,
      up: sums.volumeUp / sums.volume,
    }),
  };
}

function sumsOf({ water }: FloatingBody, { form }: FloodedSpace, plane: WaterPlane) {
  return immerse({ hull: form, flooded: [], water }, plane);
}
