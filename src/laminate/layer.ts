import { type Metres, metres } from '../units/index.ts';
import type { FabricLayer } from './types.ts';

/** Density of E-glass, kg/m3: ISO 12215-5 Annex C (from memory). */
export const GLASS_DENSITY = 2560;
/** Density of cured polyester or vinylester, kg/m3: the same. */
export const RESIN_DENSITY = 1200;

/**
 * Cured thickness of a layer: t = (w / 3.072) (2.56 / psi - 1.36) in mm and kg/m2, which is the volume of its glass
 * and resin over its area.
 *
 * @param fibrePerArea - w, dry fibre, kg/m2
 * @param fibreFraction - psi, fibre by mass, above 0 and at most 1
 * @returns m
 * @validity E-glass in polyester or vinylester, no voids
 * @source ISO 12215-5:2008 Annex C (formula from memory; the identity with the densities is exact)
 */
export function layerThickness(fibrePerArea: number, fibreFraction: number): Metres {
  return metres(
    fibrePerArea / GLASS_DENSITY + resinPerArea(fibrePerArea, fibreFraction) / RESIN_DENSITY,
  );
}

/**
 * Resin in a layer, w (1 - psi) / psi.
 *
 * @returns kg/m2
 * @source derived from the meaning of the mass fraction
 */
export function resinPerArea(fibrePerArea: number, fibreFraction: number): number {
  return (fibrePerArea * (1 - fibreFraction)) / fibreFraction;
}

/**
 * Fibre by volume from fibre by mass: phi = 1.2 psi / (2.56 - 1.36 psi).
 *
 * @param fibreFraction - psi, by mass
 * @returns phi, by volume, 0 to 1
 * @source derived from the two densities
 */
export function fibreByVolume(fibreFraction: number): number {
  const glass = fibreFraction / GLASS_DENSITY;
  return glass / (glass + (1 - fibreFraction) / RESIN_DENSITY);
}

/**
 * Fibre by mass of several layers together: all their fibre over all their mass.
 *
 * @returns psi; undefined when there is no fibre
 * @source derived, rule of mixtures
 */
export function combinedFibreFraction(
  layers: readonly Pick<FabricLayer, 'fibrePerArea' | 'fibreFraction'>[],
): number | undefined {
  const fibre = layers.reduce((sum, one) => sum + one.fibrePerArea, 0);
  const mass = layers.reduce((sum, one) => sum + one.fibrePerArea / one.fibreFraction, 0);
  return mass > 0 ? fibre / mass : undefined;
}
