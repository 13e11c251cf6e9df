import type { RatedBoat, RatedHull } from '../../src/limits/index.ts';
import { kilograms, metres, radians, watts } from '../../src/units/index.ts';

export const FOOT = 0.3048;
export const POUND = 0.45359237;
export const DEGREE = Math.PI / 180;

/** A hull of no maker, 4.3 m. */
export function hullOf(change: Partial<RatedHull> = {}): RatedHull {
  return {
    length: metres(4.3),
    beam: metres(1.85),
    transomBeam: metres(1.7),
    transomHeight: metres(0.51),
    deadrise: radians(14 * DEGREE),
    hardChine: true,
    monohull: true,
    steering: 'remote',
    ...change,
  };
}

/** A hull of a length and a transom in feet, so that their product is the law's factor. */
export const inFeet = (length: number, transom: number, change: Partial<RatedHull> = {}) =>
  hullOf({
    length: metres(length * FOOT),
    transomBeam: metres(transom * FOOT),
    beam: metres(transom * 1.1 * FOOT),
    ...change,
  });

export function boatOf(change: Partial<RatedBoat> = {}): RatedBoat {
  return {
    hull: hullOf(),
    light: kilograms(230),
    fixedFuel: kilograms(0),
    greatestDisplacement: kilograms(3200),
    loadedDisplacement: kilograms(1150),
    seats: 5,
    engine: { power: watts(37_000), mass: kilograms(104) },
    ...change,
  };
}
