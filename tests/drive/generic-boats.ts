import type { PlaningHull } from '../../src/drive/index.ts';
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

/**
 * A foam-cored open boat of 4.5 m, invented: chine beam 1.6 m, deadrise 14°, lines of nobody's boat.
 *
 * @param parts - mass in kg and metres forward of the transom, one pair each
 */
export function openBoat(parts: readonly (readonly [mass: number, x: number])[]): PlaningHull {
  const mass = parts.reduce((sum, [one]) => sum + one, 0);
  const moment = parts.reduce((sum, [one, x]) => sum + one * x, 0);
  return {
    mass: kilograms(mass),
    beam: metres(1.6),
    deadrise: radians(14 * DEGREE),
    length: metres(4.3),
    centre: { x: metres(moment / mass), z: metres(0.35) },
    thrust: { x: metres(-0.25), z: metres(-0.2), angle: radians(-4 * DEGREE) },
  };
}
