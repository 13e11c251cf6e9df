import type { Figures } from '../figures/index.ts';
import type { Money } from '../money/index.ts';
import type { IsoDate } from '../units/index.ts';

/** A file that an issued quote was made of. */
export interface InputFile {
  /** Relative to the workspace, with forward slashes. */
  readonly file: string;
  /** SHA-256 of its text, hexadecimal. */
  readonly sha256: string;
}

/** A quote as it was sent: its numbers never change afterwards. */
export interface IssuedQuote {
  readonly number: string;
  /** 1 for the first; each later issue of the same quote is one more. */
  readonly revision: number;
  readonly issuedOn: IsoDate;
  readonly inputs: readonly InputFile[];
  /** Everything computed on that day; without findings. */
  readonly figures: Omit<Figures, 'findings'>;
  /** The text of the quote, as its template takes it. */
  readonly view: unknown;
}

/** Why a price is another today. */
export type DriftCause = 'formula' | 'price list' | 'rate' | 'option' | 'charge';

export interface DriftRow {
  /** Key of an item of the Build; "discount", "charges" or "rounding" for what is no item. */
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
