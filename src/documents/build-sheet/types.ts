import type { DocumentHead } from '../sections/head.ts';
import type { CaptionedPicture } from '../sections/picture.ts';
import type { StageTable } from './stage-table.ts';

/** A mass to aim at. */
export interface TargetMass {
  readonly condition: string;
  readonly contains: string;
  readonly target: string;
  /** Outside it the office is asked. */
  readonly band: string;
  /** As recorded; empty: a blank to write in. */
  readonly measured: string;
}

export interface StageHours {
  /** The stage's number on this sheet. */
  readonly number: string;
  readonly stage: string;
  /** Who does it: "2 × Laminator"; empty when the yard does not say. */
  readonly who: string;
  /** The days that the plan gives it; empty when it is not planned. */
  readonly days: string;
  readonly planned: string;
  /** As recorded; empty: a blank to write in. */
  readonly worked: string;
}

/** Something that the checks found, for those who build. */
export interface ShopFinding {
  readonly word: string;
  readonly means: string;
  readonly details: readonly string[];
  readonly remedies: readonly string[];
}

/** A thing in the boat and where it goes. */
export interface PlacedItem {
  /** Its number in the drawing; empty when it is not in the drawing. */
  readonly number: string;
  /** "4 ×"; empty for one. */
  readonly quantity: string;
  readonly name: string;
  /** The variation that it came with: "V1"; empty when it was in the order. */
  readonly change: string;
  readonly forward: string;
  readonly across: string;
  readonly up: string;
  /** Said in the place of the three when they would mean nothing; else empty. */
  readonly instead: string;
}

export interface StageItem extends PlacedItem {
  readonly notes: readonly string[];
}

/** A material to fetch before a stage begins. */
export interface PickedPart {
  readonly code: string;
  readonly description: string;
  /** With wastage, rounded up. */
  readonly quantity: string;
  /** Empty for what is counted. */
  readonly unit: string;
  /** True when its batch is written down. */
  readonly traced: boolean;
}

export interface StageSheet {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly does: string;
  /** Who does it: "2 × Laminator"; empty when the yard does not say. */
  readonly who: string;
  /** Empty when no hours are planned. */
  readonly planned: string;
  /** The days that the plan gives it; empty when it is not planned. */
  readonly days: string;
  readonly cautions: readonly string[];
  readonly parts: readonly PickedPart[];
  /** True when the batch of some part is written down. */
  readonly traced: boolean;
  /** What is done with the items: "Fit", or "Try" on the water. */
  readonly itemsHeading: string;
  readonly items: readonly StageItem[];
  /** What the trade works by: lay-up, cut list, mixing, plan of the infusion, wiring. */
  readonly tables: readonly StageTable[];
  /** Target weights when the stage is over; empty when she is not weighed then. */
  readonly gate: readonly StageTable[];
  readonly pictures: readonly CaptionedPicture[];
  readonly checks: readonly string[];
  readonly measures: readonly string[];
}

/** Everything that the shop floor's sheet says, as text. No money has a place in it. */
export interface BuildSheetView {
  readonly document: DocumentHead;
  readonly shop: string;
  readonly number: string;
  readonly boat: string;
  /** Why work must not begin from this sheet; empty when it may. */
  readonly halt: string;
  /** What she is for, in the customer's words. */
  readonly use: string;
  readonly facts: readonly { readonly label: string; readonly value: string }[];
  /** What the office wrote for the shop; empty when it wrote nothing. */
  readonly note: string;
  /** Changes after acceptance that are built in: what came in, what went out. */
  readonly variations: readonly {
    readonly name: string;
    readonly signed: string;
    readonly added: readonly string[];
    readonly removed: readonly string[];
  }[];
  readonly findings: readonly ShopFinding[];
  readonly masses: readonly TargetMass[];
  readonly massMethod: string;
  readonly hours: readonly StageHours[];
  /** When the days of the hours were planned; empty when the order is not planned. */
  readonly daysNote: string;
  readonly totalHours: string;
  /** Empty while nothing is recorded. */
  readonly totalWorked: string;
  /** Names of the stages that this order does without; empty when there are none. */
  readonly notInOrder: string;
  /** Where things go. */
  readonly pictures: readonly CaptionedPicture[];
  /** Sections, masses and the like. */
  readonly furtherPictures: BuildSheetView['pictures'];
  readonly placing: readonly PlacedItem[];
  readonly stages: readonly StageSheet[];
}
