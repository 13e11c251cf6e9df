import {
  cableRun,
  type Circuit,
  planWiring,
  type WiringRow,
  type WiringRules,
} from '../../electrics/index.ts';
import type { DerivedBuild, DerivedItem } from '../../derive/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import { type CircuitFacts, circuitSchema } from '../../schema/index.ts';
import { amperes, decimalToNumber, type Metres, metres, type Point3 } from '../../units/index.ts';

/** Cable that every run has at least, for tails at both ends, m; common practice, no source. */
const SHORTEST_RUN = 0.5;

const DEFAULT_CIRCUIT = circuitSchema.parse({});

/** A wire of the boat with what it feeds. */
export interface WiredCircuit {
  readonly row: WiringRow;
  readonly item: BuildItem;
  readonly from: CircuitFacts['from'];
  /** Nominal voltage, V. */
  readonly volts: number;
}

export interface RefusedCircuit {
  readonly item: BuildItem;
  readonly circuit: Circuit;
  readonly reason: string;
  /** What the device draws, with its margin, is more than the largest fuse that its maker allows. */
  readonly aboveDevice: boolean;
}

/** Where cables begin. */
export interface Sources {
  /** What feeds the boat's own voltage. */
  readonly battery: Point3;
  /** Batteries in series, by the voltage that they make. */
  readonly rows: ReadonlyMap<number, Point3>;
  /** Undefined when the boat has no switch panel: everything begins at the battery then. */
  readonly panel?: Point3;
}

interface Planned {
  readonly item: BuildItem;
  readonly circuit: Circuit;
  readonly from: CircuitFacts['from'];
  readonly volts: number;
}

/** The yard's rules of wiring, for the boat's own voltage. */
export function rulesOf({ yard: { wiring } }: Build): WiringRules {
  return {
    nominalVolts: wiring.volts,
    insulation: INSULATION[wiring.insulation],
    thinnest: wiring.thinnest,
    ...(wiring.stockMm2 && { stockMm2: wiring.stockMm2.map(decimalToNumber) }),
  };
}

const INSULATION = {
  '60': 60,
  '75': 75,
  '80': 80,
  '90': 90,
  '105': 105,
  '125': 125,
  '200': 200,
} as const;

/**
 * Every item that draws current on a wire of its own: those of the switch panel first, in their places on it, then
 * those that are wired to the battery. An item without circuit facts is taken as a plain accessory.
 */
export function wireItems(
  build: DerivedBuild,
  sources: Sources,
): { readonly wired: readonly WiredCircuit[]; readonly refused: readonly RefusedCircuit[] } {
  const planned = build.items
    .filter(({ current }) => current > 0)
    .flatMap((item) => circuitsOf(item, build, sources))
    .toSorted((a, b) => Number(a.from === 'battery') - Number(b.from === 'battery'));
  const rules = rulesOf(build);
  const wired: WiredCircuit[] = [];
  const refused: RefusedCircuit[] = [];
  for (const { circuit, ...one } of planned) {
    const { rows, refused: ill } = planWiring([circuit], { ...rules, nominalVolts: one.volts });
    for (const row of rows) wired.push({ ...one, row: numbered(row, wired.length + 1) });
    for (const { reason } of ill) {
      refused.push({ item: one.item, circuit, reason, aboveDevice: isAboveDevice(circuit) });
    }
  }
  return { wired, refused };
}

/** The cable from the battery to the panel: for all circuits at once, the largest fuse behind it and the yard's least. */
export function feederCircuit(
  { yard }: Build,
  { battery, panel }: Sources,
  wired: readonly WiredCircuit[],
): Circuit | undefined {
  const rows = wired.filter(({ from }) => from === 'panel').map(({ row }) => row);
  if (!panel || rows.length === 0) return undefined;
  const load = rows.reduce((sum, { circuit }) => sum + circuit.current, 0);
  const largest = Math.max(...rows.map(({ fuse }) => fuse));
  return {
    name: 'Feeder of the switch panel',
    purpose: 'feeder',
    current: amperes(Math.max(load, largest, yard.wiring.leastFeeder)),
    run: runOf(battery, panel, decimalToNumber(yard.wiring.routing)),
    drop: 'critical',
    hoursADay: 0,
    continuous: false,
    engineSpace: false,
    bundled: 2,
  };
}

/** Length of a cable along its route, tails among it. */
export function runOf(from: Point3, to: Point3, routing: number): Metres {
  return metres(Math.max(SHORTEST_RUN, cableRun(from, to, routing)));
}

/** Nominal voltage of a device: its own, else the boat's. */
export const voltsOf = ({ electrics }: BuildItem, { yard }: Build): number =>
  electrics?.circuit?.volts ?? yard.wiring.volts;

function circuitsOf(item: DerivedItem, build: Build, sources: Sources): readonly Planned[] {
  const { yard } = build;
  const facts = item.electrics?.circuit ?? DEFAULT_CIRCUIT;
  const from = sources.panel ? facts.from : 'battery';
  const volts = voltsOf(item, build);
  const battery = sources.rows.get(volts) ?? sources.battery;
  const origin = from === 'panel' && sources.panel ? sources.panel : battery;
  const fed = facts.each ? item.instances : [item];
  return fed.map(({ at, current }, index) => ({
    item,
    circuit: {
      name: fed.length > 1 ? `${item.name} ${index + 1}` : item.name,
      purpose: facts.purpose,
      current,
      run: runOf(origin, at, decimalToNumber(yard.wiring.routing)),
      drop: facts.drop,
      hoursADay: decimalToNumber(facts.hoursADay),
      continuous: facts.continuous,
      engineSpace: facts.engineSpace,
      bundled: facts.bundled,
      ...(facts.largestFuse !== undefined && { largestFuse: facts.largestFuse }),
    },
    from,
    volts,
  }));
}

const numbered = (row: WiringRow, position: number): WiringRow => ({
  ...row,
  position,
  label: String(position).padStart(2, '0'),
});

/** A fuse bears what never rests by a quarter more: the rule of the room, seen from the device's side. */
const isAboveDevice = ({ current, continuous, largestFuse }: Circuit): boolean =>
  largestFuse !== undefined && current * (continuous ? 1.25 : 1) > largestFuse;
