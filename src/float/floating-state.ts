import { metres, type Metres, type Radians } from '../units/index.ts';
import { LEVEL_TRIM, UPRIGHT_HEEL } from './constants.ts';
import { type Freeboards, freeboards } from './freeboard.ts';
import { type MetacentricHeight, metacentricHeight } from './metacentric-height.ts';
import type { FloatingBody, Load, Opening, WaterPlane } from './types.ts';
import { heightAbove } from './water-plane.ts';

/** How it lies, and in which words it may be said. */
export interface FloatingState {
  readonly plane: WaterPlane;
  /** Depths of the baseline under the water at the ends of the lines. */
  readonly draughtAft: Metres;
  readonly draughtFore: Metres;
  readonly trim: Radians;
  readonly heel: Radians;
  readonly trims: 'level' | 'by the stern' | 'by the bow';
  readonly leans: 'upright' | 'to starboard' | 'to port';
  readonly freeboards: Freeboards;
  /** Undefined when it cannot be held upright. */
  readonly metacentricHeight?: MetacentricHeight;
}

/**
 * Draughts, freeboards and GM of a boat that lies at a plane.
 *
 * @param freeSurfaces - moment of transference inside the boat, kg.m
 * @source derived: heights square to the surface. What counts as level and upright: common practice, no source
 */
export function stateOf(
  body: FloatingBody,
  load: Load,
  plane: WaterPlane,
  openings: readonly Opening[],
  freeSurfaces: number,
): FloatingState {
  const baseline = (x: number | undefined): Metres =>
    metres(0 - heightAbove(plane, { x: metres(x ?? 0), y: metres(0), z: metres(0) }));
  const height = metacentricHeight(body, load, freeSurfaces);
  return {
    plane,
    draughtAft: baseline(body.hull.xs[0]),
    draughtFore: baseline(body.hull.xs.at(-1)),
    trim: plane.trim,
    heel: plane.heel,
    trims: trimWord(plane.trim),
    leans: leanWord(plane.heel),
    freeboards: freeboards(body.hull, plane, openings),
    ...(height && { metacentricHeight: height }),
  };
}

function trimWord(trim: number): FloatingState['trims'] {
  if (Math.abs(trim) <= LEVEL_TRIM) return 'level';
  return trim > 0 ? 'by the stern' : 'by the bow';
}

function leanWord(heel: number): FloatingState['leans'] {
  if (Math.abs(heel) <= UPRIGHT_HEEL) return 'upright';
  return heel > 0 ? 'to starboard' : 'to port';
}
