import type { DocumentHead } from '../sections/head.ts';
import type { KeyFigure, MethodNote } from '../sections/method-notes.ts';
import type { CaptionedPicture } from '../sections/picture.ts';
import type { ShopHead } from '../sections/shop-head.ts';

/** A label and what stands beside it. */
export interface Fact {
  readonly label: string;
  readonly value: string;
}

/** One thing that the customer gets. Prices are empty where the shop does not show them. */
export interface QuoteItem {
  /** The number beside it in the drawing; empty when it is not in the drawing. */
  readonly number: string;
  readonly name: string;
  readonly description: string;
  /** "2 ×"; empty for one. */
  readonly quantity: string;
  readonly price: string;
}

export interface QuoteGroup {
  readonly name: string;
  /** Empty where items have their own prices, or none are shown. */
  readonly price: string;
  readonly items: readonly QuoteItem[];
  /** What comes without a line of its own. */
  readonly includes: readonly string[];
}

/** A row between the items and the drive-away price. */
export interface QuoteSum {
  readonly label: string;
  readonly detail: string;
  readonly amount: string;
  readonly kind: 'sum' | 'part';
}

/** A figure of page one, with what it depends on. */
export interface GlanceFact extends Fact {
  /** Empty where nothing need be said. */
  readonly detail: string;
}

/** Another way to have the boat, against this quote. */
export interface QuoteAlternative {
  readonly name: string;
  /** Each with its sign; "no change" when there is none. */
  readonly differences: readonly Fact[];
  /** What stands in its way or should be known. */
  readonly cautions: readonly string[];
}

/** Everything that the customer's quote says, as text. No cost, hour or margin has a place in it. */
export interface QuoteView {
  readonly document: DocumentHead;
  readonly shop: ShopHead;
  /** Which form its template is written for; a quote that was sent before forms has none. */
  readonly form: 'page one';
  /** "Quote", "Draft quote" or "Closed quote", and the boat. */
  readonly heading: string;
  readonly facts: readonly Fact[];
  readonly customer: readonly string[];
  readonly standing: { readonly kind: string; readonly word: string; readonly sentence: string };
  /** The hull in a sentence. */
  readonly lead: string;
  /** What the customer said that the boat is for, as theirs. */
  readonly told: string;
  readonly glance: readonly GlanceFact[];
  /** The boat from the side, for page one. */
  readonly profile: CaptionedPicture;
  readonly pictures: readonly CaptionedPicture[];
  readonly price: {
    readonly driveAway: string;
    readonly includes: string;
    /** How the rows of items are priced: with tax, or before it. Empty when they are not. */
    readonly heading: string;
    readonly sums: readonly QuoteSum[];
    /** Packages, export, trade-in: what a customer should know beside the sums. */
    readonly remarks: readonly string[];
  };
  /** What a person could be hurt by not knowing; empty when there is nothing. */
  readonly shouldKnow: readonly string[];
  readonly groups: readonly QuoteGroup[];
  readonly payments: readonly {
    readonly name: string;
    readonly when: string;
    readonly amount: string;
  }[];
  /** The same boat otherwise, and what changes; empty when none were asked for. */
  readonly alternatives: readonly QuoteAlternative[];
  readonly figures: readonly KeyFigure[];
  readonly methods: readonly MethodNote[];
  readonly basis: string;
  readonly notIncluded: readonly string[];
  readonly terms: readonly string[];
  /** What changed since the revision before; absent in a first issue and in a draft. */
  readonly changes?: {
    readonly since: string;
    /** Empty where the row was not there, or is there no more. */
    readonly rows: readonly { readonly name: string; readonly was: string; readonly now: string }[];
    readonly was: string;
    readonly now: string;
  };
  /** Who signs; nobody signs what is not an offer. */
  readonly signatures: readonly string[];
}

/** A quote as it was kept as data: in today’s form, or in that of before there were forms. */
export interface KeptQuote {
  readonly document: DocumentHead;
  readonly form?: QuoteView['form'];
}

/** True for what was kept of a quote: what has its head, its price and its items is one. */
export function isKeptQuote(kept: unknown): kept is KeptQuote {
  return (
    typeof kept === 'object' &&
    kept !== null &&
    'document' in kept &&
    'price' in kept &&
    'groups' in kept
  );
}
