import { type Corner, cornersOf } from './mesh.ts';
import type { HullForm, WaterPlane } from './types.ts';

/**
 * Area of the largest immersed section at a station, m2, square to the keel.
 *
 * @source derived: Green's theorem on the clipped polygon
 */
export function largestSection(form: HullForm, plane: WaterPlane): number {
  return Math.max(...cornersOf(form, plane).map((row) => immersedArea(row, plane)));
}

/**
 * Immersed area of one section, m2, square to the keel.
 *
 * @source derived: Green's theorem on the clipped polygon; the height above the water is foreshortened by
 * the trim
 */
export function immersedArea(row: readonly Corner[], { trim }: WaterPlane): number {
  let area = 0;
  row.forEach((corner, index) => {
    const [from, to] = clipEdge(corner, row[(index + 1) % row.length] ?? corner);
    area += (from.across * to.above - to.across * from.above) / 2;
  });
  return area / Math.cos(trim);
}

function clipEdge(from: Corner, to: Corner): readonly [Corner, Corner] {
  if (from.above >= 0 && to.above >= 0) return [from, from];
  if (from.above < 0 && to.above < 0) return [from, to];
  const share = from.above / (from.above - to.above);
  const cut = { ...from, across: from.across + share * (to.across - from.across), above: 0 };
  return from.above < 0 ? [from, cut] : [cut, to];
}
