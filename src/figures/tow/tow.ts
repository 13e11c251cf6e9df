import type { MassResult } from '../../mass/index.ts';
import type { Build, BuildTrailer } from '../../resolve/index.ts';
import {
  type BallLoad,
  ballLoad,
  ballShareMargins,
  brakeFaults,
  type BrakeNeed,
  brakesNeeded,
  type Computed,
  couplingForce,
  type Jurisdiction,
  type Margin,
  roadLength,
  roadLengthMargin,
  roomMargins,
  roadWidth,
  roofMargins,
  runningGearMargins,
  type TowedBoat,
  vehicleMargins,
} from '../../tow/index.ts';
import { dataMissing, type Kilograms, kilograms, metres, type Metres } from '../../units/index.ts';
import { placeOf } from '../limits/jurisdiction.ts';
import { shapeOf, type WinchPost, winchPostOf, usualShareIn } from './winch-post.ts';

/** How far a tilted outboard stands behind the transom, m; common practice, no source. */
const OUTBOARD_BEHIND = 0.7;

/** The boat on its trailer. */
export interface TrailerFigures {
  readonly trailer: BuildTrailer;
  readonly place: Computed<{ readonly place: Jurisdiction }>;
  readonly winchPost: Computed<WinchPost>;
  readonly ball: Computed<BallLoad>;
  readonly usualShare: number;
  readonly share: Computed<readonly Margin[]>;
  readonly brakes: Computed<BrakeNeed & { readonly faults: readonly string[] }>;
  readonly gear: Computed<readonly Margin[]>;
  readonly width: Computed<Margin>;
  /** Of boat or trailer, whichever is more. */
  readonly widest: Metres;
  readonly length: Computed<Metres>;
  readonly lengths: Computed<readonly Margin[]>;
  /** Empty where the order does not say what tows it. */
  readonly vehicle: Computed<readonly Margin[]>;
  /** kN. */
  readonly coupling: Computed<number>;
}

/** On the road: trailer, and roof where the order asks for it. */
export interface TowFigures {
  readonly trailer?: TrailerFigures;
  readonly roof?: readonly Margin[];
}

/** The boat on its trailer and on a roof; nothing for what the order does not have. */
export function towFigures(build: Build, mass: MassResult): TowFigures {
  const roof = build.order.tow?.roof;
  return {
    ...(build.trailer && { trailer: trailerFigures(build, build.trailer, mass) }),
    ...(roof && {
      roof: roofMargins({
        boat: mass.completed.mass,
        rack: roof.rack,
        roof: roof.load,
        ...(roof.bars !== undefined && { bars: roof.bars }),
      }),
    }),
  };
}

function trailerFigures(build: Build, trailer: BuildTrailer, mass: MassResult): TrailerFigures {
  const { order, hull } = build;
  const place = placeOf(build);
  const vehicle = order.tow?.vehicle;
  const stowed = mass.loadings['stowed for the road'];
  const boat: TowedBoat = {
    mass: stowed.mass,
    centre: stowed.centre.x,
    bow: hull.dimensions.length,
  };
  const shape = shapeOf(trailer);
  const post = 'notComputed' in shape ? shape : winchPostOf(build, trailer, shape, boat);
  const ball =
    'notComputed' in shape ? shape : 'notComputed' in post ? post : ballLoad(shape, boat, post.at);
  const length = lengthOf(build, trailer, post);
  return {
    trailer,
    place,
    winchPost: post,
    ball,
    usualShare: usualShareIn(place),
    share: shareOf(ball, place),
    brakes: brakesOf(trailer, place, ball, kilograms(boat.mass + trailer.tare), vehicle?.kerb),
    gear: gearOf(trailer, ball),
    width:
      'notComputed' in place ? place : roadWidth(hull.dimensions.beam, trailer.width, place.place),
    widest: metres(Math.max(hull.dimensions.beam, trailer.width)),
    length,
    lengths: lengthsOf(length, place, order.tow?.longest),
    vehicle: vehicle && !('notComputed' in ball) ? vehicleOf(trailer, ball, vehicle) : lackOf(ball),
    coupling:
      vehicle?.greatest === undefined
        ? dataMissing('the order does not say what the vehicle may weigh', 'tow.vehicle.greatest')
        : couplingForce(vehicle.greatest, trailer.rating),
  };
}

type KnownPlace = TrailerFigures['place'];

function shareOf(ball: Computed<BallLoad>, place: KnownPlace): TrailerFigures['share'] {
  if ('notComputed' in ball) return ball;
  return 'notComputed' in place ? place : ballShareMargins(ball.share, place.place);
}

function lengthsOf(
  length: TrailerFigures['length'],
  place: KnownPlace,
  longest: Metres | undefined,
): TrailerFigures['lengths'] {
  if (typeof length === 'object') return length;
  const own = roomMargins(length, longest);
  if (!('notComputed' in place)) return [roadLengthMargin(length, place.place), ...own];
  return own.length > 0 ? own : place;
}

function lengthOf(
  { hull, outboard }: Build,
  trailer: BuildTrailer,
  post: TrailerFigures['winchPost'],
): TrailerFigures['length'] {
  if ('notComputed' in post) return post;
  const behind = metres(outboard ? OUTBOARD_BEHIND : 0);
  return metres(roadLength(trailer.length, post.at, hull.dimensions.length, behind));
}

function brakesOf(
  trailer: BuildTrailer,
  place: KnownPlace,
  ball: Computed<BallLoad>,
  total: Kilograms,
  vehicle: Kilograms | undefined,
): TrailerFigures['brakes'] {
  const { axles, brakes, brakedWheels, breakaway } = trailer;
  // Without a ball load, all of the mass is counted on the axles: the stricter side.
  const onBall = 'notComputed' in ball ? kilograms(0) : ball.onBall;
  if ('notComputed' in place) return place;
  const need = brakesNeeded(place.place, {
    total,
    onBall,
    axles,
    ...(vehicle !== undefined && { vehicle }),
  });
  if ('notComputed' in need) return need;
  const braked = brakedWheels ?? (brakes === 'none' ? 'none' : 'all wheels');
  return { ...need, faults: brakeFaults(need, { kind: brakes, braked, breakaway }) };
}

function gearOf(trailer: BuildTrailer, ball: Computed<BallLoad>): TrailerFigures['gear'] {
  const { axles, axleRating, tyreRating } = trailer;
  if ('notComputed' in ball) return ball;
  if (axleRating === undefined || tyreRating === undefined) {
    return dataMissing(
      'the catalogue does not say what axle and {tyres} may carry',
      'axleRating, tyreRating',
    );
  }
  return runningGearMargins(ball.onAxles, { axles, axleRating, tyreRating });
}

type Vehicle = NonNullable<NonNullable<Build['order']['tow']>['vehicle']>;

function vehicleOf(trailer: BuildTrailer, ball: BallLoad, vehicle: Vehicle): readonly Margin[] {
  const { braked, unbraked, onBall, together, laden } = vehicle;
  return vehicleMargins(ball, trailer.brakes !== 'none', {
    braked,
    unbraked,
    onBall,
    ...(together !== undefined &&
      laden !== undefined && { together: { limit: together, vehicle: laden } }),
  });
}

const lackOf = (ball: Computed<BallLoad>): TrailerFigures['vehicle'] =>
  'notComputed' in ball ? ball : [];
