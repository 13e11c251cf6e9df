import type { DocumentHead } from '../sections/head.ts';
import type { CaptionedPicture } from '../sections/picture.ts';
import type { KeyFigure, MethodNote } from '../sections/method-notes.ts';
import type { ShopHead } from '../sections/shop-head.ts';

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
  readonly shop: ShopHead;
  readonly heading: string;
  readonly boat: string;
  readonly lead: string;
  /** What the owner said that the boat is for, as theirs. */
  readonly told: string;
  readonly customer: readonly string[];
  readonly standing: {
    readonly kind: 'preview' | 'handed-over';
    readonly word: string;
    readonly sentence: string;
  };
  readonly identity: readonly HandoverField[];
  readonly pictures: readonly CaptionedPicture[];
  /** A draft of the capacity plate; empty where nothing could be estimated. */
  readonly plate: HandoverView['pictures'];
  readonly fitted: readonly FittedGroup[];
  /** Serial numbers that were recorded under other names than those of the items. */
  readonly otherSerials: readonly HandoverField[];
  readonly masses: readonly HandoverMass[];
  readonly carries: readonly KeyFigure[];
  /** What a person could be hurt by not knowing; empty when there is nothing. */
  readonly shouldKnow: readonly string[];
  readonly basis: string;
  /** Battery use in a day, and how long the batteries last; absent without electrics. */
  readonly energy:
    | {
        readonly rows: readonly {
          readonly name: string;
          readonly current: string;
          readonly time: string;
          readonly aDay: string;
        }[];
        readonly total: string;
        /** What the total is called. */
        readonly totalOf: string;
        readonly figures: readonly KeyFigure[];
        /** What to bear in mind. */
        readonly caution: string;
      }
    | undefined;
  /** How it floats; absent when it was not computed. */
  readonly floats:
    | {
        readonly figures: readonly KeyFigure[];
        readonly lines: readonly string[];
        readonly caution: string;
      }
    | undefined;
  readonly methods: readonly MethodNote[];
  readonly trials: readonly TrialRun[];
  readonly checklist: readonly string[];
  readonly care: readonly string[];
  readonly cautions: readonly CautionGroup[];
  readonly signatures: readonly string[];
}
