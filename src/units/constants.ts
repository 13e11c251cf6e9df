import { kilogramsPerCubicMetre } from './quantity.ts';
import { UNIT_KINDS } from './unit-table.ts';

/** One of each in SI, for what is computed or printed in it. */
export const FOOT = UNIT_KINDS.length.ft;
export const INCH = UNIT_KINDS.length.in;
export const POUND = UNIT_KINDS.mass.lb;
export const HORSEPOWER = UNIT_KINDS.power.hp;
export const KNOT = UNIT_KINDS.speed.kn;
export const DEGREE = UNIT_KINDS.angle.deg;
export const HOUR = UNIT_KINDS.duration.h;
export const LITRE_AN_HOUR = UNIT_KINDS.flow['L/h'];

/** Density of air at 15 degrees C at sea level, kg/m3 (ISO 2533, standard atmosphere). */
export const AIR_DENSITY = 1.225;

/** Sea and fresh water at 15 degrees C (ITTC 7.5-02-01-03, rounded). */
export const SEA_WATER_DENSITY = kilogramsPerCubicMetre(1025);
export const FRESH_WATER_DENSITY = kilogramsPerCubicMetre(1000);
