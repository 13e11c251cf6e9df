import type { Kilograms, KilogramsPerCubicMetre, Metres, Point3 } from '../units/index.ts';

/** A mass and where it is. */
export interface PointMass {
  readonly mass: Kilograms;
  readonly at: Point3;
}

export interface MassItem extends PointMass {
  readonly group: string;
  readonly kind: 'shell' | 'structure' | 'option' | 'extra' | 'outboard' | 'rigging' | 'trailer';
}

/** The surface of a fluid that fills its tank in part, as a box seen from above. */
interface FluidSurface {
  readonly length: Metres;
  readonly breadth: Metres;
  readonly density: KilogramsPerCubicMetre;
  /** Equal compartments side by side. */
  readonly compartments: number;
}

/** What is allowed for what a boat puts on over its life. */
export interface GrowthAllowance {
  /** Share of the light boat's mass, 0 or above. */
  readonly share: number;
  /** How far the boat’s centre of mass rises with it. */
  readonly rise: Metres;
}

export type MassKind =
  | 'boat'
  | 'outboard'
  | 'rigging'
  | 'fuel'
  | 'live-well'
  | 'person'
  | 'gear'
  | 'stores'
  | 'ballast'
  | 'growth'
  | 'other';

/** One mass of a loading, and where it is. */
export interface PlacedMass extends PointMass {
  readonly name: string;
  readonly kind: MassKind;
  /** Of a fluid that can move. */
  readonly surface?: FluidSurface;
}

/** A fluid in its tank: its mass is what is ordered. */
export interface Fluid extends PlacedMass {
  /** Of the tank, brimful. */
  readonly capacity: Kilograms;
  /** True where the tank is so wide that the boat may be worst with it half full. */
  readonly isWide?: boolean;
}

/** Where people may be: from end to end, to either side, and how high the middle of who sits there is. */
export interface Cockpit {
  readonly from: Metres;
  readonly to: Metres;
  readonly halfBreadth: Metres;
  readonly height: Metres;
}

/** Who and what an order takes aboard its boat, and where. */
export interface Aboard {
  readonly fluids: readonly Fluid[];
  readonly people: {
    readonly count: number;
    /** Of each. */
    readonly mass: Kilograms;
    /** The helm first. */
    readonly seats: readonly Point3[];
    /** Those beyond the seats sit on the centreline of so long a boat, so high. */
    readonly beyond: { readonly length: Metres; readonly height: Metres };
  };
  /** Loose gear: of each person, and where it is stowed. */
  readonly gear: PointMass;
  readonly cockpit: Cockpit;
  /** What the shop rates the hull for: people, and load without the outboard. */
  readonly rating: { readonly people: number; readonly load: Kilograms };
  readonly trial: { readonly people: number; readonly fluidShare: number };
  readonly growth: GrowthAllowance;
  /** A tank that is open to the sea at rest; what water it then holds, once that is known. */
  readonly ballast?: { readonly water?: PlacedMass };
  /** The order's own condition: everything on top of boat, outboard and fluids, people too. */
  readonly custom?: {
    readonly masses: readonly PlacedMass[];
    readonly fluidShare: number;
    readonly ballastFlooded: boolean;
  };
}

/** A mass and the centre of it. */
export interface WeightedCentre {
  readonly mass: Kilograms;
  readonly centre: Point3;
}

/** Who and what is aboard. */
export interface Loading extends WeightedCentre {
  readonly people: number;
  readonly masses: readonly PlacedMass[];
  /** True when the ballast tank is open to the sea. */
  readonly flooded: boolean;
}

/** The loadings of an order, by name. */
export type Loadings = {
  /** The completed boat. */
  readonly light: Loading;
  readonly 'with engine': Loading;
  /** With engine and the fuel that is ordered. */
  readonly ready: Loading;
  /** Ready, one person at the helm. */
  readonly 'one aboard': Loading;
  /** Ready, everyone in their seats, with their gear. */
  readonly 'as ordered': Loading;
  /** As ordered, with full live-wells and what the ballast tank holds. */
  readonly 'tanks full': Loading;
  /** Ready, with everyone's gear and nobody aboard. */
  readonly 'stowed for the road': Loading;
  readonly 'performance test': Loading;
  /** As ordered, tanks and live-wells filled to the share of the standard. */
  readonly 'fully loaded': Loading;
  /** Fully loaded, everyone in one place. */
  readonly 'people to one side': Loading;
  readonly 'people aft': Loading;
  readonly 'people forward': Loading;
  /** At the shop’s rating: its people seated, tanks brimful, stores up to its load. */
  readonly rated: Loading;
  /** The same with tanks half full, where one is wide. */
  readonly 'rated half tanks'?: Loading;
  readonly 'rated to one side': Loading;
  readonly 'rated aft': Loading;
  readonly 'rated forward': Loading;
  /** Fully loaded, with what the boat puts on over its life, where that is allowed for. */
  readonly grown?: Loading;
  /** As for the performance test, of a boat with a ballast tank. */
  readonly 'ballast flooded at rest'?: Loading;
  readonly 'ballast drained'?: Loading;
  /** With the water that the tank holds, once that is known. */
  readonly 'one aboard with ballast'?: Loading;
  readonly 'as ordered with ballast'?: Loading;
  /** The order's own condition. */
  readonly custom?: Loading;
};
export type LoadingName = keyof Loadings;

export interface MassInput {
  readonly items: readonly MassItem[];
  /** Share of the completed boat's mass that is added for what is not counted. */
  readonly contingency: number;
  readonly aboard: Aboard;
}

export interface MassGroup extends WeightedCentre {
  readonly group: string;
  /** Share of the boat with engine and fuel, 0 to 1. */
  readonly share: number;
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
  readonly contingency: Kilograms;
  /** People, gear, fuel, options and extras: what the hull's load rating is about. */
  readonly load: Kilograms;
  /** People that what is fitted, with full tanks, leaves room for in the rated load; at most the rated number. */
  readonly ratedPeople: number;
  /** What is allowed for what the boat puts on over its life. */
  readonly growth: PointMass;
  readonly groups: readonly MassGroup[];
  readonly loadings: Loadings;
}
