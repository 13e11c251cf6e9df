import {
  bilgeFlow,
  cableToPick,
  type EnergyBudget,
  mainFuse,
  type MainFuse,
  type NotComputed,
  planWiring,
  gaugeFor,
  starterCable,
  type StarterCable,
  type WiringRow,
} from '../../electrics/index.ts';
import type { DerivedBuild } from '../../derive/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import { type Amperes, decimalToNumber, LITRE_AN_HOUR, type Metres } from '../../units/index.ts';
import {
  type BankFigures,
  bankFigures,
  type Battery,
  batteriesOf,
  type ChargeFigures,
  chargeFigures,
} from './batteries.ts';
import {
  feederCircuit,
  type RefusedCircuit,
  rulesOf,
  runOf,
  type Sources,
  voltsOf,
  type WiredCircuit,
  wireItems,
} from './circuits.ts';
import { budgetAt, type SeriesBank, seriesBanksOf, shareBatteries } from './series-banks.ts';

/** The cable from the battery to the switch panel, with the main fuse and how near to the battery it must sit. */
export interface FeederFigures {
  readonly row: WiringRow;
  readonly fuse: MainFuse | NotComputed;
  /** The same when the unfused length lies in a sheath. */
  readonly sheathed: MainFuse | NotComputed;
}

export interface StarterFigures {
  readonly battery: BuildItem;
  readonly run: Metres;
  readonly cranking: Amperes;
  readonly cable: StarterCable | NotComputed;
  /** What the engine's maker asks for at least, mm2; its own table goes first. */
  readonly makersMm2?: number;
  /** The American size that holds as much. */
  readonly makersAwg?: string;
}

interface PumpFigures {
  readonly item: BuildItem;
  /** What one delivers at its head, L/h. */
  readonly delivers: number;
  readonly wanted?: number;
}

/** What is computed of the wiring of an order. */
export interface ElectricsFigures {
  readonly volts: number;
  readonly circuits: readonly WiredCircuit[];
  readonly refused: readonly RefusedCircuit[];
  readonly panel?: { readonly item: BuildItem; readonly ways: number };
  readonly feeder?: FeederFigures | NotComputed;
  readonly starter?: StarterFigures;
  readonly picks: ReturnType<typeof cableToPick>;
  /** What the circuits of the boat's own voltage draw in a day. */
  readonly budget: EnergyBudget;
  readonly bank: BankFigures | NotComputed;
  /** Batteries in series for devices of a higher voltage, apart from the bank. */
  readonly seriesBanks: readonly SeriesBank[];
  readonly charging: readonly ChargeFigures[];
  readonly pumps: readonly PumpFigures[];
}

/** The wiring of an order, or why there is none. */
export function electricsFigures(build: DerivedBuild): ElectricsFigures | NotComputed {
  const { house, start } = batteriesOf(build);
  const [battery] = house;
  const drawing = build.items.filter(({ current }) => current > 0);
  if (drawing.length === 0 && !battery) return { notComputed: 'nothing electrical is ordered' };
  if (!battery) return { notComputed: 'the order has no battery' };
  const panel = panelOf(build);
  const shared = shareBatteries(
    build,
    house,
    drawing.map((item) => voltsOf(item, build)),
  );
  // What the house is left without, the starting battery feeds.
  const own = shared.house.length > 0 ? shared.house : start;
  const sources: Sources = {
    battery: (own[0] ?? battery).item.at,
    rows: new Map(
      shared.rows.flatMap(({ volts, row }) => ('item' in row ? [[volts, row.item.at]] : [])),
    ),
    ...(panel && { panel: panel.item.at }),
  };
  const { wired, refused } = wireItems(build, sources);
  const feeder = feederOf(build, sources, wired);
  const [starting] = start;
  const starter = starting && starterOf(build, starting.item);
  const volts = build.yard.wiring.volts;
  const budget = budgetAt(wired, volts);
  const bank = bankFigures(build, own, budget);
  return {
    volts,
    circuits: wired,
    refused,
    ...(panel && { panel }),
    ...(feeder && { feeder }),
    ...(starter && { starter }),
    picks: cableToPick([
      ...wired.map(({ row }) => row),
      ...(feeder && 'row' in feeder ? [feeder.row] : []),
    ]),
    budget,
    bank,
    seriesBanks: seriesBanksOf(build, shared.rows, wired),
    charging:
      'notComputed' in bank
        ? []
        : chargeFigures(build, budget, bank.chemistry, own.every(isAmong(start))),
    pumps: pumpsOf(build),
  };
}

const isAmong =
  (some: readonly Battery[]) =>
  ({ item }: Battery): boolean =>
    some.some((one) => one.item === item);

function panelOf({ items }: Build): ElectricsFigures['panel'] {
  const item = items.find(({ electrics }) => electrics?.panel !== undefined);
  const ways = item?.electrics?.panel?.ways;
  return item && ways !== undefined ? { item, ways } : undefined;
}

function feederOf(
  build: Build,
  sources: Sources,
  wired: readonly WiredCircuit[],
): FeederFigures | NotComputed | undefined {
  const circuit = feederCircuit(build, sources, wired);
  if (!circuit) return undefined;
  const { rows, refused } = planWiring([circuit], rulesOf(build));
  const [row] = rows;
  if (!row) return { notComputed: refused[0]?.reason ?? 'no feeder' };
  const { ampacity } = row.conductor;
  return {
    row: { ...row, label: 'M1', position: 0 },
    fuse: mainFuse(circuit.current, ampacity, false),
    sheathed: mainFuse(circuit.current, ampacity, true),
  };
}

function starterOf(build: Build, battery: BuildItem): StarterFigures | undefined {
  const { outboard, yard, items } = build;
  const cranking = outboard?.model.cranking;
  const engine = items.find(({ kind }) => kind === 'outboard');
  if (!outboard || cranking === undefined || !engine) return undefined;
  const run = runOf(battery.at, engine.at, decimalToNumber(yard.wiring.routing));
  const makers = outboard.model.starterCable;
  return {
    battery,
    run,
    cranking,
    cable: starterCable({
      cranking,
      run,
      nominalVolts: yard.wiring.volts,
      share: decimalToNumber(yard.wiring.starterDrop),
    }),
    ...(makers !== undefined && { makersMm2: makers * 1e6, makersAwg: gaugeFor(makers * 1e6) }),
  };
}

function pumpsOf({ items }: Build): readonly PumpFigures[] {
  return items.flatMap((item) => {
    const facts = item.electrics?.pump;
    if (!facts) return [];
    return [
      {
        item,
        delivers: bilgeFlow(facts.flow / LITRE_AN_HOUR, facts.highest, facts.head),
        ...(facts.wanted !== undefined && { wanted: facts.wanted / LITRE_AN_HOUR }),
      },
    ];
  });
}
