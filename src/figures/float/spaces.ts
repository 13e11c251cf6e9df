import { clash, sideBySide, type Size, type Space, standsIn } from '../../float/index.ts';
import { type DerivedBuild, type Instance, instancesOf } from '../../derive/index.ts';
import type { BuildItem } from '../../resolve/index.ts';
import { type Metres, metres, type Point3 } from '../../units/index.ts';

/** Room that a movable thing is given when nobody said how large it is, m: common practice, no source. */
const UNKNOWN = metres(0.1);
const SMALL: Size = { length: UNKNOWN, breadth: UNKNOWN, height: UNKNOWN };

/** The room that a thing takes up at a place. */
export const roomAt = ({ size }: Instance, at: Point3): Space => ({ at, size: size ?? SMALL });

/**
 * What stands in the way of one of an item at a place: the name of the first thing found, undefined when it is free.
 * Only things whose size is known, and the rest of the same bank, can stand in the way.
 */
export function inTheWay(build: DerivedBuild, moved: BuildItem, at: Point3): string | undefined {
  const [one, ...others] = instancesOf(build, moved);
  const room = roomAt(one, at);
  if (others.length > 0 && clash(room, sideBySide(roomAt(one, one.at), others.length)))
    return moved.name;
  const found = build.items.find((item) => {
    if (item.key === moved.key || mayHold(item, moved)) return false;
    const space = spaceOf(item, build);
    return space !== undefined && clash(room, space);
  });
  return found?.name;
}

/** Two things as placed, and how far one stands in the other. */
export interface Overlap {
  readonly one: BuildItem;
  readonly other: BuildItem;
  readonly by: Metres;
}

/** Every two things of known size that stand in one another as placed, those meant to left out. */
export function overlaps(build: DerivedBuild): readonly Overlap[] {
  const placed = build.items.flatMap((item) => {
    const space = spaceOf(item, build);
    return space ? [{ item, space }] : [];
  });
  return placed.flatMap(({ item: one, space }, index) =>
    placed.slice(index + 1).flatMap(({ item: other, space: room }) => {
      const by = standsIn(space, room);
      return by > 0 && !mayHold(one, other) ? [{ one, other, by }] : [];
    }),
  );
}

/** True when one of the two is meant to stand in the other. */
const mayHold = (one: BuildItem, other: BuildItem): boolean =>
  [one.float?.within.includes(other.key), other.float?.within.includes(one.key)].includes(true);

/** The room that all of an item take up; undefined when nobody said. */
function spaceOf(item: BuildItem, build: DerivedBuild): Space | undefined {
  const all = instancesOf(build, item);
  const [{ at, size }] = all;
  if (size) return sideBySide({ at, size }, all.length);
  if (!item.float?.tank) return undefined;
  const { from, to, top, halfBreadth = build.hull.dimensions.beam / 2 } = item.float.tank;
  return {
    at: { x: metres((from + to) / 2), y: metres(0), z: metres(top / 2) },
    size: { length: metres(to - from), breadth: metres(2 * halfBreadth), height: top },
  };
}
