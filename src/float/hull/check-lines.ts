import type { SectionPoint, Station } from '../../units/index.ts';
import { DECLARED_TOLERANCE, LENGTH_TOLERANCE } from '../constants.ts';
import type { DeclaredHull, HullLines, LinesProblem } from '../types.ts';

/**
 * What is wrong with the lines of a hull, as data; the fatal ones leave nothing to compute with.
 *
 * @source derived: a closed surface must not cross itself; at least three stations, since two can only be a box
 */
export function checkLines(lines: HullLines): readonly LinesProblem[] {
  const { stations } = lines;
  const problems: LinesProblem[] = stations.flatMap(checkStation);
  if (stations.length < 3) problems.push({ kind: 'too few stations', fatal: true });
  stations.forEach((station, index) => {
    const next = stations[index + 1];
    if (next && next.x <= station.x) {
      problems.push({ kind: 'stations out of order', fatal: true, station: index + 1 });
    }
    if (next && next.points.length !== station.points.length) {
      problems.push({ kind: 'unequal points', fatal: false, station: index + 1 });
    }
  });
  const forward = stations.findIndex(({ x }) => !(x <= (lines.length ?? x) + LENGTH_TOLERANCE));
  if (forward >= 0) problems.push({ kind: 'beyond the length', fatal: true, station: forward });
  if (!bowRises(lines)) problems.push({ kind: 'bow does not rise', fatal: true });
  return problems;
}

/**
 * Where the lines differ by more than 2 % from what is declared of the hull.
 *
 * @param volume - of the form up to the sheer, m3, when it is to be compared
 * @source the share of 2 %: common practice, no source
 */
export function compareDeclared(
  { stations, length }: HullLines,
  declared: DeclaredHull,
  volume?: number,
): readonly LinesProblem[] {
  const points = stations.flatMap((station) => station.points);
  const middle = stations[Math.floor((stations.length - 1) / 2)]?.points ?? [];
  const heights = middle.map(([, height]) => height);
  const first = stations[0]?.x ?? 0;
  const received = {
    length: (length ?? stations.at(-1)?.x ?? 0) - first,
    beam: 2 * Math.max(0, ...points.map(([halfBreadth]) => halfBreadth)),
    depth: Math.max(...heights) - Math.min(...heights),
    volume,
  };
  return (['length', 'beam', 'depth', 'volume'] as const).flatMap((what) => {
    const [ours, theirs] = [received[what], declared[what]];
    if (ours === undefined || theirs === undefined) return [];
    if (Math.abs(ours - theirs) <= DECLARED_TOLERANCE * theirs) return [];
    return [
      { kind: 'differs from declared', fatal: false, what, received: ours, declared: theirs },
    ];
  });
}

function checkStation({ x, points }: Station, station: number): readonly LinesProblem[] {
  if (!Number.isFinite(x) || !points.flat().every(Number.isFinite)) {
    return [{ kind: 'not a number', fatal: true, station }];
  }
  if (points.length < 2) return [{ kind: 'too few points', fatal: true, station }];
  const problems: LinesProblem[] = [];
  if (points.some(([halfBreadth]) => halfBreadth < 0)) {
    problems.push({ kind: 'negative half-breadth', fatal: true, station });
  }
  if (points.some(([, height], index) => height < (points[index - 1]?.[1] ?? height))) {
    problems.push({ kind: 'height falls', fatal: false, station });
  }
  if (crossesItself(points)) problems.push({ kind: 'crosses itself', fatal: true, station });
  return problems;
}

function crossesItself(points: readonly SectionPoint[]): boolean {
  const edges = points.slice(1).flatMap((to, index) => {
    const from = points[index];
    return from ? [[from, to] as const] : [];
  });
  return edges.some(([a, b], index) =>
    edges
      .slice(index + 2)
      .some(([c, d]) => side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0),
  );
}

/** Above zero when `c` lies to the left of the line from `a` to `b`, below zero to the right. */
function side(a: SectionPoint, b: SectionPoint, c: SectionPoint): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function bowRises({ stations, bow }: HullLines): boolean {
  const last = stations.at(-1)?.x ?? 0;
  if (bow === undefined) return true;
  return (
    bow.length >= 2 &&
    bow.every(([x, height], index) => {
      const [before, below] = bow[index - 1] ?? [last, Number.NEGATIVE_INFINITY];
      return x >= before && height > below;
    })
  );
}
