import { type EnergyBudget, energyBudget, type NotComputed } from '../electrics/index.ts';
import type { Build } from '../resolve/index.ts';
import { type BankFigures, bankFigures, type Battery } from './battery-figures.ts';
import type { WiredCircuit } from './circuits.ts';

/** Batteries that are joined in series for devices of a higher voltage, and feed nothing else. */
export interface SeriesBank {
  readonly volts: number;
  readonly budget: EnergyBudget;
  readonly bank: BankFigures | NotComputed;
}

/** The house batteries, shared out: one row in series for each voltage above the boat's, the rest for the boat. */
export interface SharedBatteries {
  readonly house: readonly Battery[];
  readonly series: readonly SeriesBank[];
}

/**
 * Takes the batteries of each higher voltage out of the house bank: as many in series as make it, all of one item.
 *
 * @returns `notComputed` in the bank of a voltage that the order's batteries do not make
 */
export function shareBatteries(
  build: Build,
  batteries: readonly Battery[],
  circuits: readonly WiredCircuit[],
): SharedBatteries {
  const nominal = build.yard.wiring.volts;
  const others = [...new Set(circuits.map(({ volts }) => volts))].filter((own) => own !== nominal);
  let house = batteries;
  const series = others.map((volts): SeriesBank => {
    const budget = budgetAt(circuits, volts);
    const taken = takeSeries(house, volts / nominal);
    if ('notComputed' in taken) return { volts, budget, bank: taken };
    house = taken.left;
    return { volts, budget, bank: bankFigures(build, [taken.row], budget, taken.row.count) };
  });
  return { house, series };
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
