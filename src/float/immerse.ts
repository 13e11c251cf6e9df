import { GAUSS_INSET } from '../maths/index.ts';
import { cubicMetres, type CubicMetres, metres, radians } from '../units/index.ts';
import { cutSection, type SectionSums } from './cut-section.ts';
import { boundsOf } from './hull/form.ts';
import type { FloatingBody, HullForm, WaterPlane } from './types.ts';

/** Integrals over the immersed volume and over the waterplane, in the axes of the water; m to the power due. */
export interface Immersed {
  readonly volume: number;
  readonly volumeAlong: number;
  readonly volumeAcross: number;
  readonly volumeUp: number;
  readonly area: number;
  readonly areaAlong: number;
  readonly areaAcross: number;
  readonly areaAlongAlong: number;
  readonly areaAlongAcross: number;
  readonly areaAcrossAcross: number;
}

type Sums = { -readonly [Key in keyof Immersed]: number };

/**
 * The immersed part of a body under any plane, flooded spaces taken out.
 *
 * Each section is clipped exactly. Between two stations the lines are straight; the interval is cut where a
 * line meets the plane, and each piece is integrated by the two-point Gauss rule, which is exact to the third
 * degree: volumes, first moments and second moments of the waterplane of a body of plane facets are exact.
 * A smooth hull converges with the second power of the spacing of its stations and points.
 *
 * @validity trim within 90 degrees; a body out of the water gives zeros
 * @source derived: divergence theorem on each section; Gauss-Legendre rule, Abramowitz and Stegun, 25.4.30
 */
export function immerse(body: FloatingBody, plane: WaterPlane): Immersed {
  const sums: Sums = {
    volume: 0,
    volumeAlong: 0,
    volumeAcross: 0,
    volumeUp: 0,
    area: 0,
    areaAlong: 0,
    areaAcross: 0,
    areaAlongAlong: 0,
    areaAlongAcross: 0,
    areaAcrossAcross: 0,
  };
  addForm(sums, body.hull, 1, plane);
  for (const { form, permeability } of body.flooded) addForm(sums, form, -permeability, plane);
  return sums;
}

/**
 * Volume up to the sheer, m3, flooded spaces taken out.
 *
 * @source derived: the immersed volume under a plane above every point
 */
export function capacityOf(body: FloatingBody): CubicMetres {
  const top = boundsOf(body.hull).height + 1;
  const under = { level: metres(top), trim: radians(0), heel: radians(0) };
  return cubicMetres(immerse(body, under).volume);
}

function addForm(sums: Sums, form: HullForm, share: number, plane: WaterPlane): void {
  const { across, above } = inSectionAxes(form, plane);
  const { xs, ring } = form;
  const section = emptySection();
  const slope = { sine: Math.sin(plane.trim), cosine: Math.cos(plane.trim), level: plane.level };
  const cuts: number[] = [];
  for (let station = 0; station + 1 < xs.length; station++) {
    const row = station * ring;
    if (!meetsWater(above, row, 2 * ring)) continue;
    const from = xs[station] ?? 0;
    const length = (xs[station + 1] ?? 0) - from;
    findCrossings(cuts, above, row, ring);
    for (let piece = 0; piece + 1 < cuts.length; piece++) {
      const start = cuts[piece] ?? 0;
      const span = (cuts[piece + 1] ?? 1) - start;
      const weight = (share * length * span) / 2;
      const near = start + span * GAUSS_INSET;
      cutSection(across, above, row, ring, near, section);
      addSection(sums, section, from + length * near, weight, slope);
      const far = start + span * (1 - GAUSS_INSET);
      cutSection(across, above, row, ring, far, section);
      addSection(sums, section, from + length * far, weight, slope);
    }
  }
}

/** Each point's place across the water and its height above it within its section. */
function inSectionAxes(
  { xs, ring, y, z }: HullForm,
  { level, trim, heel }: WaterPlane,
): { readonly across: Float64Array; readonly above: Float64Array } {
  const sine = Math.sin(heel);
  const cosine = Math.cos(heel);
  const sineTrim = Math.sin(trim);
  const cosineTrim = Math.cos(trim);
  const across = new Float64Array(y.length);
  const above = new Float64Array(y.length);
  for (let station = 0; station < xs.length; station++) {
    const surface = (level - (xs[station] ?? 0) * sineTrim) / cosineTrim;
    for (let index = station * ring; index < (station + 1) * ring; index++) {
      const breadth = y[index] ?? 0;
      const height = z[index] ?? 0;
      across[index] = breadth * cosine + height * sine;
      above[index] = height * cosine - breadth * sine - surface;
    }
  }
  return { across, above };
}

function meetsWater(above: Float64Array, from: number, count: number): boolean {
  for (let index = from; index < from + count; index++) {
    if ((above[index] ?? 0) < 0) return true;
  }
  return false;
}

/** Writes where lines of the hull pass through the surface between two stations: in order, with 0 and 1. */
function findCrossings(cuts: number[], above: Float64Array, row: number, ring: number): void {
  cuts.length = 0;
  cuts.push(0);
  for (let index = row; index < row + ring; index++) {
    const here = above[index] ?? 0;
    const next = above[index + ring] ?? 0;
    if (here < 0 !== next < 0) cuts.push(here / (here - next));
  }
  cuts.push(1);
  if (cuts.length > 3) cuts.sort((a, b) => a - b);
}

interface Slope {
  readonly sine: number;
  readonly cosine: number;
  readonly level: number;
}

function addSection(
  sums: Sums,
  section: SectionSums,
  x: number,
  weight: number,
  { sine, cosine, level }: Slope,
): void {
  const surface = (level - x * sine) / cosine;
  const area = weight * section.area;
  const upright = area * surface + weight * section.above;
  sums.volume += area;
  sums.volumeAlong += area * x * cosine - upright * sine;
  sums.volumeAcross += weight * section.across;
  sums.volumeUp += area * x * sine + upright * cosine;
  const along = (x - level * sine) / cosine;
  const strip = weight / cosine;
  sums.area += strip * section.width;
  sums.areaAlong += strip * section.width * along;
  sums.areaAcross += strip * section.widthAcross;
  sums.areaAlongAlong += strip * section.width * along * along;
  sums.areaAlongAcross += strip * section.widthAcross * along;
  sums.areaAcrossAcross += strip * section.widthAcrossAcross;
}

function emptySection(): SectionSums {
  return { area: 0, across: 0, above: 0, width: 0, widthAcross: 0, widthAcrossAcross: 0 };
}
