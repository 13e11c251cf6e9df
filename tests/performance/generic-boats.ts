import type { PlaningHull } from '../../src/performance/index.ts';
import { kilograms, metres, radians } from '../../src/units/index.ts';

const DEGREE = Math.PI / 180;

/** A hull of our size of boat; invented. */
export function hullOf(change: Partial<PlaningHull> = {}): PlaningHull {
  return {
    mass: kilograms(1100),
    beam: metres(1.7),
    deadrise: radians(15 * DEGREE),
    length: metres(5.5),
    centre: { x: metres(1.9), z: metres(0.45) },
    thrust: { x: metres(0), z: metres(-0.25), angle: radians(0) },
    ...change,
  };
}
