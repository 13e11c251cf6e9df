import type { Kilograms, Metres, Radians, Watts } from '../units/index.ts';

export type { Computed, Margin, NotComputed } from '../units/index.ts';

/** What the methods look at in a hull. */
export interface RatedHull {
  /** Of the hull, without brackets and fittings. */
  readonly length: Metres;
  readonly beam: Metres;
  /** Greatest width of the transom. */
  readonly transomBeam: Metres;
  /** Broadest beam in the aftermost quarter of the length: it counts where the transom is not a full one. */
  readonly afterBeam?: Metres;
  /** Where the outboard clamps on, above the keel there. */
  readonly transomHeight: Metres;
  readonly deadrise: Radians;
  readonly hardChine: boolean;
  readonly monohull: boolean;
  readonly steering: 'remote' | 'tiller';
}

/** A boat to be rated: hull, what it weighs, and what it can carry before water comes aboard. */
export interface RatedBoat {
  readonly hull: RatedHull;
  /** Hull, deck and everything fitted for good, without engine, fuel and loose gear. */
  readonly light: Kilograms;
  /** Permanent fuel tanks, full; 0 where the tank is portable. */
  readonly fixedFuel: Kilograms;
  /** Mass of fresh water displaced at the float plane at which water first comes aboard. */
  readonly greatestDisplacement: Kilograms;
  /** Total mass that it may weigh with the freeboard that it needs, for methods that go by freeboard. */
  readonly loadedDisplacement: Kilograms;
  readonly seats: number;
  /** Heaviest outboard that it may have, with its power. */
  readonly engine: { readonly power: Watts; readonly mass: Kilograms };
  /** Weight added along one side until water was about to come aboard, where that was tried. */
  readonly sideTest?: Kilograms;
}

/** One reason why there may not be more people, and how many it allows. */
export interface PeopleLimit {
  readonly name: string;
  readonly people: number;
}
