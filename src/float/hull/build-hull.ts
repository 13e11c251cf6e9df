import type { SectionPoint } from '../../units/index.ts';
import { checkLines } from './check-lines.ts';
import { interpolate } from '../../maths/index.ts';
import { MIN_INTERVALS } from '../constants.ts';
import { curveThrough, type Lengthwise } from './curve-through.ts';
import { formOf, type HalfSection } from './form.ts';
import { stemSections } from './stem.ts';
import type { HullForm, HullLines, LinesProblem } from '../types.ts';

/** The form, unless a problem is fatal, and what is wrong with the lines. */
export interface BuiltHull {
  readonly form?: HullForm;
  readonly problems: readonly LinesProblem[];
}

/**
 * The closed form that all computation is done with: the stations, stations between them, and the stem; closed at the transom and, as if decked, at the sheer.
 *
 * Curved lines go through the points of each station with the slope of the parabola through its neighbours;
 * the corners of the sections (chines) stay corners.
 *
 * @validity a section with fewer points than another has its longest edges halved, so its shape is kept but
 * lines may join points that are not meant for each other
 * @source derived: piecewise cubic Hermite interpolation, error of the third power of the spacing
 */
export function buildHull(lines: HullLines): BuiltHull {
  const problems = checkLines(lines);
  if (problems.some(({ fatal }) => fatal)) return { problems };
  const most = Math.max(...lines.stations.map(({ points }) => points.length));
  const given = lines.stations.map(({ x, points }) => ({ x, points: withPoints(points, most) }));
  const between = sectionsBetween(given, lines.between);
  return { form: formOf([...between, ...stemSections(lines, given)]), problems };
}

/** The same polyline with more points, made by halving its longest edge. */
function withPoints(points: readonly SectionPoint[], count: number): HalfSection['points'] {
  const filled: (readonly [number, number])[] = [...points];
  while (filled.length < count) {
    let longest = { edge: 1, length: -1, middle: [0, 0] as readonly [number, number] };
    filled.forEach(([y, z], edge) => {
      const before = filled[edge - 1];
      if (!before) return;
      const length = Math.hypot(y - before[0], z - before[1]);
      const middle = [(y + before[0]) / 2, (z + before[1]) / 2] as const;
      if (length > longest.length) longest = { edge, length, middle };
    });
    filled.splice(longest.edge, 0, longest.middle);
  }
  return filled;
}

/** The sections with more between them: what water does between twisted lines is integrated over short pieces. */
function sectionsBetween(
  given: readonly HalfSection[],
  between: HullLines['between'],
): readonly HalfSection[] {
  const xs = given.map(({ x }) => x);
  const line = (index: number, axis: 0 | 1): Lengthwise => {
    const values = given.map((station) => station.points[index]?.[axis] ?? 0);
    if (between === 'curved') return curveThrough(xs, values);
    const ends = xs.map((x, at) => [x, values[at] ?? 0] as const);
    return (x) => interpolate(ends, x, 'held');
  };
  const points = given[0]?.points.length ?? 0;
  const lines = Array.from({ length: points }, (_, index) => [line(index, 0), line(index, 1)]);
  const pieces = Math.ceil(MIN_INTERVALS[between] / (given.length - 1));
  return given.flatMap((station, index) => {
    const next = given[index + 1];
    if (!next) return [station];
    const added = Array.from({ length: pieces - 1 }, (_, piece) => {
      const x = station.x + ((next.x - station.x) * (piece + 1)) / pieces;
      const at = lines.map(
        ([breadth, height]) => [Math.max(0, breadth?.(x) ?? 0), height?.(x) ?? 0] as const,
      );
      return { x, points: at };
    });
    return [station, ...added];
  });
}
