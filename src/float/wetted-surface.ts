import { GAUSS_INSET, lerp, sum } from '../maths/index.ts';
import { type Corner, cornersOf, immersedArea } from './mesh.ts';
import type { HullForm, WaterPlane } from './types.ts';

/**
 * Area of the hull that the water touches, m2: bottom, sides and the immersed transom, at rest.
 *
 * @validity the deck at the sheer is not counted; nor is the inside of a flooded space
 * @source derived: the area of each facet between two stations, the immersed share of its edges integrated
 * along it by the two-point Gauss rule; exact for plane facets, of the second order for a smooth hull
 */
export function wettedSurface(form: HullForm, plane: WaterPlane): number {
  const rows = cornersOf(form, plane);
  const ends = [rows[0], rows.at(-1)].map((row) => (row ? immersedArea(row, plane) : 0));
  const sides = rows.slice(1).flatMap((ahead, station) => {
    const behind = rows[station] ?? ahead;
    return behind.map((from, index) =>
      index === form.ring / 2 - 1 ? 0 : facetArea(facetAt(behind, ahead, from, index)),
    );
  });
  return sum([...ends, ...sides]);
}

/** Two edges of neighbouring sections, each from its lower corner to its upper. */
interface Facet {
  readonly behind: readonly [Corner, Corner];
  readonly ahead: readonly [Corner, Corner];
}

function facetAt(
  behind: readonly Corner[],
  ahead: readonly Corner[],
  from: Corner,
  index: number,
): Facet {
  const next = (index + 1) % behind.length;
  return {
    behind: [from, behind[next] ?? from],
    ahead: [ahead[index] ?? from, ahead[next] ?? from],
  };
}

function facetArea(facet: Facet): number {
  const { behind, ahead } = facet;
  if ([...behind, ...ahead].every(({ above }) => above >= 0)) return 0;
  const passes = [0, 1].flatMap((end) => {
    const [back, front] = [behind[end]?.above ?? 0, ahead[end]?.above ?? 0];
    return back < 0 === front < 0 ? [] : [back / (back - front)];
  });
  const cuts = [0, ...passes.toSorted((a, b) => a - b), 1];
  return cuts.slice(1).reduce((area, end, piece) => {
    const start = cuts[piece] ?? 0;
    const inset = (end - start) * GAUSS_INSET;
    return (
      area + ((end - start) * (densityAt(facet, start + inset) + densityAt(facet, end - inset))) / 2
    );
  }, 0);
}

/** Immersed area of the facet for each share of the way along it, at one share. */
function densityAt({ behind, ahead }: Facet, at: number): number {
  const [lower, upper] = [blend(behind[0], ahead[0], at), blend(behind[1], ahead[1], at)];
  if (lower.above >= 0 && upper.above >= 0) return 0;
  const cut = lower.above / (lower.above - upper.above);
  const from = lower.above < 0 ? 0 : cut;
  const to = upper.above < 0 ? 1 : cut;
  const middle = (from + to) / 2;
  const back = blend(behind[0], behind[1], middle);
  const front = blend(ahead[0], ahead[1], middle);
  const [a, b, c] = [front.along - back.along, front.across - back.across, front.up - back.up];
  const [d, e, f] = [upper.along - lower.along, upper.across - lower.across, upper.up - lower.up];
  return (to - from) * Math.hypot(b * f - c * e, c * d - a * f, a * e - b * d);
}

function blend(from: Corner, to: Corner, at: number): Corner {
  return {
    along: lerp(from.along, to.along, at),
    across: lerp(from.across, to.across, at),
    up: lerp(from.up, to.up, at),
    above: lerp(from.above, to.above, at),
  };
}
