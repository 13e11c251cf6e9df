import type { DocumentHead } from './head.ts';
import type { Picture } from './picture.ts';

/** A label with its value; an empty value is a blank to write in. */
export interface HandoverField {
  readonly label: string;
  readonly value: string;
}

export interface FittedItem {
  /** Its number in the drawing; empty when it is not in the drawing. */
  readonly number: string;
  /** "4 ×"; empty for one. */
  readonly quantity: string;
  readonly name: string;
  readonly description: string;
  /** One field for each serial number that it has. */
  readonly serials: readonly HandoverField[];
}

export interface FittedGroup {
  readonly name: string;
  readonly items: readonly FittedItem[];
  /** What comes without a line of its own. */
  readonly includes: readonly string[];
}

export interface HandoverMass {
  readonly condition: string;
  readonly contains: string;
  readonly computed: string;
  /** Empty: a blank to write in. */
  readonly weighed: string;
  readonly when: string;
}

/** What she may carry, with how it was found and who confirms it. */
export interface CarryFigure {
  readonly label: string;
  readonly value: string;
  readonly method: string;
}

/** A run on the water; every field empty: a row to write in. */
export interface TrialRun {
  readonly date: string;
  readonly conditions: string;
  readonly people: string;
  readonly speed: string;
  readonly rpm: string;
  readonly by: string;
}

export interface CautionGroup {
  readonly heading: string;
  readonly lines: readonly string[];
}

/** Everything that the customer's handover pack says, as text. No cost, hour, part or note has a place in it. */
export interface HandoverView {
  readonly document: DocumentHead;
  readonly shop: {
    readonly name: string;
    readonly strapline: string;
    readonly address: readonly string[];
    readonly reach: readonly string[];
  };
  readonly heading: string;
  readonly boat: string;
  readonly lead: readonly string[];
  readonly customer: readonly string[];
  readonly standing: {
    readonly kind: 'preview' | 'handed-over';
    readonly word: string;
    readonly sentence: string;
  };
  readonly identity: readonly HandoverField[];
  readonly pictures: readonly (Picture & { readonly caption: string })[];
  readonly fitted: readonly FittedGroup[];
  /** Serial numbers that were recorded under other names than those of the items. */
  readonly otherSerials: readonly HandoverField[];
  readonly masses: readonly HandoverMass[];
  readonly massMethod: string;
  readonly carries: readonly CarryFigure[];
  readonly basis: string;
  /** What she draws and how long her batteries last; absent without electrics. */
  readonly energy:
    | {
        readonly rows: readonly {
          readonly name: string;
          readonly current: string;
          readonly time: string;
          readonly aDay: string;
        }[];
        readonly total: string;
        readonly figures: readonly CarryFigure[];
        readonly method: string;
      }
    | undefined;
  /** How she floats; absent when it was not computed. */
  readonly floats:
    | {
        readonly figures: readonly CarryFigure[];
        readonly lines: readonly string[];
        readonly method: string;
      }
    | undefined;
  readonly trials: readonly TrialRun[];
  readonly checklist: readonly string[];
  readonly care: readonly string[];
  readonly cautions: readonly CautionGroup[];
  readonly signatures: readonly string[];
}
