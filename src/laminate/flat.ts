import { areaUnder, lerp } from '../maths/index.ts';
import { type Metres, type SquareMetres, squareMetres, type Station } from '../units/index.ts';
import type { NotComputed } from './types.ts';

/** A level deck or floor from side to side. */
export interface Flat {
  /** Above the baseline; undefined for one that follows the sheer. */
  readonly height?: Metres;
  /** Its ends, forward of the transom. */
  readonly from: Metres;
  readonly to: Metres;
}

/**
 * Area of a level floor or deck from side to side of the hull, as seen from above.
 *
 * @param sections - cross-sections, points from the keel to the sheer, m
 * @returns m2; `notComputed` for a floor that stands above the sheer, or whose ends lie outside the sections
 * @validity straight between sections; a floor ends where the keel rises through it
 * @source derived: half-breadths by straight lines, trapezia between sections
 */
export function flatArea(sections: readonly Station[], flat: Flat): SquareMetres | NotComputed {
  const { height, from, to } = flat;
  const along = sections.toSorted((a, b) => a.x - b.x);
  const [first, last] = [along[0]?.x ?? 0, along.at(-1)?.x ?? 0];
  if (!(from < to && from >= first - 1e-9 && to <= last + 1e-9)) {
    return { notComputed: 'its ends must lie within the lines, the aft end first' };
  }
  const halves: (readonly [x: number, half: number])[] = [];
  for (const { x, points } of along) {
    const half = halfAt(points, height);
    if (half === undefined && x >= from && x <= to) {
      return { notComputed: 'it stands above the sheer' };
    }
    halves.push([x, half ?? 0]);
  }
  return squareMetres(2 * areaUnder(halves, from, to));
}

/** Half-breadth at a height: 0 below the keel, undefined above the sheer, that of the sheer without a height. */
function halfAt(points: Station['points'], height: Metres | undefined): number | undefined {
  const sheer = points.at(-1);
  if (!sheer) return undefined;
  if (height === undefined) return sheer[0];
  if (height > Math.max(...points.map(([, z]) => z))) return undefined;
  const crossings = points.flatMap(([half, z], index) => {
    const below = points[index - 1];
    if (!below || height < below[1] || height > z || z === below[1]) return [];
    return [lerp(below[0], half, (height - below[1]) / (z - below[1]))];
  });
  return Math.max(0, ...crossings);
}
