import type { Money } from '../money/index.ts';
import type { Decimal } from '../units/index.ts';

/** What one item costs the shop; every amount is in whole minor units. */
export interface CostLine {
  readonly key: string;
  /** As the catalogue has them. */
  readonly hours: Decimal;
  /** With learning and rework: these are paid for. */
  readonly costedHours: Decimal;
  /** With wastage, in the yard's currency. */
  readonly materials: Money;
  /** This item's share of what is left in packs that are bought whole. */
  readonly packs: Money;
  readonly freight: Money;
  readonly labour: Money;
  readonly overhead: Money;
  readonly other: Money;
  /** Sum of the six above. */
  readonly cost: Money;
}

/** What is bought of one part for the whole order. */
export interface Purchase {
  readonly code: string;
  readonly supplier: string;
  /** With wastage. */
  readonly used: Decimal;
  /** More than is used when packs are bought whole. */
  readonly bought: Decimal;
  /** How many packs, when they are bought whole. */
  readonly packs?: bigint;
  /** Without freight. */
  readonly cost: Money;
}

export interface OrderCost {
  readonly lines: readonly CostLine[];
  /** By code. */
  readonly purchases: readonly Purchase[];
  readonly cost: Money;
}

export interface PriceLine extends CostLine {
  readonly marginClass: string;
  /** True when the price is one of a list, not worked out. */
  readonly fixed: boolean;
  /** The fixed price, or cost / (1 - margin). */
  readonly calculated: Money;
  /** What rounding the customer's price added, or took off when it is below zero. */
  readonly rounding: Money;
  /** Taken off by a package offer. */
  readonly saving: Money;
  /** calculated + rounding - saving, before tax. */
  readonly price: Money;
  readonly tax: Money;
  /** price + tax. */
  readonly priceWithTax: Money;
  /** This line's share of the discount, before tax. */
  readonly discount: Money;
  /** price - discount. */
  readonly net: Money;
  /** net - cost. */
  readonly margin: Money;
  /** Share of net; undefined when that is zero. */
  readonly marginShare?: Decimal;
}

/** One margin class of the order, after discounts. */
export interface ClassMargin {
  readonly marginClass: string;
  readonly cost: Money;
  readonly net: Money;
  readonly margin: Money;
  readonly marginShare?: Decimal;
  readonly target: Decimal;
  readonly belowTarget: boolean;
}

export interface Payment {
  readonly kind: 'trade-in' | 'stage';
  readonly name: string;
  readonly when: string;
  readonly event?: string;
  readonly amount: Money;
  /** What of it has been paid. */
  readonly paid: Money;
}

export interface TaxedAmount {
  readonly before: Money;
  readonly tax: Money;
  readonly withTax: Money;
}

export interface Price {
  readonly lines: readonly PriceLine[];
  readonly purchases: readonly Purchase[];
  /** What an hour costs in every stage that has work. */
  readonly rates: readonly { readonly stage: string; readonly rate: Money }[];
  readonly classes: readonly ClassMargin[];
  readonly cost: Money;
  /** Sum of the lines before tax and discount. */
  readonly listPrice: Money;
  /** Sum of what rounding did to the lines. */
  readonly lineRounding: Money;
  /** Sum of what packages took off the lines. */
  readonly savings: Money;
  /** Taken off before tax: zero or more. */
  readonly discount: Money;
  readonly discountTax: Money;
  /** discount + discountTax. */
  readonly discountWithTax: Money;
  /** What rounding the whole added, or took off when it is below zero. */
  readonly rounding: TaxedAmount;
  /** listPrice - discount + rounding.before. */
  readonly taxable: Money;
  /** Tax not due because a trade-in reduces the taxed price: zero or more. */
  readonly tradeInTax: Money;
  /** Tax of the lines - discountTax + rounding.tax - tradeInTax. */
  readonly tax: Money;
  /** taxable + tax. */
  readonly boatWithTax: Money;
  /** Each charge with its tax; they sum to charges + chargesTax. */
  readonly chargeLines: readonly (Omit<TaxedAmount, 'before'> & { readonly name: string })[];
  /** Before tax. */
  readonly charges: Money;
  /** Tax of those charges that are taxed. */
  readonly chargesTax: Money;
  /** boatWithTax + charges + chargesTax: the last figure, with nothing left to add. */
  readonly driveAway: Money;
  /** taxable - cost. */
  readonly margin: Money;
  /** Margin as a share of the taxable price; undefined when that is zero. */
  readonly marginShare?: Decimal;
  readonly belowFloor: boolean;
  /** Trade-in first, then the stages; they sum to driveAway. */
  readonly payments: readonly Payment[];
  readonly tradeIn: Money;
  /** Received from the customer so far. */
  readonly paid: Money;
  /** driveAway - tradeIn - paid; below zero when too much has been paid. */
  readonly toPay: Money;
}
