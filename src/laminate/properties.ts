import type { NotComputed } from './types.ts';

const MEGA = 1e6;

/** Stiffness and strength of a glass laminate, Pa. */
export interface GlassProperties {
  readonly modulus: number;
  readonly tension: number;
  readonly compression: number;
  readonly flexure: number;
  readonly shearModulus: number;
  readonly shear: number;
  readonly interlaminar: number;
}

/**
 * Default properties of a glass laminate from its fibre by mass: default, not tested.
 *
 * E = 38000 psi - 5000; tension 800 psi^2 - 80 psi + 37; compression 150 psi + 72; flexure 502 psi^2 + 107;
 * G = 1700 psi + 2240; shear 80 psi + 38; between layers 22.5 - 17.5 psi; all MPa.
 *
 * @param fibreFraction - psi, by mass
 * @returns Pa; `notComputed` outside the validity
 * @validity E-glass in polyester, near quasi-isotropic, psi from 0.2 to 0.7. A later study finds the compressive
 * default high for bagged glass and epoxy (Trans RINA IJSCT A2, 2022)
 * @source ISO 12215-5:2008 Annex C (from memory). Estimated; verify by testing the shop's own laminate
 */
export function glassProperties(fibreFraction: number): GlassProperties | NotComputed {
  if (!(fibreFraction >= 0.2 && fibreFraction <= 0.7)) {
    return { notComputed: 'default properties hold for {fibre} by mass from 20 % to 70 %' };
  }
  return {
    modulus: (38_000 * fibreFraction - 5000) * MEGA,
    tension: (800 * fibreFraction ** 2 - 80 * fibreFraction + 37) * MEGA,
    compression: (150 * fibreFraction + 72) * MEGA,
    flexure: (502 * fibreFraction ** 2 + 107) * MEGA,
    shearModulus: (1700 * fibreFraction + 2240) * MEGA,
    shear: (80 * fibreFraction + 38) * MEGA,
    interlaminar: (22.5 - 17.5 * fibreFraction) * MEGA,
  };
}
