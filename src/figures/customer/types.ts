import type { Finding } from '../../findings/index.ts';
import type { Payment, Price, PriceLine } from '../../price/index.ts';
import type { DerivedItem } from '../../derive/index.ts';
import type { Build, BuildTrailer } from '../../resolve/index.ts';
import type { Order, Outboard } from '../../schema/index.ts';
import type { NotComputed } from '../../units/index.ts';
import type { BankFigures } from '../electrics/batteries.ts';
import type { ElectricsFigures } from '../electrics/electrics.ts';
import type { FiguredAlternative } from '../figure-alternatives.ts';
import type { Differences, ToldFacts } from '../told-facts.ts';
import type { FiguredVariation } from '../figure-variations.ts';
import type { DriveFigures, DriveLoading } from '../performance/speed.ts';
import type { TowFigures, TrailerFigures } from '../tow/tow.ts';
import type { Figures } from '../types.ts';
import type * as fields from './fields.ts';

type Of<Whole, Names extends readonly (keyof Whole)[]> = Pick<Whole, Names[number]>;
type Some<Value> = Exclude<Value, undefined>;

/** A finding that a customer may see. */
export type CustomerFinding = Of<Finding, typeof fields.SAID>;

/** The order, the shop and the boat, as far as a customer may know them. */
export interface CustomerBuild {
  readonly order: Of<Build['order'], typeof fields.ORDER> & {
    readonly discount?: Pick<Some<Order['discount']>, 'reason'> | undefined;
    readonly condition?: Pick<Some<Order['condition']>, 'name'> | undefined;
    readonly record?: Of<Some<Order['record']>, typeof fields.RECORD> | undefined;
  };
  readonly yard: Of<Build['yard'], typeof fields.YARD>;
  readonly currency: Build['currency'];
  readonly hull: Of<Build['hull'], typeof fields.HULL>;
  readonly outboard?: Pick<Some<Build['outboard']>, 'shaft' | 'mass'> & {
    readonly model: Of<Outboard, typeof fields.OUTBOARD>;
  };
  readonly trailer?: Of<BuildTrailer, typeof fields.TRAILER>;
  readonly items: readonly Of<DerivedItem, typeof fields.ITEM>[];
  readonly packages: readonly Pick<Build['packages'][number], 'name' | 'keys'>[];
}

/** What a customer pays: sums and prices, no cost. */
export interface CustomerPrice extends Of<Price, typeof fields.PRICE> {
  readonly lines: readonly (Of<PriceLine, typeof fields.LINE> & {
    /** Said to be free, for whatever reason. */
    readonly isFree: boolean;
  })[];
  readonly payments: readonly Of<Payment, typeof fields.PAYMENT>[];
}

export interface CustomerTrailer extends Of<TrailerFigures, typeof fields.TOWED> {
  readonly trailer: Of<BuildTrailer, typeof fields.TRAILER>;
}

type CustomerBank = Of<BankFigures, typeof fields.BANK> | NotComputed;

export interface CustomerElectrics extends Pick<ElectricsFigures, 'volts' | 'budget' | 'charging'> {
  readonly circuits: readonly {
    readonly volts: number;
    readonly row: {
      readonly circuit: Of<
        ElectricsFigures['circuits'][number]['row']['circuit'],
        typeof fields.CIRCUIT
      >;
    };
  }[];
  readonly bank: CustomerBank;
  readonly seriesBanks: readonly { readonly volts: number; readonly bank: CustomerBank }[];
}

/** What a customer's documents are made of. It has no cost, hour, rate, margin, part, supplier or note of the shop. */
export interface CustomerFigures {
  /** Figures of the yard are none of these, whatever fields they have. */
  readonly audience: 'customer';
  readonly build: CustomerBuild;
  /** What is stated of it, each once. */
  readonly facts: ToldFacts;
  readonly price: CustomerPrice;
  readonly mass: Of<Figures['mass'], typeof fields.MASS>;
  readonly trailerLoad?: Some<Figures['trailerLoad']>;
  readonly float: Figures['float'];
  readonly drive: Pick<DriveFigures, 'fuel' | 'water'> & {
    readonly loadings: readonly Of<DriveLoading, typeof fields.LOADING>[];
  };
  readonly limits: Of<Figures['limits'], typeof fields.LIMITS>;
  readonly tow: Pick<TowFigures, 'roof'> & { readonly trailer?: CustomerTrailer };
  readonly electrics: CustomerElectrics | NotComputed;
  /** Something electric is in the boat, a starter too. */
  readonly isWired: boolean;
  readonly findings: readonly CustomerFinding[];
}

/** The same boat otherwise, as a customer may see it. */
export interface CustomerAlternative extends Pick<FiguredAlternative, 'name'> {
  readonly audience: 'customer';
  /** False when something stands in the way, whether or not the customer may see what. */
  readonly canBeBuilt: boolean;
  readonly differences?: Of<Differences, typeof fields.DIFFERENCES>;
  readonly findings: readonly CustomerFinding[];
}

/** A change after acceptance, as a customer may see it. */
export interface CustomerVariation extends Pick<FiguredVariation, 'number' | 'added' | 'removed'> {
  readonly audience: 'customer';
  readonly canBeBuilt: boolean;
  readonly variation: Of<FiguredVariation['variation'], typeof fields.VARIATION>;
  readonly differences?: Of<Differences, typeof fields.DIFFERENCES>;
  readonly findings: readonly CustomerFinding[];
}
