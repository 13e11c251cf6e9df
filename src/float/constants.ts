/** Standard gravity, m/s2. ISO 80000-3; the value of the CGPM of 1901. */
export const GRAVITY = 9.80665;

/** Density of air over that of fresh water at 15 degrees C: 1.225 kg/m3 (ICAO standard atmosphere) over 999.1. */
export const AIR_OVER_WATER = 1.225 / 999.1;

/** Intervals that curved lines are cut into, so that what is left of the curve between them is small. */
export const LEAST_INTERVALS = 80;

/** Beyond this lean, or this trim, nobody would say that she floats upright. Common practice, no source. rad */
export const MOST_HEEL_UPRIGHT = Math.PI / 4;
export const MOST_TRIM_UPRIGHT = Math.PI / 6;

/** By how much the lines may differ from what is declared. Common practice, no source. */
export const DECLARED_TOLERANCE = 0.02;

/** Trim and heel that nobody notices, rad: a quarter and half a degree. Common practice, no source. */
export const LEVEL_TRIM = Math.PI / 720;
export const UPRIGHT_HEEL = Math.PI / 360;

/** What ends so near to a section ends in it, m: 14 ft 2 in and 170 in are one length. */
export const TOUCHES = 1e-9;
