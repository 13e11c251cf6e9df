import { interpolate } from '../maths/index.ts';
import {
  type CubicMetres,
  HOUR,
  type KilogramsPerCubicMetre,
  kilogramsPerCubicMetre,
  type Metres,
  metres,
  type MetresPerSecond,
  type Watts,
} from '../units/index.ts';
import type { Computed } from './types.ts';

/** How an engine burns: what it needs at full throttle, and how that changes at part load. */
export interface Burning {
  /** Brake specific fuel consumption at full throttle, kg/(kW·h). */
  readonly consumption: number;
  /** Pairs of load (0 to 1) and factor on `consumption`, loads rising from the least to 1. */
  readonly partLoad: readonly (readonly [load: number, factor: number])[];
  readonly density: KilogramsPerCubicMetre;
}

/**
 * A four-stroke petrol outboard: 0.32 kg/(kW·h) at full throttle, dearer a kilowatt-hour at low load.
 * Common practice, no source: published engines lie between 0.28 and 0.36.
 */
export const FOUR_STROKE: Burning = {
  consumption: 0.32,
  partLoad: [
    [0.05, 2.2],
    [0.1, 1.6],
    [0.25, 1.2],
    [0.5, 1.02],
    [0.75, 0.96],
    [1, 1],
  ],
  density: kilogramsPerCubicMetre(740),
};

/**
 * Fuel that an engine burns at a load.
 *
 * @param rated - full power
 * @param load - share of it that is called for, 0 to 1
 * @returns m³/s; `notComputed` for a load outside the part-load table
 * @validity steady running; the shape of the part-load curve is the caller's
 * @source derived: power x specific consumption / density
 */
export function fuelFlow(rated: Watts, load: number, burning: Burning): Computed<number> {
  const factor = interpolate(burning.partLoad, load);
  if (!(rated >= 0)) return { notComputed: 'the rated power is not a number of 0 or more' };
  if (factor === undefined) {
    return { notComputed: 'the load is outside the part-load figures of the engine' };
  }
  const kilowatts = (rated * load) / 1000;
  return (kilowatts * burning.consumption * factor) / burning.density / HOUR;
}

/** Share of the tank that is kept back: a third out, a third home, a third in hand is the old rule. */
export const THIRDS_RESERVE = 1 / 3;

/**
 * How far a tank takes it at a steady speed.
 *
 * @param tank - usable fuel, m³
 * @param reserve - share of it kept back, 0 to 1
 * @param flow - m³/s, above 0
 * @returns range in metres over calm, still water; the whole of it, not there and back
 * @source derived: (1 - reserve) x tank x speed / flow
 */
export function fuelRange(
  tank: CubicMetres,
  reserve: number,
  speed: MetresPerSecond,
  flow: number,
): Computed<Metres> {
  if (!(tank >= 0 && speed >= 0 && reserve >= 0 && reserve <= 1)) {
    return { notComputed: 'tank, speed and reserve must be 0 or more, the reserve at most 1' };
  }
  if (!(flow > 0)) return { notComputed: 'no fuel is burnt, so the range has no end' };
  return metres(((1 - reserve) * tank * speed) / flow);
}
