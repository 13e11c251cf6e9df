/** A drawing in millimetres: an SVG with its own fonts, and the same in words. */
export interface Drawing {
  readonly svg: string;
  /** Width of the sheet, mm. */
  readonly width: number;
  /** Height of the sheet, mm. */
  readonly height: number;
  /** What the drawing shows, for whoever cannot see it. */
  readonly alt: string;
}

/** One cross-section of a hull. */
export interface Station {
  /** Distance forward of the transom, m. */
  readonly x: number;
  /** Pairs of half-breadth and height above the baseline, m, from the keel to the sheer. */
  readonly points: readonly (readonly [number, number])[];
}

/** The shape of a hull, as far as it is drawn. */
export interface HullShape {
  readonly name: string;
  /** Length of the hull, m. */
  readonly length: number;
  readonly lines: readonly Station[];
  /** What its drawings are measured in; left out: metric. */
  readonly units?: 'metric' | 'us';
}

/** A place in the boat, m: x forward of the transom, y to starboard, z above the baseline. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A thing in the boat and the number that stands for it. */
export interface DrawnItem {
  /** What the item is called elsewhere; not drawn. */
  readonly key: string;
  readonly number: string;
  readonly name: string;
  readonly at: Place;
}

/** An outboard, as far as a sketch needs it. */
export interface OutboardShape {
  /** Height of the transom where it clamps on, m above the baseline. */
  readonly clampHeight: number;
  /** From the clamp to the plate above the propeller, m. */
  readonly shaft: number;
  /** Mass, kg; the powerhead is drawn to it. */
  readonly mass: number;
}

/** A part of the sheet, mm. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
