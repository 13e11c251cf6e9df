import type { Kilograms, Metres } from '../units/index.ts';
import { atMost } from './margin.ts';
import type { Computed, Jurisdiction, Margin } from './types.ts';

export interface RunningGear {
  readonly axles: number;
  /** What one axle may carry. */
  readonly axleRating: Kilograms;
  /** What one tyre may carry at its pressure, two tyres an axle. */
  readonly tyreRating: Kilograms;
}

/**
 * Load of axles and tyres against their ratings.
 *
 * @param onAxles - mass on the tyres of the coupled trailer
 * @returns margins of one axle and one tyre, kg
 * @validity axles of a group carry alike; a boat out of level on the trailer loads one side more
 * @source derived
 */
export function runningGearMargins(
  onAxles: Kilograms,
  { axles, axleRating, tyreRating }: RunningGear,
): Computed<readonly Margin[]> {
  if (!(axles >= 1)) return { notComputed: 'a trailer has at least one axle' };
  return [
    atMost('load of an axle', onAxles / axles, axleRating, 'kg'),
    atMost('load of a tyre', onAxles / axles / 2, tyreRating, 'kg'),
  ];
}

/** Greatest width on the road, m: Australia 2.5; the others from memory. */
export const ROAD_WIDTHS: Readonly<Record<Jurisdiction, number>> = {
  AU: 2.5,
  NZ: 2.55,
  'UK-EU': 2.55,
  US: 2.59,
};

/**
 * Width of boat or trailer, whichever is more, against the road's limit.
 *
 * @source `ROAD_WIDTHS`; Australia: Vehicle Standards Bulletin 1, as suppliers sum it up
 */
export function roadWidth(beam: Metres, trailer: Metres, place: Jurisdiction): Margin {
  return atMost('width on the road', Math.max(beam, trailer), ROAD_WIDTHS[place], 'm');
}

/**
 * Length from the ball to the last thing behind it: trailer, transom or outboard.
 *
 * @param trailer - length over all
 * @param winchPost - aft of the ball
 * @param bow - from the transom to where the bow meets the winch post
 * @param behind - how far the outboard, tilted, stands behind the transom
 * @returns m
 * @source derived
 */
export function roadLength(
  trailer: Metres,
  winchPost: Metres,
  bow: Metres,
  behind: Metres,
): number {
  return Math.max(trailer, winchPost + bow + behind);
}
