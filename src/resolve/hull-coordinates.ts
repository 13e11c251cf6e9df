import type { Driver, Hull, Outboard, Position, Share } from '../schema/index.ts';
import {
  type Decimal,
  decimalOfMeasure,
  metres,
  multiplyDecimals,
  type Point3,
} from '../units/index.ts';

type Dimensions = Hull['dimensions'];

/**
 * What a quantity is multiplied by: the count ordered, times the hull dimension that it grows with.
 *
 * @returns an exact decimal; hull dimensions are taken to the millimetre, areas to the cm2
 */
export function driverFactor(driver: Driver, count: number, dimensions: Dimensions): Decimal {
  const ordered: Decimal = { amount: BigInt(count), scale: 0n };
  switch (driver) {
    case 'count':
      return ordered;
    case 'once':
      return { amount: 1n, scale: 0n };
    case 'length':
      return multiplyDecimals(ordered, decimalOfMeasure(dimensions.length, 3));
    case 'beam':
      return multiplyDecimals(ordered, decimalOfMeasure(dimensions.beam, 3));
    case 'deck-area':
      return multiplyDecimals(ordered, decimalOfMeasure(dimensions.deckArea, 4));
  }
}

/** A position in boat axes, m, with shares taken of the hull's own dimensions. */
export function placeInHull(position: Position, dimensions: Dimensions): Point3 {
  const along = (coordinate: Position['x'] | Share) =>
    typeof coordinate === 'object'
      ? metres(coordinate.share * dimensions[coordinate.of])
      : coordinate;
  return { x: along(position.x), y: along(position.y), z: along(position.z) };
}

/** The middle of the hull, m: it stands in for a position that nobody gave. */
export function middleOf({ length, depth }: Dimensions): Point3 {
  return { x: metres(length / 2), y: metres(0), z: metres(depth / 2) };
}

/** Where the middle of who steers is, m. */
export function helmOf(
  { seats: [first], tillerSeat, dimensions }: Hull,
  { steering }: Outboard,
): Point3 {
  const seat = steering === 'tiller' ? tillerSeat : first;
  return seat ? placeInHull(seat, dimensions) : middleOf(dimensions);
}

/** The point midway between two, m. */
export function midway(one: Point3, other: Point3): Point3 {
  const middle = (axis: keyof Point3) => metres((one[axis] + other[axis]) / 2);
  return { x: middle('x'), y: middle('y'), z: middle('z') };
}

/**
 * Where the mass of an outboard on the transom is, m: behind it, and above the height that it clamps at.
 *
 * @source common practice, no source
 */
export function outboardCentre({ transomHeight }: Dimensions): Point3 {
  return { x: metres(-0.25), y: metres(0), z: metres(transomHeight + 0.1) };
}
