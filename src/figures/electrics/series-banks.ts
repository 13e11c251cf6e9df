import { type EnergyBudget, energyBudget, type NotComputed } from '../../electrics/index.ts';
import type { Build } from '../../resolve/index.ts';
import { type BankFigures, bankFigures, type Battery } from './batteries.ts';
import type { WiredCircuit } from './circuits.ts';

/** Batteries that are joined in series for devices of a higher voltage, and feed nothing else. */
export interface SeriesBank {
  readonly volts: number;
  readonly budget: EnergyBudget;
  readonly bank: BankFigures | NotComputed;
}

/** Batteries in series for one voltage; `notComputed` where the order's batteries do not make it. */
interface SeriesRow {
  readonly volts: number;
  readonly row: Battery | NotComputed;
}

/** The house batteries, shared out: one row in series for each voltage above the boat's, the rest for the boat. */
interface SharedBatteries {
  readonly house: readonly Battery[];
  readonly rows: readonly SeriesRow[];
}

/**
 * Takes the batteries of each other voltage out of the house bank: as many in series as make it, all of one item.
 *
 * @param voltages - of everything that draws current
 */
export function shareBatteries(
  { yard }: Build,
  batteries: readonly Battery[],
  voltages: readonly number[],
): SharedBatteries {
  const nominal = yard.wiring.volts;
  const others = [...new Set(voltages)].filter((own) => own !== nominal);
  let house = batteries;
  const rows = others.map((volts): SeriesRow => {
    const taken = takeSeries(house, volts / nominal);
    if ('notComputed' in taken) return { volts, row: taken };
    house = taken.left;
    return { volts, row: taken.row };
  });
  return { house, rows };
}

/** The rows in series against what the circuits of their voltage draw in a day. */
export function seriesBanksOf(
  build: Build,
  rows: readonly SeriesRow[],
  circuits: readonly WiredCircuit[],
): readonly SeriesBank[] {
  return rows.map(({ volts, row }) => {
    const budget = budgetAt(circuits, volts);
    const bank = 'notComputed' in row ? row : bankFigures(build, [row], budget, row.count);
    return { volts, budget, bank };
  });
}

/** What the circuits of one voltage draw in a day. */
export function budgetAt(circuits: readonly WiredCircuit[], volts: number): EnergyBudget {
  return energyBudget(
    circuits.filter((one) => one.volts === volts).map(({ row }) => row.circuit),
    volts,
  );
}

function takeSeries(
  batteries: readonly Battery[],
  wanted: number,
): { readonly row: Battery; readonly left: readonly Battery[] } | NotComputed {
  if (!Number.isInteger(wanted)) {
    return { notComputed: 'batteries in series do not make this voltage' };
  }
  const from = batteries.find(
    ({ count, facts }) => facts.bank === 'house' && wanted > 1 && count >= wanted,
  );
  if (!from) return { notComputed: `it takes ${wanted} house batteries of one kind in series` };
  const left = batteries.flatMap((one) => {
    const count = one === from ? one.count - wanted : one.count;
    return count > 0 ? [{ ...one, count }] : [];
  });
  return { row: { ...from, count: wanted }, left };
}
