import type { Finding } from '../findings/index.ts';
import type { MassResult } from '../mass/index.ts';
import type { Price, Sensitivity } from '../price/index.ts';
import type { DerivedBuild } from '../derive/index.ts';
import type { TrailerLoad } from '../tow/index.ts';
import type { Decimal, NotComputed } from '../units/index.ts';
import type { DriveFigures } from './performance/speed.ts';
import type { LimitsFigures } from './limits/limits.ts';
import type { TowFigures } from './tow/tow.ts';
import type { ElectricsFigures } from './electrics/electrics.ts';
import type { Gate } from './mass/gates.ts';
import type { LaminateFigures } from './laminate/shell.ts';
import type { BoatKitLine } from './laminate/boat-kit.ts';
import type { MixingFigures } from './laminate/mixing.ts';
import type { PartLayUp } from './laminate/parts.ts';
import type { FloatFigures } from './float/types.ts';

/** Everything computed for one order. */
export interface Figures {
  readonly build: DerivedBuild;
  readonly price: Price;
  /** The margin when hours, materials or rates move. The yard's side only. */
  readonly sensitivity: Sensitivity;
  readonly mass: MassResult;
  readonly trailerLoad?: TrailerLoad;
  readonly drive: DriveFigures;
  readonly limits: LimitsFigures;
  readonly tow: TowFigures;
  readonly float: FloatFigures;
  readonly laminate: LaminateFigures | NotComputed;
  /** Lay-ups of the structure and of the options that the shop laminates. */
  readonly partLayUps: readonly PartLayUp[];
  /** What all of them and the shell take together. */
  readonly boatKit: readonly BoatKitLine[];
  /** Catalyst by the batch, for what is mixed in the boat; none without a lay-up. */
  readonly mixing: readonly MixingFigures[];
  readonly electrics: ElectricsFigures | NotComputed;
  /** Target weights after each stage that adds to it. */
  readonly gates: readonly Gate[];
  /** Hours of every stage that has work, in the order of the build. */
  readonly stageHours: readonly { readonly stage: string; readonly hours: Decimal }[];
  /** How well what has a limit is known. */
  readonly known: readonly Known[];
  readonly findings: readonly Finding[];
}

/** An input that a figure rests on, and how far it may move the figure. */
export interface Cause {
  readonly of: 'mass' | 'place of the mass' | 'lines' | 'power that reaches the water' | 'air';
  readonly by: number;
}

/** A figure that rests on estimates, its limit, and how well it is known: kg, m, m/s or people. */
export interface Known {
  readonly name:
    'load' | 'people' | 'freeboard' | 'people to one side' | 'trailer' | 'ball load' | 'speed';
  readonly as: 'mass' | 'dimension' | 'speed' | 'people';
  readonly value: number;
  /** Below zero when it is past its limit; missing where it has none. */
  readonly spare?: number;
  readonly known: number;
  /** The greatest first. */
  readonly causes: readonly Cause[];
}
