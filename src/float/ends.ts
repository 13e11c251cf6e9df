import { interpolate } from '../maths/index.ts';
import { radians, type Radians, squareMetres, type SquareMetres } from '../units/index.ts';
import { cornersOf, immersedArea, surfacing } from './mesh.ts';
import type { HullForm, WaterPlane } from './types.ts';

/** Share of the waterline that its angle at the bow is taken over. Common practice, no source. */
const FOREMOST = 0.1;

/**
 * What the water meets at either end: the immersed area of the transom, and half the angle between the sides of the
 * waterline over its foremost tenth.
 *
 * @returns undefined where nothing lies in the water
 * @source derived: the waterline passes the points where the sections and the edges between them pass the surface
 */
export function endsOf(
  form: HullForm,
  plane: WaterPlane,
): { readonly transom: SquareMetres; readonly entrance: Radians } | undefined {
  const rows = cornersOf(form, plane);
  const sides = rows.flatMap((row) => {
    const out = row.flatMap((corner, index) => surfacing(corner, row[index + 1])?.across ?? []);
    return out.length > 0 ? [[row[0]?.along ?? 0, Math.max(...out)] as const] : [];
  });
  const [aft, last] = [sides[0], sides.at(-1)];
  if (!aft || !last || !rows[0]) return undefined;
  const keel = rows.flatMap(([lowest]) => lowest ?? []);
  const end = keel.findLastIndex(({ along }) => along === last[0]);
  const stem = keel[end] && surfacing(keel[end], keel[end + 1]);
  const fore = stem?.along ?? last[0];
  const line = fore > last[0] ? [...sides, [fore, 0] as const] : sides;
  const run = FOREMOST * (fore - aft[0]);
  const half = interpolate(line, fore - run, 'held') - interpolate(line, fore, 'held');
  return {
    transom: squareMetres(immersedArea(rows[0], plane)),
    entrance: radians(Math.atan2(half, run)),
  };
}
