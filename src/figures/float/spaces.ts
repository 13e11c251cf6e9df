import { clash, sideBySide, type Size, type Space, standsIn } from '../../float/index.ts';
import type { DerivedBuild, DerivedItem } from '../../derive/index.ts';
import { type Metres, metres, type Point3 } from '../../units/index.ts';

/** Room that a movable thing is given when nobody said how large it is, m: common practice, no source. */
const UNKNOWN = metres(0.1);
const SMALL: Size = { length: UNKNOWN, breadth: UNKNOWN, height: UNKNOWN };

/** The room that one of an item takes up at a place. */
export const roomAt = ({ instances: [{ size = SMALL }] }: DerivedItem, at: Point3): Space => ({
  at,
  size,
});

/**
 * What stands in the way of one of an item at a place: the name of the first thing found, undefined when it is free.
 * Only things whose size is known, and the rest of the same bank, can stand in the way.
 */
export function inTheWay(
  { items, hull }: DerivedBuild,
  moved: DerivedItem,
  at: Point3,
): string | undefined {
  const [one, ...others] = moved.instances;
  const room = roomAt(moved, at);
  if (others.length > 0 && clash(room, sideBySide(roomAt(moved, one.at), others.length)))
    return moved.name;
  const found = items.find((item) => {
    if (item.key === moved.key || mayHold(item, moved)) return false;
    const space = spaceOf(item, hull.dimensions.beam);
    return space !== undefined && clash(room, space);
  });
  return found?.name;
}

/** Two things as placed, and how far one stands in the other. */
export interface Overlap {
  readonly one: DerivedItem;
  readonly other: DerivedItem;
  readonly by: Metres;
}

/** Every two things of known size that stand in one another as placed, those meant to left out. */
export function overlaps({ items, hull }: DerivedBuild): readonly Overlap[] {
  const placed = items.flatMap((item) => {
    const space = spaceOf(item, hull.dimensions.beam);
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
const mayHold = (one: DerivedItem, other: DerivedItem): boolean =>
  [one.float?.within.includes(other.key), other.float?.within.includes(one.key)].includes(true);

/** The box of all of an item; undefined when nobody said how large one is. */
export function roomOf({ instances }: DerivedItem): Space | undefined {
  const [{ at, size }] = instances;
  return size && sideBySide({ at, size }, instances.length);
}

/** The room that all of an item take up, a tank in the hull too; undefined when nobody said. */
function spaceOf(item: DerivedItem, beam: number): Space | undefined {
  const box = roomOf(item);
  const { float } = item;
  if (box) return box;
  if (!float?.tank) return undefined;
  const { from, to, top, halfBreadth = beam / 2 } = float.tank;
  return {
    at: { x: metres((from + to) / 2), y: metres(0), z: metres(top / 2) },
    size: { length: metres(to - from), breadth: metres(2 * halfBreadth), height: top },
  };
}
