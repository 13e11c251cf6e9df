import { cubicMetres, type CubicMetres, metres, radians } from '../units/index.ts';
import { boundsOf } from './form.ts';
import { immerse } from './immerse.ts';
import type { FloatingBody } from './types.ts';

/**
 * Volume up to the sheer, m3, flooded spaces taken out.
 *
 * @source derived: the immersed volume under a plane above every point
 */
export function capacityOf(body: FloatingBody): CubicMetres {
  const top = boundsOf(body.hull).height + 1;
  const under = { level: metres(top), trim: radians(0), heel: radians(0) };
  return cubicMetres(immerse(body, under).volume);
}
