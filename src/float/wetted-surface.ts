import type { HullForm, WaterPlane } from './types.ts';

const GAUSS = 0.5 - Math.sqrt(1 / 12);

/**
 * Area of the hull that the water touches, m2: bottom, sides and the immersed transom, at rest.
 *
 * @validity the deck at the sheer is not counted; nor is the inside of a flooded space
 * @source derived: the area of each facet between two stations, the immersed share of its edges integrated
 * along it by the two-point Gauss rule; exact for plane facets, of the second order for a smooth hull
 */
export function wettedSurface(form: HullForm, plane: WaterPlane): number {
  const { xs, ring } = form;
  let area = endArea(form, plane, 0) + endArea(form, plane, xs.length - 1);
  for (let station = 0; station + 1 < xs.length; station++) {
    for (let index = 0; index < ring; index++) {
      if (index !== ring / 2 - 1) area += facetArea(form, plane, station, index);
    }
  }
  return area;
}

interface Facet {
  readonly length: number;
  /** Corners of the edges behind and ahead: y, z, height above the water, at both ends of each. */
  readonly behind: readonly [Corner, Corner];
  readonly ahead: readonly [Corner, Corner];
}

interface Corner {
  readonly y: number;
  readonly z: number;
  readonly above: number;
}

function facetArea(form: HullForm, plane: WaterPlane, station: number, index: number): number {
  const next = (index + 1) % form.ring;
  const facet: Facet = {
    length: (form.xs[station + 1] ?? 0) - (form.xs[station] ?? 0),
    behind: [cornerAt(form, plane, station, index), cornerAt(form, plane, station, next)],
    ahead: [cornerAt(form, plane, station + 1, index), cornerAt(form, plane, station + 1, next)],
  };
  const corners = [...facet.behind, ...facet.ahead];
  if (corners.every(({ above }) => above >= 0)) return 0;
  const passes = [0, 1].flatMap((end) => {
    const [back, front] = [facet.behind[end]?.above ?? 0, facet.ahead[end]?.above ?? 0];
    return back < 0 === front < 0 ? [] : [back / (back - front)];
  });
  const cuts = [0, ...passes.toSorted((a, b) => a - b), 1];
  return cuts.slice(1).reduce((area, end, piece) => {
    const start = cuts[piece] ?? 0;
    const places = [start + (end - start) * GAUSS, end - (end - start) * GAUSS];
    const breadth = places.reduce((sum, at) => sum + breadthAt(facet, at), 0) / 2;
    return area + facet.length * (end - start) * breadth;
  }, 0);
}

/** Area of the facet per metre of length, at a share of the way along. */
function breadthAt({ length, behind, ahead }: Facet, at: number): number {
  const [lower, upper] = [blend(behind[0], ahead[0], at), blend(behind[1], ahead[1], at)];
  if (lower.above >= 0 && upper.above >= 0) return 0;
  const cut = lower.above / (lower.above - upper.above);
  const from = lower.above < 0 ? 0 : cut;
  const to = upper.above < 0 ? 1 : cut;
  const middle = (from + to) / 2;
  const [back, front] = [blend(behind[0], behind[1], middle), blend(ahead[0], ahead[1], middle)];
  const [slopeY, slopeZ] = [(front.y - back.y) / length, (front.z - back.z) / length];
  const [edgeY, edgeZ] = [upper.y - lower.y, upper.z - lower.z];
  return (to - from) * Math.hypot(slopeY * edgeZ - slopeZ * edgeY, edgeY, edgeZ);
}

function blend(from: Corner, to: Corner, at: number): Corner {
  const mix = (a: number, b: number): number => a + (b - a) * at;
  return { y: mix(from.y, to.y), z: mix(from.z, to.z), above: mix(from.above, to.above) };
}

function cornerAt(form: HullForm, plane: WaterPlane, station: number, index: number): Corner {
  const { level, trim, heel } = plane;
  const at = station * form.ring + index;
  const [y, z] = [form.y[at] ?? 0, form.z[at] ?? 0];
  const upright = z * Math.cos(heel) - y * Math.sin(heel);
  const x = form.xs[station] ?? 0;
  return { y, z, above: x * Math.sin(trim) + upright * Math.cos(trim) - level };
}

/** Immersed area of the flat end at a station. */
function endArea(form: HullForm, plane: WaterPlane, station: number): number {
  let twice = 0;
  for (let index = 0; index < form.ring; index++) {
    const from = cornerAt(form, plane, station, index);
    const to = cornerAt(form, plane, station, (index + 1) % form.ring);
    if (from.above >= 0 && to.above >= 0) continue;
    const cut = from.above / (from.above - to.above);
    const start = from.above < 0 ? from : blend(from, to, cut);
    const end = to.above < 0 ? to : blend(from, to, cut);
    const across = ({ y, z }: Corner): number =>
      y * Math.cos(plane.heel) + z * Math.sin(plane.heel);
    twice += across(start) * end.above - across(end) * start.above;
  }
  return twice / 2 / Math.cos(plane.trim);
}
