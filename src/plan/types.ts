import type { IsoDate } from '../units/index.ts';
import type { CalendarSettings } from './calendar.ts';

/** A step of one order's build, as the plan sees it. */
export interface PlanStage {
  readonly id: string;
  /** Stages of the same order that must be over first. */
  readonly after: readonly string[];
  /** Hours that it takes: of work with its crew, or of the clock for a cure. */
  readonly hours: number;
  /** work: it rests at night, at weekends and on holidays; always: it goes on through them. */
  readonly passes: 'work' | 'always';
  /** People of each trade that it takes from start to end. */
  readonly crew: readonly { readonly trade: string; readonly people: number }[];
  /** true: once begun it must be over the same day. */
  readonly oneSitting?: boolean;
  /** The mould that it needs. The order keeps a mould from the first stage that needs it to the end of the last. */
  readonly mould?: string;
  /** Parts without which it cannot start, with the day each arrives. */
  readonly parts?: readonly { readonly name: string; readonly arrives: IsoDate }[];
}

export interface PlanOrder {
  readonly number: string;
  /** Not before this day: the order is accepted, the plan starts. */
  readonly release: IsoDate;
  readonly promised?: IsoDate;
  /** Stages still to be done; what is done is left out. */
  readonly stages: readonly PlanStage[];
  /** Moulds that the order is in already: its hold on them starts with the plan. */
  readonly inMoulds?: readonly string[];
}

export interface PlanInput {
  readonly calendar: CalendarSettings;
  /** How many people of each trade there are. */
  readonly trades: Readonly<Record<string, number>>;
  /** In the order that they are placed when nothing else decides. */
  readonly orders: readonly PlanOrder[];
  /** Schedules that the search may try beyond the rule's own; 0 keeps the rule. */
  readonly tries: number;
}

/** What a stage waited for, in hours of the clock. */
export interface Wait {
  readonly cause: 'mould' | 'trade' | 'part';
  /** Which mould, trade or part. */
  readonly name: string;
  readonly hours: number;
}

export interface PlannedStage {
  readonly order: string;
  readonly stage: PlanStage;
  /** Hours from midnight of the plan's first day. */
  readonly start: number;
  readonly end: number;
  readonly waits: readonly Wait[];
}

/** One order's hold on one mould. */
export interface MouldHold {
  readonly mould: string;
  readonly order: string;
  readonly start: number;
  readonly end: number;
}

export interface PlannedOrder {
  readonly order: PlanOrder;
  readonly stages: readonly PlannedStage[];
  readonly start: number;
  readonly end: number;
  readonly finishes: IsoDate;
  /** Days after the promise, below 0 when before it; undefined without a promise. */
  readonly daysLate?: number;
  /** What the chain of stages that sets the end waited for, longest wait first. */
  readonly binds: readonly Wait[];
}

export interface Plan {
  readonly orders: readonly PlannedOrder[];
  readonly moulds: readonly MouldHold[];
  /** Orders that cannot be planned, with the reason. */
  readonly refused: readonly { readonly order: PlanOrder; readonly reason: string }[];
  /** How many schedules were tried beyond the rule's own. */
  readonly tries: number;
  /** The numbers in the order that they were placed in. */
  readonly sequence: readonly string[];
}
