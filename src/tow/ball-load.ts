import { atLeast, atMost, kilograms, type Metres, metres } from '../units/index.ts';
import type {
  BallLoad,
  Computed,
  Jurisdiction,
  Margin,
  TowedBoat,
  TrailerLoad,
  TrailerLoadInput,
  TrailerShape,
} from './types.ts';

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

const NO_AXLE = 'the axle must be aft of the ball, and there must be something to tow';

/**
 * Load on the ball of a level trailer, from moments about the axle: Σ m (a - d) / a.
 *
 * @param trailer - a, axle aft of the ball; d of its own mass
 * @param boat - d of the boat is winch post + bow - centre
 * @param winchPost - aft of the ball
 * @returns below zero when the trailer would lift the ball
 * @validity standing on level ground; axles of a group carry alike
 * @source derived: statics
 */
export function ballLoad(
  trailer: TrailerShape,
  boat: TowedBoat,
  winchPost: Metres,
): Computed<BallLoad> {
  const total = trailer.tare + boat.mass;
  if (!(trailer.axle > 0 && total > 0)) return { notComputed: NO_AXLE };
  const boatAt = winchPost + boat.bow - boat.centre;
  const moment =
    trailer.tare * (trailer.axle - trailer.centre) + boat.mass * (trailer.axle - boatAt);
  const onBall = moment / trailer.axle;
  if (!Number.isFinite(onBall)) return { notComputed: 'a mass or a distance is not a number' };
  return {
    total: kilograms(total),
    onBall: kilograms(onBall),
    onAxles: kilograms(total - onBall),
    share: onBall / total,
  };
}

/**
 * Where the winch post must stand for a share of the total on the ball.
 *
 * @param share - 0 to 1
 * @returns aft of the ball; `ballLoad` there gives the share
 * @validity as `ballLoad`; whether the trailer lets it stand there is the caller's to see
 * @source derived: `ballLoad` solved for the winch post
 */
export function winchPostFor(
  trailer: TrailerShape,
  boat: TowedBoat,
  share: number,
): Computed<Metres> {
  if (!(trailer.axle > 0 && boat.mass > 0)) return { notComputed: NO_AXLE };
  const wanted = share * (trailer.tare + boat.mass) * trailer.axle;
  const ofTrailer = trailer.tare * (trailer.axle - trailer.centre);
  const boatAt = trailer.axle - (wanted - ofTrailer) / boat.mass;
  return metres(boatAt - boat.bow + boat.centre);
}

/**
 * Share of the total that should be on the ball: least, usual, greatest.
 *
 * Australia, New Zealand, United States: 5 to 15 %, 10 % usual (common practice, no source). United Kingdom and the
 * Union: at least 4 % (from memory), with no upper share but the car's own limit; 7 % is usual.
 */
export const BALL_SHARES: Readonly<
  Record<
    Jurisdiction,
    { readonly least: number; readonly usual: number; readonly greatest: number }
  >
> = {
  AU: { least: 0.05, usual: 0.1, greatest: 0.15 },
  NZ: { least: 0.05, usual: 0.1, greatest: 0.15 },
  'UK-EU': { least: 0.04, usual: 0.07, greatest: 0.15 },
  US: { least: 0.05, usual: 0.1, greatest: 0.15 },
};

/** What usually rests on the ball where a place is not named, of one. Common practice, no source. */
export const USUAL_SHARE = 0.1;

/**
 * A share of ball load against the band of a place.
 *
 * @source `BALL_SHARES`
 */
export function ballShareMargins(share: number, place: Jurisdiction): readonly Margin[] {
  const { least, greatest } = BALL_SHARES[place];
  return [
    atLeast('share on the ball, at least', share, least, ''),
    atMost('share on the ball, at most', share, greatest, ''),
  ];
}
