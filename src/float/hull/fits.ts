import { interpolate } from '../../maths/index.ts';
import { metres, type Metres } from '../../units/index.ts';
import type { Space } from '../space.ts';
import type { HullForm } from '../types.ts';
import { type HalfSection, halfSectionAt } from './form.ts';

/** Sections along a box that are looked at. */
const CUTS = 9;

/**
 * How far a box stands out of a hull and of its sides carried straight up from the sheer: the least that its worst
 * corner must move, in or up.
 *
 * @returns m, 0 when it is inside; infinite where the box reaches past the transom or the stem
 * @validity hulls that widen upwards; to the outside of the moulding, so thickness and frames are not told
 * @source derived: nine sections along the box against its lower corners and its sides
 */
export function standsOut(form: HullForm, { at, size }: Space): Metres {
  const half = size.breadth / 2;
  const beside = Math.max(Math.abs(at.y - half), Math.abs(at.y + half));
  const bottom = at.z - size.height / 2;
  const out = Array.from({ length: CUTS }, (_, index) => {
    const section = halfSectionAt(form, at.x + size.length * (index / (CUTS - 1) - 0.5));
    return section ? cornerOut(section, beside, bottom) : Number.POSITIVE_INFINITY;
  });
  return metres(Math.max(0, ...out));
}

/** How far a point is outside a half-section: out by its breadth there, or down by the skin above it. */
function cornerOut({ points }: HalfSection, y: number, z: number): number {
  const [, keel = 0] = points[0] ?? [];
  const upwards = points.map(([breadth, height]) => [height, breadth] as const);
  const sideways = z < keel ? Number.POSITIVE_INFINITY : y - interpolate(upwards, z, 'held');
  if (sideways <= 0) return 0;
  const isUnder = y <= (points.at(-1)?.[0] ?? 0);
  return isUnder ? Math.min(sideways, interpolate(points, y, 'held') - z) : sideways;
}
