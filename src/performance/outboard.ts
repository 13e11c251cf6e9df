import { metres, radians } from '../units/index.ts';
import type { PlaningHull } from './types.ts';

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
