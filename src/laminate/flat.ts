import { type Metres, metres, type SquareMetres, squareMetres } from '../units/index.ts';
import type { HullSection } from './surface.ts';
import type { NotComputed } from './types.ts';

/** A level deck or floor from side to side. */
export interface Flat {
  /** Above the baseline; undefined for one that follows the sheer. */
  readonly height?: Metres;
  /** Its ends, forward of the transom. */
  readonly from: Metres;
  readonly to: Metres;
}

/** Half-breadth of the hull at a place along her. */
interface Half {
  readonly x: number;
  readonly half: number;
}

/**
 * Area of a level floor or deck from side to side of the hull, as seen from above.
 *
 * @param sections - cross-sections, points from the keel to the sheer, m
 * @returns m2; `notComputed` for a floor that stands above the sheer, or whose ends lie outside the sections
 * @validity straight between sections; a floor ends where the keel rises through it
 * @source derived: half-breadths by straight lines, trapezia between sections
 */
export function flatArea(sections: readonly HullSection[], flat: Flat): SquareMetres | NotComputed {
  const { height, from, to } = flat;
  const along = sections.toSorted((a, b) => a.x - b.x);
  const [first, last] = [along[0]?.x ?? 0, along.at(-1)?.x ?? 0];
  if (!(from < to && from >= first - 1e-9 && to <= last + 1e-9)) {
    return { notComputed: `its ends must lie from ${first} m to ${last} m, the aft end first` };
  }
  const halves: Half[] = [];
  for (const { x, points } of along) {
    const half = halfAt(points, height);
    if (half === undefined && x >= from && x <= to) {
      return { notComputed: 'it stands above the sheer' };
    }
    halves.push({ x, half: half ?? 0 });
  }
  const ends = [from, ...halves.map(({ x }) => x).filter((x) => x > from && x < to), to];
  const area = ends.reduce((sum, x, index) => {
    const aft = ends[index - 1];
    return aft === undefined
      ? sum
      : sum + ((between(halves, aft) + between(halves, x)) / 2) * (x - aft);
  }, 0);
  return squareMetres(metres(2) * area);
}

/** Half-breadth at a height: 0 below the keel, undefined above the sheer, that of the sheer without a height. */
function halfAt(points: HullSection['points'], height: Metres | undefined): number | undefined {
  const sheer = points.at(-1);
  if (!sheer) return undefined;
  if (height === undefined) return sheer[0];
  if (height > Math.max(...points.map(([, z]) => z))) return undefined;
  const crossings = points.flatMap(([half, z], index) => {
    const below = points[index - 1];
    if (!below || height < below[1] || height > z || z === below[1]) return [];
    return [below[0] + ((height - below[1]) / (z - below[1])) * (half - below[0])];
  });
  return Math.max(0, ...crossings);
}

function between(halves: readonly Half[], x: number): number {
  const index = halves.findIndex((one) => one.x >= x - 1e-9);
  const fore = halves[index];
  const aft = halves[index - 1] ?? fore;
  if (!fore || !aft) return 0;
  const share = fore.x > aft.x ? (x - aft.x) / (fore.x - aft.x) : 1;
  return aft.half + share * (fore.half - aft.half);
}
