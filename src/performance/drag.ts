import { AIR_DENSITY, type MetresPerSecond, type Newtons, newtons } from '../units/index.ts';
import type { AddedDrag, Water } from './types.ts';

/**
 * Drag of what is not the bottom: the outboard's leg, a scoop, the boat above water in the air.
 *
 * @param added - each with its area A, m², and coefficient Cd, 0 or more
 * @param speed - V through water and still air, m/s
 * @returns Σ ½ ρ V² A Cd, N
 * @validity steady, still air; no interference between the parts
 * @source derived: definition of the drag coefficient. Coefficients and areas are the caller's; common practice, no
 * source: 0.7 on the frontal area above water, and a leg's drag is already within an outboard's overall efficiency
 */
export function addedDragAt(
  added: readonly AddedDrag[],
  speed: MetresPerSecond,
  water: Water,
): Newtons {
  const total = added.reduce((sum, { medium, area, coefficient }) => {
    const density = medium === 'air' ? AIR_DENSITY : water.density;
    return sum + 0.5 * density * speed ** 2 * area * coefficient;
  }, 0);
  return newtons(total);
}

/**
 * Frictional resistance coefficient of the ITTC-57 model-ship correlation line,
 * Cf = 0.075 / (log10 Re - 2)².
 *
 * @param reynolds - Re = V L / ν
 * @returns Cf on the wetted area
 * @validity Re above 1e5; the line has a pole at Re 100
 * @source ITTC 1957, Proceedings of the 8th International Towing Tank Conference
 */
export function ittc57(reynolds: number): number {
  return 0.075 / (Math.log10(reynolds) - 2) ** 2;
}
