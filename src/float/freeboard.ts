import { metres, type Metres } from '../units/index.ts';
import type { HullForm, Opening, WaterPlane } from './types.ts';
import { heightAbove } from './water-plane.ts';

/** A place and how high it stands above the water. */
export interface Freeboard {
  readonly name: string;
  readonly freeboard: Metres;
  readonly side: 'port' | 'starboard' | 'centre';
}

export interface Freeboards {
  /** At the stem head, or the lower corner of a bow that is cut off. */
  readonly bow: Freeboard;
  /** The lowest point of the sheer between bow and transom. */
  readonly side: Freeboard;
  /** The lower corner of the sheer at the transom. */
  readonly transom: Freeboard;
  /** Of the openings and the sheer, the one that water reaches first. */
  readonly lowest: Freeboard;
}

/**
 * Corners of the sheer, both sides, from the transom forward.
 *
 * @source derived: the last point of each half-section
 */
export function sheerOf({ xs, ring, y, z }: HullForm): readonly Opening[] {
  return Array.from(xs).flatMap((x, station) =>
    [ring / 2 - 1, ring / 2].map((index) => {
      const at = station * ring + index;
      const name = sheerName(station, xs.length);
      return { name, at: { x: metres(x), y: metres(y[at] ?? 0), z: metres(z[at] ?? 0) } };
    }),
  );
}

/**
 * The opening that stands lowest above the water; undefined when there is none.
 *
 * @source derived: height square to the surface
 */
export function lowestOpening(
  plane: WaterPlane,
  openings: readonly Opening[],
): Freeboard | undefined {
  let lowest: Freeboard | undefined;
  for (const { name, at } of openings) {
    const freeboard = heightAbove(plane, at);
    if (lowest && freeboard >= lowest.freeboard) continue;
    lowest = { name, freeboard, side: sideOf(at.y) };
  }
  return lowest;
}

/**
 * Of the openings and the sheer of a hull, the place that stands lowest above the water; undefined when it has none.
 *
 * @source derived: height square to the surface
 */
export const lowestOf = (
  hull: HullForm,
  openings: readonly Opening[],
  plane: WaterPlane,
): Freeboard | undefined => lowestOpening(plane, [...openings, ...sheerOf(hull)]);

/**
 * Heights above the water of bow, side, transom and the lowest opening, m.
 *
 * @source derived: height square to the surface
 */
export function freeboards(
  hull: HullForm,
  plane: WaterPlane,
  openings: readonly Opening[],
): Freeboards {
  const sheer = sheerOf(hull);
  const none: Freeboard = { name: 'sheer', freeboard: metres(0), side: 'centre' };
  const least = (of: readonly Opening[]): Freeboard => lowestOpening(plane, of) ?? none;
  return {
    bow: least(sheer.slice(-2)),
    side: least(sheer.slice(2, -2)),
    transom: least(sheer.slice(0, 2)),
    lowest: least([...openings, ...sheer]),
  };
}

function sheerName(station: number, count: number): string {
  if (station === 0) return 'transom corner';
  return station === count - 1 ? 'bow' : 'sheer';
}

function sideOf(y: number): Freeboard['side'] {
  if (y === 0) return 'centre';
  return y > 0 ? 'starboard' : 'port';
}
