import { atLeast, atMost, type Kilograms, type Metres } from '../units/index.ts';
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
    atMost('load of a {tyre}', onAxles / axles / 2, tyreRating, 'kg'),
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
 * @source `ROAD_WIDTHS`; Australia: Vehicle Standards Bulletin 1, as summarised by suppliers
 */
export function roadWidth(beam: Metres, trailer: Metres, place: Jurisdiction): Margin {
  return atMost('overall width when towed', Math.max(beam, trailer), ROAD_WIDTHS[place], 'm');
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

/**
 * Greatest length of a trailer with its load on the road, ball to the last thing behind it, m; all from memory, to be
 * confirmed with the authority.
 *
 * Australia: 12.5 m (Australian Design Rule 43). New Zealand: 11.5 m (Vehicle Dimensions and Mass 2016). The Union: 12 m
 * (Directive 96/53/EC); in the United Kingdom a light vehicle's trailer may have a body of 7 m, drawbar and load apart,
 * which is not looked at here. United States: 40 ft, as most states have it.
 */
export const ROAD_LENGTHS: Readonly<Record<Jurisdiction, number>> = {
  AU: 12.5,
  NZ: 11.5,
  'UK-EU': 12,
  US: 12.192,
};

/**
 * Length on the road against the place's limit.
 *
 * @param length - `roadLength`
 * @source `ROAD_LENGTHS`
 */
export const roadLengthMargin = (length: number, place: Jurisdiction): Margin =>
  atMost('overall length when towed', length, ROAD_LENGTHS[place], 'm');

/**
 * The same against what the owner has room for; nothing where that is not given.
 *
 * @param longest - of a shed, a ferry, a parking place
 * @source the owner's own limit
 */
export const roomMargins = (length: number, longest: Metres | undefined): readonly Margin[] =>
  longest === undefined ? [] : [atMost('length that there is room for', length, longest, 'm')];

/**
 * A winch post against the places where a trailer lets it stand.
 *
 * @param at - aft of the ball, as `from` and `to`
 * @source derived: the trailer maker's range
 */
export function winchPostMargins(
  at: Metres,
  { from, to }: { readonly from: Metres; readonly to: Metres },
): readonly Margin[] {
  return [
    atLeast('winch post aft of the ball, at least', at, from, 'm'),
    atMost('winch post aft of the ball, at most', at, to, 'm'),
  ];
}
