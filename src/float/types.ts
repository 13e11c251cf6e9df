import type {
  CubicMetres,
  Kilograms,
  KilogramsPerCubicMetre,
  Metres,
  Point3,
  Radians,
  Station,
} from '../units/index.ts';

export interface HullLines {
  /** From the transom forward, at least three. */
  readonly stations: readonly Station[];
  /** How the lines run between stations: faired through them, or straight from one to the next. */
  readonly between: 'curved' | 'straight';
  /** Where the hull ends; forward of the last station the stem rises straight to this length. */
  readonly length?: Metres;
  /** The stem instead of a straight one: pairs of x and height, from the keel up to the stem head. */
  readonly bow?: readonly (readonly [x: Metres, height: Metres])[];
}

/** What is printed of the hull, to hold the lines against. */
export interface DeclaredHull {
  readonly length?: Metres;
  readonly beam?: Metres;
  readonly depth?: Metres;
  /** Up to the sheer. */
  readonly volume?: CubicMetres;
}

export interface LinesProblem {
  readonly kind:
    | 'too few stations'
    | 'too few points'
    | 'not a number'
    | 'stations out of order'
    | 'negative half-breadth'
    | 'crosses itself'
    | 'height falls'
    | 'unequal points'
    | 'bow does not rise'
    | 'beyond the length'
    | 'differs from declared';
  /** True when no form can be built. */
  readonly fatal: boolean;
  /** Index of the station, where one is to blame. */
  readonly station?: number;
  readonly what?: 'length' | 'beam' | 'depth' | 'volume';
  readonly received?: number;
  readonly declared?: number;
}

/**
 * A closed shape of planar sections: at each x a ring of `ring` points that runs from the keel up the
 * starboard side, across the sheer, and down to the keel on the port side. Row i of `y` and `z` is the ring
 * at `xs[i]`.
 */
export interface HullForm {
  readonly xs: Float64Array;
  readonly ring: number;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/** A part of the hull that is open to the sea; `permeability` is the share of it that water can fill. */
export interface FloodedSpace {
  readonly form: HullForm;
  readonly permeability: number;
}

/** A hull, closed at the sheer, in water. */
export interface FloatingBody {
  readonly hull: HullForm;
  readonly flooded: readonly FloodedSpace[];
  readonly water: KilogramsPerCubicMetre;
}

/** Where the surface of the water lies in the boat. */
export interface WaterPlane {
  /** Distance of the surface above the origin (transom, centreline, baseline), square to the surface. */
  readonly level: Metres;
  /** By the stern: above zero when the bow is high. */
  readonly trim: Radians;
  /** To starboard: above zero when the starboard side is low. */
  readonly heel: Radians;
}

/** A mass and the centre of it. */
export interface Load {
  readonly mass: Kilograms;
  readonly centre: Point3;
}

/** A place where water comes aboard. */
export interface Opening {
  readonly name: string;
  readonly at: Point3;
}
