import type {
  Kilograms,
  KilogramsPerCubicMetre,
  Metres,
  MetresPerSecond,
  Newtons,
  Radians,
  SquareMetres,
  Watts,
} from '../units/index.ts';

export type { Computed, NotComputed } from '../units/index.ts';

export interface Water {
  readonly density: KilogramsPerCubicMetre;
  /** Kinematic viscosity, m²/s. */
  readonly viscosity: number;
}

/** A boat as Savitsky's method sees it: a prism with a weight on it. */
export interface PlaningHull {
  readonly mass: Kilograms;
  /** Beam over the chines, mean of the part that planes. */
  readonly beam: Metres;
  /** Mean of the part that planes. */
  readonly deadrise: Radians;
  /** Length of the bottom: what the keel can wet at most. */
  readonly length: Metres;
  /** Centre of mass: forward of the transom and above the keel there. */
  readonly centre: { readonly x: Metres; readonly z: Metres };
  /** Where the propeller pushes: its place (below the keel z is negative) and how far the push tilts up from the keel line. */
  readonly thrust: { readonly x: Metres; readonly z: Metres; readonly angle: Radians };
}

/** Something beside the bottom that air or water drags on. */
export interface AddedDrag {
  readonly name: string;
  readonly medium: 'water' | 'air';
  readonly area: SquareMetres;
  /** Drag coefficient on that area. */
  readonly coefficient: number;
}

/** A hull running at a speed and a trim. */
export interface PlaningState {
  readonly speed: MetresPerSecond;
  readonly trim: Radians;
  /** Cv = V / sqrt(g b). */
  readonly speedCoefficient: number;
  /** CLβ, on the square of the beam. */
  readonly lift: number;
  /** CL0, of the flat plate with the same lift. */
  readonly flatLift: number;
  /** λ, mean wetted length over beam. */
  readonly wettedRatio: number;
  readonly wettedKeel: Metres;
  /** The beam over the chines; less when they run dry. */
  readonly wettedBeam: Metres;
  /** Zero when the chines run dry. */
  readonly wettedChine: Metres;
  /** Mean speed of the water along the bottom. */
  readonly bottomSpeed: MetresPerSecond;
  readonly reynolds: number;
  /** Cf by the ITTC-57 line, without the allowance for roughness. */
  readonly friction: number;
  /** Df, along the bottom. */
  readonly frictionDrag: Newtons;
  /** Forward of the transom. */
  readonly centreOfPressure: Metres;
  /** What turns its bow up (positive) or down at this trim, N·m; zero when in balance. */
  readonly moment: number;
  /** Of the bare hull. */
  readonly bareDrag: Newtons;
  readonly addedDrag: Newtons;
  readonly drag: Newtons;
  /** Drag x speed. */
  readonly effectivePower: Watts;
  /** Ranges of the method that this state is outside of, in words. */
  readonly outside: readonly string[];
}

/** Lowest and highest that a figure is thought to be, and what lies between. */
export interface Band<Value> {
  readonly low: Value;
  readonly likely: Value;
  readonly high: Value;
}
