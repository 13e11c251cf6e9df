import { type Metres, metres, type Point3 } from '../units/index.ts';

/** How much room a thing takes up. */
export interface Size {
  /** Along the boat. */
  readonly length: Metres;
  /** Across the boat. */
  readonly breadth: Metres;
  readonly height: Metres;
}

/** A box, square to the boat, with its middle at a point. */
export interface Space {
  readonly at: Point3;
  readonly size: Size;
}

/** Things that touch do not stand in each other's way, m. */
const TOUCH = 1e-6;

/**
 * How far two boxes stand in one another: the least that one of them must move, along, across or up, to be clear.
 *
 * @returns m, 0 when they are clear of each other or only touch
 * @validity boxes square to the boat; what lies in one of another shape may fit where this says it does not
 * @source derived: two boxes meet when they meet along, across and up
 */
export function standsIn(one: Space, other: Space): Metres {
  const shared = (axis: keyof Point3, side: keyof Size): number =>
    (one.size[side] + other.size[side]) / 2 - Math.abs(one.at[axis] - other.at[axis]);
  const least = Math.min(shared('x', 'length'), shared('y', 'breadth'), shared('z', 'height'));
  return metres(least > TOUCH ? least : 0);
}

/**
 * True when two boxes cannot both be where they are: `standsIn` says by how much.
 *
 * @source derived: as `standsIn`
 */
export const clash = (one: Space, other: Space): boolean => standsIn(one, other) > 0;

/**
 * The box of several alike, side by side across the boat.
 *
 * @source common practice, no source: a bank of batteries
 */
export function sideBySide({ at, size }: Space, count: number): Space {
  return { at, size: { ...size, breadth: metres(size.breadth * count) } };
}
