import type { Kilograms, Metres } from '../units/index.ts';

export type { Computed, Margin, NotComputed } from '../units/index.ts';

export interface TrailerLoadInput {
  readonly boat: Kilograms;
  readonly tare: Kilograms;
  /** Most that trailer and load may weigh together. */
  readonly rating: Kilograms;
}

export interface TrailerLoad {
  readonly total: Kilograms;
  /** What is left of the rating; below zero when it is overloaded. */
  readonly left: Kilograms;
}

/** Where a boat is towed: whose law is read. */
export type Jurisdiction = 'AU' | 'NZ' | 'UK-EU' | 'US';

/** A trailer, with distances aft of the ball. */
export interface TrailerShape {
  readonly tare: Kilograms;
  /** Centre of the empty trailer's mass. */
  readonly centre: Metres;
  /** Axle, or the middle of the group of axles. */
  readonly axle: Metres;
}

/** A boat as it lies on a trailer: all that is towed in it. */
export interface TowedBoat {
  readonly mass: Kilograms;
  /** Centre of mass, forward of the transom. */
  readonly centre: Metres;
  /** From the transom to where the bow meets the winch post. */
  readonly bow: Metres;
}

export interface BallLoad {
  readonly total: Kilograms;
  readonly onBall: Kilograms;
  /** On the tyres of the coupled trailer. */
  readonly onAxles: Kilograms;
  /** Ball load over total, 0 to 1. */
  readonly share: number;
}
