import { sum } from '../maths/index.ts';
import { metres, type Radians, radians, type Station } from '../units/index.ts';
import type { Computed, PlaningHull } from './types.ts';

/**
 * Chine beam, deadrise and length of the bottom, from the hull's lines.
 *
 * The chine is the point before the sheer; the deadrise is measured from the keel to the first point outboard of it.
 * Beam and deadrise are means over the after half of the length, which is what planes.
 *
 * @param lines - stations from the transom forward, at least two in the after half
 * @returns `notComputed` when a station there has no chine
 * @validity hard-chine hulls; a warped bottom is stood for by its mean, as Savitsky advises for one that is nearly a
 * prism
 * @source derived: means over the stations
 */
export function bottomFrom(
  lines: readonly Station[],
): Computed<Pick<PlaningHull, 'beam' | 'deadrise' | 'length'>> {
  const ahead = Math.max(...lines.map(({ x }) => x));
  const length = metres(ahead - Math.min(...lines.map(({ x }) => x)));
  const after = lines.filter(({ x }) => x <= ahead - length / 2);
  const halves = after.map(({ points }) => halfOf(points));
  const sound = halves.filter((half) => half !== undefined);
  if (sound.length < 2 || sound.length < halves.length) {
    return { notComputed: 'the lines show no chine in the after half of the hull' };
  }
  const mean = (values: readonly number[]): number => sum(values) / values.length;
  return {
    beam: metres(2 * mean(sound.map(({ chine }) => chine))),
    deadrise: radians(mean(sound.map(({ deadrise }) => deadrise))),
    length,
  };
}

function halfOf(
  points: Station['points'],
): { readonly chine: number; readonly deadrise: Radians } | undefined {
  const [keel, outboard] = points;
  const chine = points.at(-2);
  if (!keel || !outboard || !chine || points.length < 3 || outboard[0] <= keel[0]) return undefined;
  return {
    chine: chine[0],
    deadrise: radians(Math.atan2(outboard[1] - keel[1], outboard[0] - keel[0])),
  };
}
