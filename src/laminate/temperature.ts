import { interpolate } from '../maths/index.ts';
import type { NotComputed } from './types.ts';

const KELVIN = 273.15;

/** One value of a resin maker's data sheet at a temperature, degrees C. */
export interface DataPoint {
  readonly celsius: number;
  readonly value: number;
}

/**
 * A resin's viscosity or gel time at the shop's temperature, between two values of its data sheet: ln(value) goes
 * straight with 1/T.
 *
 * @param points - two at least, values above 0, in any order
 * @returns in the unit of the points; `notComputed` outside their range, for it is never carried on beyond the data
 * @validity between the two neighbouring points
 * @source Andrade (1930) for viscosity, Arrhenius for gel time
 */
export function atTemperature(points: readonly DataPoint[], celsius: number): number | NotComputed {
  const sorted = points.toSorted((a, b) => a.celsius - b.celsius);
  const exact = sorted.find((point) => point.celsius === celsius);
  if (exact) return exact.value;
  const place = (one: number): number => -1 / (one + KELVIN);
  const logs = sorted.map((point) => [place(point.celsius), Math.log(point.value)] as const);
  const log = interpolate(logs, place(celsius));
  return log !== undefined && Number.isFinite(log)
    ? Math.exp(log)
    : { notComputed: 'the resin’s data do not reach the temperature of the shop' };
}
