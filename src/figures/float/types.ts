import type {
  BallastEffect,
  Condition,
  FloatingBody,
  FlowTime,
  GrowthMargin,
  LinesProblem,
  LinesSpread,
  PlaceTried,
  RightingCurve,
  SwampedBalance,
  TrimEffect,
} from '../../float/index.ts';
import type { Computed, Flotation } from '../../limits/index.ts';
import type { CubicMetres, Kilograms, Metres, Radians, SquareMetres } from '../../units/index.ts';
import type { CrewFigures } from './crew.ts';
import type { NamedWater } from '../water.ts';

/** How the boat of one order floats. */
export interface FloatFigures {
  /** What is wrong with the lines of the hull. */
  readonly problems: readonly LinesProblem[];
  /** Missing when the lines give no form to compute with. */
  readonly afloat?: Afloat;
}

/** What safety is screened by, in one water. */
export interface Screened {
  readonly water: NamedWater['name'];
  readonly conditions: readonly Condition[];
  readonly crew: CrewFigures;
}

/** In the one of its waters that leaves less freeboard fully loaded. */
export interface Afloat extends Screened {
  /** In the other water, where the boat is used in both. */
  readonly other?: Screened;
  readonly body: FloatingBody;
  /** Depth of the hull’s deepest point under the water, fully loaded; missing when it does not float so. */
  readonly deepest?: Metres;
  /** Mass that sinks it 1 cm, and moment that trims it 1 cm over its immersed length, kg.m; fully loaded. */
  readonly perCentimetre?: { readonly sinks: Kilograms; readonly trims: number };
  /** Righting arms, fully loaded, to the side that it would lean to; missing when it does not float so. */
  readonly curve?: RightingCurve & { readonly side: 'starboard' | 'port' };
  /** The lines between the cross-sections taken the other way, fully loaded; missing when it does not float so. */
  readonly spread?: LinesSpread;
  readonly growth: GrowthFigures;
  readonly ballast?: Ballast;
  /** Missing when the hull does not say what foam it has. */
  readonly swamped?: Swamped;
  /** Fully loaded, the greatest first. */
  readonly trimEffects: readonly TrimEffect[];
  /** Fully loaded. */
  readonly trim: TrimAdvice;
  /** Of the hull from transom to stem, m: where a heel is drawn at its middle. */
  readonly length: Metres;
}

export interface Ballast {
  readonly item: string;
  readonly itemKey: string;
  /** What it does with it; missing when the tank lies outside the hull. */
  readonly effect?: BallastEffect;
  readonly drains?: FlowTime;
  readonly fills?: FlowTime;
  /** Water that cannot run out, as a share of what is in the tank at rest. */
  readonly leftShare?: number;
  /** Openings larger than what they are cut in. */
  readonly tooLarge?: readonly {
    readonly name: string;
    readonly area: SquareMetres;
    readonly in: string;
    readonly of: SquareMetres;
  }[];
}

export interface Swamped {
  readonly foam: CubicMetres;
  readonly rule: Computed<Flotation>;
  readonly balance: SwampedBalance;
  /** What the balance counts beside boat, outboard and people: kilograms under water, below zero when it lifts. */
  readonly counted: readonly { readonly name: string; readonly weight: Kilograms }[];
  /** What nobody told, and so the balance leaves out. */
  readonly uncounted: readonly string[];
}

export interface TrimAdvice {
  readonly band: { readonly least: Radians; readonly most: Radians };
  /** Outside the band by so much; 0 within it; missing when it does not float. */
  readonly outside?: Radians;
  /** Moves of one movable item that bring the boat nearer to the band, the best first. */
  readonly moves: readonly Move[];
  /** Places that were not tried because something stands there; none while it lies in the band. */
  readonly taken: readonly { readonly item: string; readonly place: string; readonly by: string }[];
  /** What can be moved, and where it is. */
  readonly movable: readonly Movable[];
}

export interface Movable {
  readonly key: string;
  readonly name: string;
  readonly count: number;
  readonly each: Kilograms;
  /** Distance forward of the transom over the length of the hull. */
  readonly along: number;
}

export interface Move {
  readonly item: Movable;
  readonly to: PlaceTried;
  readonly gain: Radians;
}

/** What it puts on over its life, fully loaded. */
export interface GrowthFigures {
  /** What the yard allows for; 0 when it allows for none. */
  readonly allowed: Kilograms;
  /** The completed boat that it is a share of. */
  readonly boat: Kilograms;
  /** Missing when it does not float. */
  readonly effect?: GrowthEffect;
  readonly limits: readonly GrowthRow[];
  /** The limit that is met first; missing when none is. */
  readonly first?: { readonly name: string; readonly growth: Kilograms };
}

export interface GrowthRow {
  readonly name: string;
  readonly margin: GrowthMargin;
}

/** What a growth of so much changes: m and rad, less than zero when it takes away. */
export interface GrowthEffect {
  readonly mass: Kilograms;
  readonly draughtAft: number;
  readonly draughtFore: number;
  readonly trim: number;
  readonly freeboard: number;
  readonly metacentricHeight?: number;
}
