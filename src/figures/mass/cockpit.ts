import type { Cockpit } from '../../mass/index.ts';
import { type Build, placeInHull } from '../../resolve/index.ts';
import { metres } from '../../units/index.ts';

/** Share of the greatest breadth to which the sheer narrows where a cockpit ends that nobody gave. */
const NARROWS_TO = 0.75;

/** Where people may be, and whether it stands in the hull file; else it is all the room that the sheer leaves. */
export function cockpitOf({ hull }: Pick<Build, 'hull'>): Cockpit & { readonly isGiven: boolean } {
  const { cockpit, dimensions, lines } = hull;
  if (cockpit) {
    const { from, to, halfBreadth, seatHeight } = cockpit;
    const aft = placeInHull({ x: from, y: halfBreadth, z: seatHeight }, dimensions);
    const fore = placeInHull({ x: to, y: halfBreadth, z: seatHeight }, dimensions);
    return { from: aft.x, to: fore.x, halfBreadth: aft.y, height: aft.z, isGiven: true };
  }
  const sheer = lines.map(({ x, points }) => ({ x, at: points.at(-1) ?? [0, 0] }));
  const widest = Math.max(...sheer.map(({ at }) => at[0]));
  const end = sheer.findLast(({ at }) => at[0] >= NARROWS_TO * widest);
  const within = sheer.filter(({ x }) => x <= (end?.x ?? 0));
  return {
    from: metres(0),
    to: metres(end?.x ?? 0),
    halfBreadth: metres(Math.min(...within.map(({ at }) => at[0]))),
    height: metres(Math.min(...within.map(({ at }) => at[1]))),
    isGiven: false,
  };
}
