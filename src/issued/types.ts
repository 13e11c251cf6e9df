import type { Money } from '../money/index.ts';

/** Why a price is another today. */
export type DriftCause = 'formula' | 'price list' | 'rate' | 'option' | 'charge';

export interface DriftRow {
  /** Key of an item; "discount", "charges" or "rounding" for what is no item. */
  readonly key: string;
  readonly name: string;
  /** As issued, with tax; zero when it was not there. */
  readonly was: Money;
  /** Today, with tax; zero when it is there no more. */
  readonly now: Money;
  /** They add up to now - was. */
  readonly causes: readonly {
    readonly cause: DriftCause;
    readonly amount: Money;
    /** What exactly changed: part codes, rates, quantities. */
    readonly details: readonly string[];
  }[];
}

/** What an issued quote would cost today. */
export interface Drift {
  readonly was: Money;
  readonly now: Money;
  /** Every row that changed; they add up to now - was. */
  readonly rows: readonly DriftRow[];
}
