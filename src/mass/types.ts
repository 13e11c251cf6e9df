import type { Kilograms, Point3 } from '../units/index.ts';

export interface MassItem {
  readonly group: string;
  readonly kind: 'shell' | 'structure' | 'option' | 'extra' | 'outboard' | 'trailer';
  readonly mass: Kilograms;
  readonly at: Point3;
}

export interface MassInput {
  readonly items: readonly MassItem[];
  /** Share of the completed boat's mass that is added for what is not counted. */
  readonly contingency: number;
  readonly fuel?: { readonly mass: Kilograms; readonly at: Point3 };
  readonly people: { readonly count: number; readonly mass: Kilograms; readonly gear: Kilograms };
}

/** A mass and the centre of it. */
export interface WeightedCentre {
  readonly mass: Kilograms;
  readonly centre: Point3;
}

export interface MassGroup {
  readonly group: string;
  readonly mass: Kilograms;
  /** Share of the boat with engine and fuel, 0 to 1. */
  readonly share: number;
  readonly centre: Point3;
}

export interface MassResult {
  /** The shell as it leaves the mould. */
  readonly bareHull: WeightedCentre;
  /** Everything fitted but the outboard, with contingency. */
  readonly completed: WeightedCentre;
  /** Completed, with outboard and fuel. */
  readonly ready: WeightedCentre;
  /** Ready, with everyone's loose gear, on its trailer; the boat alone when there is no trailer. */
  readonly onTrailer: Kilograms;
  /** The part of `onTrailer` that the trailer carries. */
  readonly towedBoat: Kilograms;
  readonly contingency: Kilograms;
  /** People, gear, fuel, options and extras: what the hull's load rating is about. */
  readonly load: Kilograms;
  readonly groups: readonly MassGroup[];
}
