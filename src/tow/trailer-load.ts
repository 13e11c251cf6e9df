import { kilograms } from '../units/index.ts';
import type { TrailerLoad, TrailerLoadInput } from './types.ts';

/**
 * What boat and trailer weigh together against the trailer's rating.
 *
 * @returns total and what is left of the rating, kg
 * @source derived: aggregate trailer mass is the trailer's tare and its load, ball load included
 */
export function trailerLoad({ boat, tare, rating }: TrailerLoadInput): TrailerLoad {
  const total = kilograms(boat + tare);
  return { total, left: kilograms(rating - total) };
}
