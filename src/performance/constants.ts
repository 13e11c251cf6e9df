import { FRESH_WATER_DENSITY, metres, radians, SEA_WATER_DENSITY } from '../units/index.ts';
import type { PlaningHull, Water } from './types.ts';

/** Allowance for roughness added to Cf (Savitsky 1964: 0.0004, the ATTC standard of his day). */
export const ROUGHNESS_ALLOWANCE = 0.0004;

/** Sea water at 15 °C (ITTC 7.5-02-01-03, rounded). */
export const SEA_WATER: Water = { density: SEA_WATER_DENSITY, viscosity: 1.19e-6 };

/** Fresh water at 15 °C (ITTC 7.5-02-01-03, rounded). */
export const FRESH_WATER: Water = { density: FRESH_WATER_DENSITY, viscosity: 1.14e-6 };

/**
 * Where an outboard hung on the transom pushes, trimmed level: 0.25 m behind it and 0.18 m below the keel.
 *
 * Common practice, no source: the plate above the propeller runs about level with the keel.
 */
export const OUTBOARD_THRUST: PlaningHull['thrust'] = {
  x: metres(-0.25),
  z: metres(-0.18),
  angle: radians(0),
};
