/** Branded numbers: a quantity of one kind cannot be given where another kind is wanted. */
declare const kindOf: unique symbol;

/** A number in the SI unit of its kind; the brand exists in types only. */
export type Quantity<Kind extends string> = number & { readonly [kindOf]: Kind };

export type Metres = Quantity<'length'>;
export type SquareMetres = Quantity<'area'>;
export type CubicMetres = Quantity<'volume'>;
export type Kilograms = Quantity<'mass'>;
export type Watts = Quantity<'power'>;
export type Amperes = Quantity<'current'>;
export type Radians = Quantity<'angle'>;
export type MetresPerSecond = Quantity<'speed'>;
export type KilogramsPerCubicMetre = Quantity<'density'>;
export type Seconds = Quantity<'duration'>;
export type Newtons = Quantity<'force'>;

/** A place in the boat: x forward from the transom, y to starboard of the centreline, z up from the baseline. */
export interface Point3 {
  readonly x: Metres;
  readonly y: Metres;
  readonly z: Metres;
}

/** A point of a section: half-breadth, and height above the baseline. */
export type SectionPoint = readonly [halfBreadth: Metres, height: Metres];

/** One cross-section, keel to sheer. Points of the same number in neighbouring stations lie on one line of the hull. */
export interface Station {
  /** Forward of the transom. */
  readonly x: Metres;
  readonly points: readonly SectionPoint[];
}

/** Takes a number as metres. */
export const metres = (value: number): Metres => value as Metres;
/** Takes a number as seconds. */
export const seconds = (value: number): Seconds => value as Seconds;
/** Takes a number as square metres. */
export const squareMetres = (value: number): SquareMetres => value as SquareMetres;
/** Takes a number as kilograms. */
export const kilograms = (value: number): Kilograms => value as Kilograms;
/** Takes a number as amperes. */
export const amperes = (value: number): Amperes => value as Amperes;
/** Takes a number as watts. */
export const watts = (value: number): Watts => value as Watts;
/** Takes a number as newtons. */
export const newtons = (value: number): Newtons => value as Newtons;
/** Takes a number as metres per second. */
export const metresPerSecond = (value: number): MetresPerSecond => value as MetresPerSecond;
/** Takes a number as radians. */
export const radians = (value: number): Radians => value as Radians;
/** Takes a number as cubic metres. */
export const cubicMetres = (value: number): CubicMetres => value as CubicMetres;
/** Takes a number as kilograms per cubic metre. */
export const kilogramsPerCubicMetre = (value: number): KilogramsPerCubicMetre =>
  value as KilogramsPerCubicMetre;
