import { type Kilograms, kilograms, type NotComputed, searchFailed } from '../units/index.ts';
import { MAX_HEEL_UPRIGHT, MAX_TRIM_UPRIGHT } from './constants.ts';
import { type Freeboard, lowestOf } from './freeboard.ts';
import { capacityOf } from './immerse.ts';
import { levelFor, solveEquilibrium } from './solve-equilibrium.ts';
import type { FloatingBody, Load, Opening, WaterPlane } from './types.ts';

/** How it comes to rest. The planes are those of a boat that nothing came aboard of. */
export type Equilibrium =
  | { readonly outcome: 'floats'; readonly plane: WaterPlane }
  | {
      readonly outcome: 'swamps';
      /** Where water first comes in; missing when it is heavier than all the water that it can displace. */
      readonly opening?: Freeboard;
      readonly plane?: WaterPlane;
      /** Mass that it can carry up to the sheer, upright. */
      readonly capacity: Kilograms;
    }
  | { readonly outcome: 'goes down'; readonly by: 'bow' | 'stern'; readonly plane: WaterPlane }
  | { readonly outcome: 'capsizes'; readonly to: 'port' | 'starboard'; readonly plane: WaterPlane }
  | ({ readonly outcome: 'not computed' } & NotComputed);

/**
 * Level, trim and heel at which weight and buoyancy balance, found together; better than 1e-6 m and 1e-6 rad where
 * its GM there is more than 1e-7 m to either side of nothing. Nearer to neutral than that, moments that rounding cannot tell
 * from none leave the heel open to about 1e-5 rad, and a boat with no GM at any heel rests wherever it is.
 *
 * @param openings - where water comes aboard, besides the sheer, which always counts
 * @param start - a plane near the answer, if one is known
 * @returns `goes down` when it comes to rest with more than 30 degrees of trim; `swamps` when it is too heavy, or rests
 * with an opening under water; `capsizes` with more than 45 degrees of heel, unless it goes down or swamps even when it
 * is held upright; `not computed` says nothing about the boat
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
    return { outcome: 'not computed', notComputed: 'the boat has no mass' };
  }
  const capacity = kilograms(capacityOf(body) * body.water);
  if (mass >= capacity) return { outcome: 'swamps', capacity };
  const from = start ?? levelFor(body, load, 0, 0);
  const found = from && solveEquilibrium(body, load, from, false);
  if (!found || found.outcome === 'not found') {
    return {
      outcome: 'not computed',
      ...searchFailed('the search for where it floats did not end'),
    };
  }
  const { plane } = found;
  const lost = lostAt(plane, body, openings, capacity);
  if (lost) return lost;
  if (Math.abs(plane.heel) <= MAX_HEEL_UPRIGHT) return { outcome: 'floats', plane };
  const upright = solveEquilibrium(body, load, from, true);
  return (
    (upright.outcome !== 'not found' && lostAt(upright.plane, body, openings, capacity)) || {
      outcome: 'capsizes',
      to: plane.heel > 0 ? 'starboard' : 'port',
      plane,
    }
  );
}

/** Down by an end or swamped at a plane; undefined where it is neither, or leans too far for openings to matter. */
function lostAt(
  plane: WaterPlane,
  { hull }: FloatingBody,
  openings: readonly Opening[],
  capacity: Kilograms,
): Equilibrium | undefined {
  if (Math.abs(plane.trim) > MAX_TRIM_UPRIGHT) {
    return { outcome: 'goes down', by: plane.trim > 0 ? 'stern' : 'bow', plane };
  }
  if (Math.abs(plane.heel) > MAX_HEEL_UPRIGHT) return undefined;
  const opening = lowestOf(hull, openings, plane);
  if (!opening || opening.freeboard >= 0) return undefined;
  return { outcome: 'swamps', plane, opening, capacity };
}
