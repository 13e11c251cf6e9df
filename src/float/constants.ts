import { AIR_DENSITY, DEGREE } from '../units/index.ts';

/** Density of air over that of fresh water at 15 degrees C, 999.1 kg/m3. */
export const AIR_OVER_WATER = AIR_DENSITY / 999.1;

/** Intervals that the length is cut into, so that what is left of curve and twist between them is small. */
export const MIN_INTERVALS = { curved: 80, straight: 24 } as const;

/** Beyond this lean, or this trim, nobody would say that it floats upright. Common practice, no source. rad */
export const MAX_HEEL_UPRIGHT = 45 * DEGREE;
export const MAX_TRIM_UPRIGHT = 30 * DEGREE;

/** By how much the lines may differ from what is declared. Common practice, no source. */
export const DECLARED_TOLERANCE = 0.02;

/** Trim and heel that nobody notices, rad: a quarter and half a degree. Common practice, no source. */
export const LEVEL_TRIM = DEGREE / 4;
export const UPRIGHT_HEEL = DEGREE / 2;

/** What ends so near to a section ends in it, m: 14 ft 2 in and 170 in are one length. */
export const LENGTH_TOLERANCE = 1e-9;
