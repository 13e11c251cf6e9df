import { clamp } from '../../maths/index.ts';
import type { Build, BuildTrailer } from '../../resolve/index.ts';
import {
  BALL_SHARES,
  type Computed,
  type Margin,
  type TowedBoat,
  type TrailerShape,
  USUAL_SHARE,
  winchPostFor,
  winchPostMargins,
} from '../../tow/index.ts';
import { dataMissing, type Metres, metres } from '../../units/index.ts';
import { placeOf } from '../limits/jurisdiction.ts';

/** Where the winch post stands, aft of the ball, and where it would give the usual share. */
export interface WinchPost {
  readonly at: Metres;
  readonly usual: Metres;
  /** False when the trailer does not let it stand at `usual`. */
  readonly canBeUsual: boolean;
  /** True when the order says where it stands. */
  readonly isSet: boolean;
  /** Against where the trailer lets it stand; empty where the catalogue does not say. */
  readonly margins: readonly Margin[];
}

/** What moments are taken with; not every trailer of a catalogue has it. */
export function shapeOf({ tare, axle, centre }: BuildTrailer): Computed<TrailerShape> {
  return axle === undefined || centre === undefined
    ? dataMissing(
        'the catalogue does not say where the trailer’s axle and mass are',
        axle === undefined ? 'axle' : 'centre',
      )
    : { tare, axle, centre };
}

/** The share of the whole that usually rests on the ball, of one; common practice where the place is not known. */
export const usualShareIn = (place: ReturnType<typeof placeOf>): number =>
  'notComputed' in place ? USUAL_SHARE : BALL_SHARES[place.place].usual;

/** Where the order says; else where the usual share is on the ball, as near as the trailer lets it stand. */
export function winchPostOf(
  build: Build,
  { winchPost }: BuildTrailer,
  shape: TrailerShape,
  boat: TowedBoat,
): Computed<WinchPost> {
  const usual = winchPostFor(shape, boat, usualShareIn(placeOf(build)));
  if (typeof usual === 'object') return usual;
  const from = winchPost?.from ?? usual;
  const to = winchPost?.to ?? usual;
  const set = build.order.tow?.winchPost;
  const at = set ?? metres(clamp(usual, from, to));
  return {
    at,
    usual,
    canBeUsual: usual >= from && usual <= to,
    isSet: set !== undefined,
    margins: winchPost ? winchPostMargins(at, winchPost) : [],
  };
}
