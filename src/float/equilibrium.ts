import { type Kilograms, kilograms, type Metres } from '../units/index.ts';
import { MAX_HEEL_UPRIGHT, MAX_TRIM_UPRIGHT } from './constants.ts';
import { lowestOpening, sheerOf } from './freeboard.ts';
import { capacityOf } from './immerse.ts';
import { levelFor, solveEquilibrium } from './solve-equilibrium.ts';
import type { FloatingBody, Load, Opening, WaterPlane } from './types.ts';

/** How it comes to rest. */
export type Equilibrium =
  | { readonly outcome: 'floats'; readonly plane: WaterPlane }
  | {
      readonly outcome: 'no upright equilibrium';
      readonly why: 'no mass' | 'capsizes' | 'stands on end' | 'not found';
      /** Where it would come to rest if nothing came aboard. */
      readonly plane?: WaterPlane;
    }
  | {
      readonly outcome: 'swamped';
      readonly why: 'heavier than the water that it can displace' | 'opening under water';
      readonly plane?: WaterPlane;
      readonly opening?: { readonly name: string; readonly freeboard: Metres };
      /** Mass that it can carry up to the sheer, upright. */
      readonly capacity?: Kilograms;
    };

/**
 * Level, trim and heel at which weight and buoyancy balance, found together; better than 1e-6 m and 1e-6 rad where
 * its GM there is more than 1e-7 m to either side of nothing. Nearer to neutral than that, moments that rounding cannot tell
 * from none leave the heel open to about 1e-5 rad, and a boat with no GM at any heel rests wherever it is.
 *
 * @param openings - where water comes aboard, besides the sheer, which always counts
 * @param start - a plane near the answer, if one is known
 * @returns `no upright equilibrium` when it comes to rest with more than 45 degrees of heel or 30 of trim, or
 * not at all; `swamped` when it is too heavy, or rests with an opening under water
 * @validity still water, no motion; the hull is closed at the sheer while it is searched. Of several leans that it
 * could rest at it finds the first from where it starts, unless that one ends within 3 degrees
 * @source derived: minimum of potential energy
 */
export function findEquilibrium(
  body: FloatingBody,
  load: Load,
  openings: readonly Opening[] = [],
  start?: WaterPlane,
): Equilibrium {
  const { mass, centre } = load;
  if (!(mass > 0 && Number.isFinite(mass + centre.x + centre.y + centre.z))) {
    return { outcome: 'no upright equilibrium', why: 'no mass' };
  }
  const capacity = kilograms(capacityOf(body) * body.water);
  if (mass >= capacity) {
    return { outcome: 'swamped', why: 'heavier than the water that it can displace', capacity };
  }
  const from = start ?? levelFor(body, load, 0, 0);
  const plane = from && solveEquilibrium(body, load, from, false)?.plane;
  if (!plane) return { outcome: 'no upright equilibrium', why: 'not found' };
  if (Math.abs(plane.heel) > MAX_HEEL_UPRIGHT) {
    return { outcome: 'no upright equilibrium', why: 'capsizes', plane };
  }
  if (Math.abs(plane.trim) > MAX_TRIM_UPRIGHT) {
    return { outcome: 'no upright equilibrium', why: 'stands on end', plane };
  }
  const opening = lowestOpening(plane, [...openings, ...sheerOf(body.hull)]);
  if (opening && opening.freeboard < 0) {
    return { outcome: 'swamped', why: 'opening under water', plane, opening, capacity };
  }
  return { outcome: 'floats', plane };
}
