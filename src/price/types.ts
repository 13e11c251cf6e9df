import type { Currency, Money, RoundingRule } from '../money/index.ts';
import type { Decimal } from '../units/index.ts';

export interface PriceMaterial {
  readonly code: string;
  readonly supplier: string;
  readonly materialClass: string;
  /** Used in the boat, in the part's unit, without wastage. */
  readonly quantity: Decimal;
  /** Of one unit, in the currency of the price list. */
  readonly unitCost: Money;
  /** Units in what the supplier sells at a time. */
  readonly pack?: Decimal;
  /** Whole: what is left of the last pack is charged to this order; a share is not. */
  readonly buy?: 'whole' | 'share';
}

export interface PriceItem {
  readonly key: string;
  readonly marginClass: string;
  readonly materials: readonly PriceMaterial[];
  readonly hours: readonly { readonly stage: string; readonly hours: Decimal }[];
  readonly otherCost?: Money;
  readonly fixedPrice?: Money;
}

/** A wage and what makes it the cost of an hour that a boat is charged with. */
export interface LoadedWage {
  readonly wage: Decimal;
  /** Leave, insurance and the like, a share of the wage. */
  readonly onCosts: Decimal;
  /** Share of paid hours that go into boats, above 0. */
  readonly productive: Decimal;
}

/** What a supplier's freight costs: a share of what is bought from them, or so much an order. */
export type Freight = { readonly share: Decimal } | { readonly perOrder: Decimal };

export interface Exchange {
  /** Units of the yard's currency for one of the other. */
  readonly rate: Decimal;
  /** Share added for the rate moving before the part is paid for. */
  readonly buffer: Decimal;
}

/** How the prices that a customer sees are rounded; the difference is shown in the yard's costing. */
export interface PriceRounding {
  /** To a multiple of so many units of the currency. */
  readonly to: bigint;
  readonly way: 'nearest' | 'up';
  readonly tax: 'before' | 'after';
  /** Each line, or the whole: the taxable price before tax, the drive-away price after it. */
  readonly on: 'line' | 'total';
}

export interface PriceRules {
  readonly currency: Currency;
  /** What one hour costs, by stage: a plain rate, or a wage to be loaded. */
  readonly rates: Readonly<Record<string, Decimal | LoadedWage>>;
  /** Overhead of one hour. */
  readonly overhead: Decimal;
  /** Overhead as a share of materials and labour, beside that of the hours. */
  readonly overheadShare?: Decimal;
  /** What the hours of a stage are multiplied by on a boat that is among the first of its kind. */
  readonly learning?: Readonly<Record<string, Decimal>>;
  /** Hours allowed on top for work done twice, a share. */
  readonly rework?: Decimal;
  /** Margin on the selling price, a fraction below 1, by class. */
  readonly margins: Readonly<Record<string, Decimal>>;
  readonly marginFloor: Decimal;
  /** Share bought on top, by class of material. */
  readonly wastage: Readonly<Record<string, Decimal>>;
  /** By ISO 4217 code of the other currency. */
  readonly exchange?: Readonly<Record<string, Exchange>>;
  /** By supplier. */
  readonly freight?: Readonly<Record<string, Freight>>;
  readonly rounding?: PriceRounding;
  readonly taxRate: Decimal;
  readonly taxRounding: 'document' | 'line';
  /** Left out: half a minor unit of tax is rounded up. */
  readonly taxRule?: RoundingRule;
  /** True where the law takes a trade-in off the price that is taxed. */
  readonly tradeInReducesTax?: boolean;
}

/** Due at an event: a share of what is left after trade-in and fixed amounts, or a fixed amount. */
export type PaymentStage = {
  readonly name: string;
  readonly when: string;
  readonly event?: string;
} & ({ readonly share: Decimal } | { readonly amount: Decimal });

/** A set of lines sold together: at a price before tax, or with a share off. */
export type PackageOffer = {
  readonly name: string;
  readonly keys: readonly string[];
} & ({ readonly price: Decimal } | { readonly share: Decimal });

/** Off the price before tax, of one class or of everything. */
export type Discount = { readonly marginClass?: string } & (
  { readonly amount: Decimal } | { readonly share: Decimal }
);

export interface PriceInput {
  readonly items: readonly PriceItem[];
  readonly rules: PriceRules;
  readonly charges: readonly {
    readonly name: string;
    /** Before tax. */
    readonly amount: Money;
    readonly taxed: boolean;
  }[];
  readonly discount?: Discount;
  readonly packages?: readonly PackageOffer[];
  readonly tradeIn?: { readonly name: string; readonly value: Decimal };
  /** What the customer has paid already. */
  readonly paid?: readonly Decimal[];
  readonly payments: readonly PaymentStage[];
}
