import type { Currency, Money } from '../money/index.ts';
import type { Decimal } from '../units/index.ts';

export interface PriceItem {
  readonly key: string;
  readonly marginClass: string;
  readonly materials: readonly {
    readonly materialClass: string;
    readonly quantity: Decimal;
    readonly unitCost: Money;
  }[];
  readonly hours: readonly { readonly stage: string; readonly hours: Decimal }[];
  readonly otherCost?: Money;
  readonly fixedPrice?: Money;
}

export interface PriceRules {
  readonly currency: Currency;
  /** Pay of one hour, by stage. */
  readonly rates: Readonly<Record<string, Decimal>>;
  /** Overhead of one hour. */
  readonly overhead: Decimal;
  /** Margin on the selling price, a fraction below 1, by class. */
  readonly margins: Readonly<Record<string, Decimal>>;
  readonly marginFloor: Decimal;
  /** Share bought on top, by class of material. */
  readonly wastage: Readonly<Record<string, Decimal>>;
  readonly taxRate: Decimal;
  readonly taxRounding: 'document' | 'line';
}

export interface PaymentShare {
  readonly name: string;
  readonly when: string;
  readonly share: Decimal;
}

export interface PriceInput {
  readonly items: readonly PriceItem[];
  readonly rules: PriceRules;
  readonly charges: readonly { readonly name: string; readonly amount: Money }[];
  readonly discount?: { readonly amount: Decimal } | { readonly share: Decimal };
  readonly payments: readonly PaymentShare[];
}

/** One item's cost and price; every amount is in whole minor units. */
export interface PriceLine {
  readonly key: string;
  readonly hours: Decimal;
  readonly materials: Money;
  readonly labour: Money;
  readonly overhead: Money;
  readonly other: Money;
  /** Sum of the four above. */
  readonly cost: Money;
  /** Before tax. */
  readonly price: Money;
  readonly tax: Money;
  /** price + tax. */
  readonly priceWithTax: Money;
}

export interface Price {
  readonly lines: readonly PriceLine[];
  readonly cost: Money;
  /** Sum of the lines before tax and discount. */
  readonly listPrice: Money;
  /** Taken off before tax: zero or more. */
  readonly discount: Money;
  readonly discountTax: Money;
  /** discount + discountTax. */
  readonly discountWithTax: Money;
  /** listPrice - discount. */
  readonly taxable: Money;
  readonly tax: Money;
  /** taxable + tax. */
  readonly boatWithTax: Money;
  readonly charges: Money;
  /** boatWithTax + charges: the last figure, with nothing left to add. */
  readonly driveAway: Money;
  /** taxable - cost. */
  readonly margin: Money;
  /** Margin as a share of the taxable price; undefined when that is zero. */
  readonly marginShare?: Decimal;
  readonly belowFloor: boolean;
  readonly payments: readonly {
    readonly name: string;
    readonly when: string;
    readonly amount: Money;
  }[];
}
