import { kilogramsPerCubicMetre } from '../units/index.ts';
import type { Water } from './types.ts';

/** Standard acceleration of gravity, m/s² (CGPM 1901, exact). */
export const GRAVITY = 9.80665;

/** Density of air at 15 °C at sea level, kg/m³ (ISO 2533, standard atmosphere). */
export const AIR_DENSITY = 1.225;

/** Allowance for roughness added to Cf (Savitsky 1964: 0.0004, the ATTC standard of his day). */
export const ROUGHNESS_ALLOWANCE = 0.0004;

/** Sea water at 15 °C (ITTC 7.5-02-01-03, rounded). */
export const SEA_WATER: Water = { density: kilogramsPerCubicMetre(1025), viscosity: 1.19e-6 };

/** Fresh water at 15 °C (ITTC 7.5-02-01-03, rounded). */
export const FRESH_WATER: Water = { density: kilogramsPerCubicMetre(1000), viscosity: 1.14e-6 };

export const SAVITSKY =
  'Savitsky, Hydrodynamic Design of Planing Hulls, Marine Technology 1(1), 1964';
