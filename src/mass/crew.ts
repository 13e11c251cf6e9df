import { clamp } from '../maths/index.ts';
import { metres, type Point3 } from '../units/index.ts';
import { centreOf } from './centre.ts';
import type { Cockpit, Loading, PlacedMass } from './types.ts';

/** From the edge of a cockpit to the middle of who sits at it, m. Common practice, no source. */
const FROM_EDGE = 0.2;
/** Room of one person, along and across, m. Common practice, no source. */
const ROOM = 0.5;

/**
 * The side that a loading leans to: 1 is starboard, which counts where it leans to neither.
 *
 * @source derived: the sign of its centre's distance from the centreline
 */
export const leanOf = ({ centre }: Pick<Loading, 'centre'>): 1 | -1 => (centre.y < 0 ? -1 : 1);

/**
 * A place at the edge of a cockpit, in the middle of its length.
 *
 * @source derived: the corner of a box
 */
export const edgeOf = ({ from, to, halfBreadth, height }: Cockpit, side: 1 | -1): Point3 => ({
  x: metres((from + to) / 2),
  y: metres(side * halfBreadth),
  z: height,
});

/**
 * The same with so many people gone to the side that it leans to, each abreast of their seat; those who change it most
 * go first.
 *
 * @param at - `seats`: 0.2 m in from the edge; `edge`: on it
 * @source common practice, no source
 */
export function toSide(
  loading: Loading,
  cockpit: Cockpit,
  count = loading.people,
  at: 'seats' | 'edge' = 'seats',
): Loading {
  const side = leanOf(loading);
  const reach = cockpit.halfBreadth - (at === 'seats' ? FROM_EDGE : 0);
  const there = (person: PlacedMass): Point3 => ({
    x: metres(clamp(person.at.x, cockpit.from, cockpit.to)),
    y: metres(side * Math.max(reach, side * person.at.y)),
    z: cockpit.height,
  });
  const movers = new Set(
    loading.masses
      .filter(({ kind }) => kind === 'person')
      .toSorted((a, b) => side * a.at.y - side * b.at.y)
      .slice(0, count),
  );
  return moved(loading, (one) => (movers.has(one) ? there(one) : one.at));
}

/**
 * The same with everyone as far aft or forward as they find room, side by side in rows across the cockpit.
 *
 * @source common practice, no source: half a metre to each person, along and across
 */
export function toEnd(loading: Loading, cockpit: Cockpit, end: 'aft' | 'forward'): Loading {
  const { from, to, halfBreadth, height } = cockpit;
  const abreast = Math.max(1, Math.floor((2 * halfBreadth) / ROOM));
  const crew = loading.masses.filter(({ kind }) => kind === 'person');
  const there = (index: number): Point3 => {
    const along = (Math.floor(index / abreast) + 0.5) * ROOM;
    const x = clamp(end === 'aft' ? from + along : to - along, from, to);
    return { x: metres(x), y: metres(0), z: height };
  };
  return moved(loading, (one) => (one.kind === 'person' ? there(crew.indexOf(one)) : one.at));
}

function moved(loading: Loading, place: (one: PlacedMass) => Point3): Loading {
  const masses = loading.masses.map((one) => ({ ...one, at: place(one) }));
  return { ...loading, masses, ...centreOf(masses) };
}
