import { clamp } from '../maths/index.ts';

/** A place on the sheet, mm. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Distance between two spots, mm. */
export function distance(a: Spot, b: Spot): number {
  // Math.hypot guards against overflow, which a sheet does not need, and takes several times as long.
  return Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2);
}

/** Distance of a spot from the straight line between two others, mm. */
export function fromLine(spot: Spot, from: Spot, to: Spot): number {
  const length = distance(from, to);
  if (length === 0) return distance(spot, from);
  const along =
    ((spot.x - from.x) * (to.x - from.x) + (spot.y - from.y) * (to.y - from.y)) / length ** 2;
  const share = clamp(along, 0, 1);
  return distance(spot, {
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
  });
}

/** True when two straight lines, each between two spots, cross; to touch is not to cross. */
export function cross(a: Spot, b: Spot, c: Spot, d: Spot): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

const side = (from: Spot, to: Spot, spot: Spot): number =>
  (to.x - from.x) * (spot.y - from.y) - (to.y - from.y) * (spot.x - from.x);
