import { interpolate, lerp } from '../maths/index.ts';
import { radians, type Radians, squareMetres, type SquareMetres } from '../units/index.ts';
import { type Corner, cornersOf, immersedArea } from './mesh.ts';
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
    const out = row.flatMap((corner, index) => crossing(corner, row[index + 1]));
    return out.length > 0 ? [[row[0]?.along ?? 0, Math.max(...out)] as const] : [];
  });
  const [aft, last] = [sides[0], sides.at(-1)];
  const next = last && rows.find(([keel]) => (keel?.along ?? 0) > last[0]);
  if (!aft || !last || !rows[0]) return undefined;
  const [under, over] = [rows.findLast(([keel]) => keel?.along === last[0])?.[0], next?.[0]];
  const bow =
    under && over && under.above < 0 && over.above > 0
      ? lerp(under.along, over.along, under.above / (under.above - over.above))
      : last[0];
  const line = bow > last[0] ? [...sides, [bow, 0] as const] : sides;
  const run = FOREMOST * (bow - aft[0]);
  const half = interpolate(line, bow - run, 'held') - interpolate(line, bow, 'held');
  return {
    transom: squareMetres(immersedArea(rows[0], plane)),
    entrance: radians(Math.atan2(half, run)),
  };
}

function crossing(from: Corner, to: Corner | undefined): readonly number[] {
  if (!to || from.above < 0 === to.above < 0) return [];
  return [lerp(from.across, to.across, from.above / (from.above - to.above))];
}
