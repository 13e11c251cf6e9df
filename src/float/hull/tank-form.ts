import { clamp, lerp, type Points } from '../../maths/index.ts';
import {
  FRESH_WATER_DENSITY,
  metres,
  type Metres,
  radians,
  squareMetres,
  type SquareMetres,
} from '../../units/index.ts';
import { formOf, halfSectionAt, type HalfSection } from './form.ts';
import { immerse } from '../immerse.ts';
import type { HullForm } from '../types.ts';

/** A space against the bottom of the hull, under a flat top. */
export interface TankSpace {
  readonly from: Metres;
  readonly to: Metres;
  /** Height of its top above the baseline. */
  readonly top: Metres;
  /** Half its breadth, where it does not reach the sides. */
  readonly halfBreadth?: Metres;
}

/**
 * The form of a space between the bottom of the hull, two bulkheads, and a flat top; undefined when it lies
 * outside the hull.
 *
 * @validity to the outside of the moulding: the permeability of the space has to cover shell and frames.
 * Where the keel rises above the top between two sections, the end is taken straight
 * @source derived: each section cut at the top and at the half-breadth
 */
export function tankForm(
  hull: HullForm,
  { from, to, top, halfBreadth = metres(Number.POSITIVE_INFINITY) }: TankSpace,
): HullForm | undefined {
  if (!(from < to && halfBreadth > 0)) return undefined;
  const between = Array.from(hull.xs).filter((x) => x > from && x < to);
  const sections = [from, ...between, to].map((x) => halfSectionAt(hull, x));
  const within = sections.filter((section) => section !== undefined);
  if (within.length < sections.length) return undefined;
  const cut = within.map(({ x, points }) => ({ x, points: cutHalf(points, top, halfBreadth) }));
  const holds = cut.some(({ points }) => (points.at(-1)?.[1] ?? 0) > (points[0]?.[1] ?? 0));
  return holds ? formOf(cut) : undefined;
}

/**
 * What a form gains in volume by each metre that the water rises at its aft end, m2, by the water's height there above
 * the baseline, m, from where it is empty to where it is full.
 *
 * @param trim - by the stern: the water lies towards the aft end
 * @source derived: waterplane of the form
 */
export function surfaceAreas(
  form: HullForm,
  permeability: number,
  { trim = radians(0), count = 32 } = {},
): Points {
  const aft = form.xs[0] ?? 0;
  const heights = Array.from(
    form.z,
    (z, index) => z + ((form.xs[Math.floor(index / form.ring)] ?? aft) - aft) * Math.tan(trim),
  );
  const [bottom, top] = [Math.min(...heights), Math.max(...heights)];
  const body = { hull: form, flooded: [], water: FRESH_WATER_DENSITY };
  return Array.from({ length: count + 1 }, (_, index) => {
    const height = lerp(bottom, top, index / count);
    const within = clamp(height, bottom + 1e-9, top - 1e-9);
    const level = metres(within * Math.cos(trim) + aft * Math.sin(trim));
    const { area } = immerse(body, { level, trim, heel: radians(0) });
    return [height, area * Math.cos(trim) * permeability] as const;
  });
}

/**
 * Area of the bulkhead at the aft end of a form, m2.
 *
 * @source derived: the area of a polygon
 */
export function endArea({ y, z, ring }: HullForm): SquareMetres {
  const points = Array.from(
    { length: ring },
    (_, index) => [y[index] ?? 0, z[index] ?? 0] as const,
  );
  const twice = points.reduce((sum, [fromY, fromZ], index) => {
    const [toY = 0, toZ = 0] = points[(index + 1) % ring] ?? [];
    return sum + fromY * toZ - toY * fromZ;
  }, 0);
  return squareMetres(Math.abs(twice) / 2);
}

/** Each point as far out and up as the limits allow, and a corner at the top. */
function cutHalf(
  points: HalfSection['points'],
  top: number,
  halfBreadth: number,
): HalfSection['points'] {
  const [keelBreadth, keel] = points[0] ?? [0, top];
  if (keel >= top) return Array.from({ length: points.length + 1 }, () => [0, top] as const);
  const kept: (readonly [number, number])[] = [[Math.min(keelBreadth, halfBreadth), keel]];
  let stopped: readonly [number, number] | undefined;
  points.slice(1).forEach(([y, z], index) => {
    const [fromY, fromZ] = points[index] ?? [y, z];
    const sideways = y > halfBreadth ? (halfBreadth - fromY) / (y - fromY) : 1;
    const upwards = z > top ? (top - fromZ) / (z - fromZ) : 1;
    const share = Math.max(0, Math.min(sideways, upwards));
    const reached = [lerp(fromY, y, share), lerp(fromZ, z, share)] as const;
    const point = stopped ?? reached;
    if (share < 1) stopped = point;
    kept.push(point);
  });
  const [lastY, lastZ] = kept.at(-1) ?? [0, top];
  const sheer = points.at(-1)?.[1] ?? top;
  return [...kept, [lastY, Math.max(lastZ, Math.min(top, sheer))]];
}
