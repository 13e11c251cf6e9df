import { MOTOR_WEIGHTS, type MotorRow } from './motor-weight-table.ts';
import type { Computed } from './types.ts';

/**
 * Weights of an outboard and its gear that 33 CFR 183 counts with for a rated horsepower.
 *
 * @param horsepower - marked on the boat, above 0; between two rows the heavier is taken
 * @param lowTransom - true where the transom is 20 in or lower: a tenth less dry weight, and what follows from it
 * (running 105 % of dry, swamped 85 % of running, each to the nearest pound)
 * @returns pounds; `notComputed` above 350 hp
 * @source 33 CFR 183.75, table 183.75 (see `MOTOR_WEIGHTS`); ABYC S-30, note 1, second hand
 */
export function motorWeights(horsepower: number, lowTransom = false): Computed<MotorRow> {
  const row = MOTOR_WEIGHTS.find(({ upTo }) => horsepower <= upTo);
  if (!(horsepower > 0) || !row) {
    return { notComputed: 'the table of motor weights runs from above 0 to 350 hp' };
  }
  if (!lowTransom) return row;
  const dry = Math.round(row.dry * 0.9);
  const running = Math.round(dry * 1.05);
  const swamped = Math.round(running * 0.85);
  const total = running + row.controls + row.battery + row.fuel;
  return { ...row, dry, running, swamped, total };
}
