import type { Amperes, Metres } from '../units/index.ts';
import type { Insulation } from './wire-table.ts';

export type { NotComputed } from '../units/index.ts';

/** 3 % for what must work at low voltage (lights required by law, pumps, electronics, feeders), 10 % for the rest. */
export type DropClass = 'critical' | 'general';

/** What a circuit is for: it decides the colour of its wire. */
export type Purpose =
  | 'feeder'
  | 'starting'
  | 'navigation-lights'
  | 'cabin-lights'
  | 'pump'
  | 'blower'
  | 'instruments'
  | 'accessory';

/** One circuit: from the panel to a device and back. */
export interface Circuit {
  readonly name: string;
  readonly purpose: Purpose;
  /** Largest steady current of the device. */
  readonly current: Amperes;
  /** Length of cable one way, along its route. */
  readonly run: Metres;
  readonly drop: DropClass;
  /** Hours a day that it draws its current. */
  readonly hoursADay: number;
  /** true: it may draw its current for three hours and more on end. */
  readonly continuous: boolean;
  /** true: some of the run passes a space that the engine heats. */
  readonly engineSpace: boolean;
  /** Conductors that carry current in the same bundle, this circuit's two among them. */
  readonly bundled: number;
  /** Largest fuse that the device's maker allows. */
  readonly largestFuse?: Amperes;
}

/** What the yard wires with. */
export interface WiringRules {
  /** Nominal voltage of the system, V. */
  readonly nominalVolts: number;
  readonly insulation: Insulation;
  /** Thinnest conductor that the yard uses, AWG; 16 alone, 18 only within a sheath. */
  readonly thinnest: '18' | '16';
  /** Areas of the cables on the shelf, mm2; left out: every standard size. */
  readonly stockMm2?: readonly number[];
}

export interface Conductor {
  readonly awg: string;
  /** Area of the AWG size, mm2. */
  readonly areaMm2: number;
  /** Next metric cable, of the stock or of the standard sizes, that holds at least as much copper, mm2. */
  readonly metricMm2: number;
  /** Current it may carry here, after bundling and heat. */
  readonly ampacity: Amperes;
  /** Voltage lost on the way there and back, V and as a share of the nominal voltage. */
  readonly dropVolts: number;
  readonly dropShare: number;
  readonly governedBy: 'drop' | 'ampacity' | 'thinnest' | 'fuse';
}

/** One line of the wiring schedule. */
export interface WiringRow {
  readonly circuit: Circuit;
  /** Number on both ends of the wire. */
  readonly label: string;
  /** Colour of the wire to the device. */
  readonly colour: string;
  /** Place on the switch panel, from 1. */
  readonly position: number;
  readonly conductor: Conductor;
  readonly fuse: Amperes;
  /** Cable to cut: there and back. */
  readonly cable: Metres;
}

export interface WiringSchedule {
  readonly rows: readonly WiringRow[];
  /** Circuits for which no sound wire and fuse were found, with the reason. */
  readonly refused: readonly { readonly circuit: Circuit; readonly reason: string }[];
}
