import {
  cubicMetres,
  type CubicMetres,
  kilograms,
  type Kilograms,
  metres,
  type Metres,
  type Point3,
  squareMetres,
  type SquareMetres,
} from '../units/index.ts';
import { extentOf } from './extent.ts';
import { immerse } from './immerse.ts';
import { largestSection } from './mesh.ts';
import type { FloatingBody, WaterPlane } from './types.ts';
import { inBoatAxes } from './water-plane.ts';
import { wettedSurface } from './wetted-surface.ts';

export interface Hydrostatics {
  readonly volume: CubicMetres;
  readonly displacement: Kilograms;
  readonly centreOfBuoyancy: Point3;
  readonly waterplaneArea: SquareMetres;
  readonly centreOfFlotation: Point3;
  /** Second moments of the waterplane about axes through its centre, m4. */
  readonly transverseInertia: number;
  readonly longitudinalInertia: number;
  /** KB, KMt, KMl: heights above the origin, square to the water. */
  readonly buoyancyHeight: Metres;
  readonly transverseMetacentre: Metres;
  readonly longitudinalMetacentre: Metres;
  /** BMt, BMl. */
  readonly transverseRadius: Metres;
  readonly longitudinalRadius: Metres;
  /** Mass that sinks it by one centimetre. */
  readonly perCentimetre: Kilograms;
  readonly wettedSurface: SquareMetres;
  readonly immersedLength: Metres;
  readonly immersedBeam: Metres;
  /** Depth of the deepest point under the water. */
  readonly draught: Metres;
  readonly coefficients: {
    readonly block: number;
    readonly prismatic: number;
    readonly midship: number;
    readonly waterplane: number;
  };
}

/**
 * What the water does to the body under a plane; undefined when no part of it is in the water.
 *
 * @validity any trim within 90 degrees and any heel; inertia and radii are about the horizontal axes of the
 * boat as it lies, and flooded spaces are lost to volume and to the waterplane
 * @source derived: KM = KB + BM, BM = I / V; coefficients on immersed length, immersed beam and draught
 */
export function hydrostatics(body: FloatingBody, plane: WaterPlane): Hydrostatics | undefined {
  const sums = immerse(body, plane);
  const { volume, area } = sums;
  const extent = extentOf(body.hull, plane);
  if (!(volume > 0) || !extent) return undefined;
  const along = area > 0 ? sums.areaAlong / area : sums.volumeAlong / volume;
  const across = area > 0 ? sums.areaAcross / area : sums.volumeAcross / volume;
  const transverse = sums.areaAcrossAcross - area * across * across;
  const longitudinal = sums.areaAlongAlong - area * along * along;
  const height = sums.volumeUp / volume;
  const { length, beam, draught } = extent;
  const largest = largestSection(body.hull, plane);
  return {
    volume: cubicMetres(volume),
    displacement: kilograms(volume * body.water),
    centreOfBuoyancy: inBoatAxes(plane, {
      along: sums.volumeAlong / volume,
      across: sums.volumeAcross / volume,
      up: height,
    }),
    waterplaneArea: squareMetres(area),
    centreOfFlotation: inBoatAxes(plane, { along, across, up: plane.level }),
    transverseInertia: transverse,
    longitudinalInertia: longitudinal,
    buoyancyHeight: metres(height),
    transverseMetacentre: metres(height + transverse / volume),
    longitudinalMetacentre: metres(height + longitudinal / volume),
    transverseRadius: metres(transverse / volume),
    longitudinalRadius: metres(longitudinal / volume),
    perCentimetre: kilograms((body.water * area) / 100),
    wettedSurface: squareMetres(wettedSurface(body.hull, plane)),
    immersedLength: metres(length),
    immersedBeam: metres(beam),
    draught: metres(draught),
    coefficients: {
      block: volume / (length * beam * draught),
      prismatic: volume / (largest * length),
      midship: largest / (beam * draught),
      waterplane: area / (length * beam),
    },
  };
}

/**
 * Moment that trims it by one centimetre over its immersed length, kg.m.
 *
 * @param centreHeight - KG above the origin, square to the water, m
 * @source derived: MCT = displacement x GMl / (100 L), with the true GMl = KMl - KG, not BMl
 */
export function momentToTrim(
  { displacement, longitudinalMetacentre, immersedLength }: Hydrostatics,
  centreHeight: Metres,
): number {
  return (displacement * (longitudinalMetacentre - centreHeight)) / (100 * immersedLength);
}
