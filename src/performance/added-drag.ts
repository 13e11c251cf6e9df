import { type MetresPerSecond, type Newtons, newtons } from '../units/index.ts';
import { AIR_DENSITY } from './constants.ts';
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
