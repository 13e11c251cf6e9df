import { type Corner, cornersOf, surfacing } from './mesh.ts';
import type { HullForm, WaterPlane } from './types.ts';

/** How far the immersed part reaches, m. */
export interface Extent {
  readonly length: number;
  readonly beam: number;
  readonly draught: number;
}

/**
 * Length, beam and draught of the immersed part, m; undefined when nothing is immersed.
 *
 * @source derived: the immersed part of a body of plane facets reaches to its immersed corners and to the
 * points where its edges pass the surface
 */
export function extentOf(form: HullForm, plane: WaterPlane): Extent | undefined {
  const rows = cornersOf(form, plane);
  const along: number[] = [];
  const across: number[] = [];
  let deepest = 0;
  const reach = (from: Corner, to: Corner | undefined): void => {
    const cut = surfacing(from, to);
    if (!cut) return;
    along.push(cut.along);
    across.push(cut.across);
  };
  rows.forEach((row, station) =>
    row.forEach((corner, index) => {
      reach(corner, row[(index + 1) % row.length]);
      reach(corner, rows[station + 1]?.[index]);
      if (corner.above >= 0) return;
      along.push(corner.along);
      across.push(corner.across);
      deepest = Math.max(deepest, -corner.above);
    }),
  );
  if (deepest === 0) return undefined;
  return { length: spread(along), beam: spread(across), draught: deepest };
}

function spread(values: readonly number[]): number {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return most - least;
}
