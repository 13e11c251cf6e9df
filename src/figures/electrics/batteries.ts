import {
  CHEMISTRIES,
  type Chemistry,
  type EnergyBudget,
  hoursToCharge,
  hoursUntilFlat,
  type NotComputed,
  sizeBank,
} from '../../electrics/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import type { BatteryFacts } from '../../schema/index.ts';
import { amperes, type Amperes, decimalToNumber, HOUR } from '../../units/index.ts';

/** The batteries that the circuits live on. */
export interface BankFigures {
  readonly items: readonly BuildItem[];
  readonly batteries: number;
  readonly chemistry: Chemistry;
  /** All together at the bank's voltage, Ah. */
  readonly rated: number;
  readonly usable: number;
  /** Batteries like these that the yard's days without charging call for. */
  readonly wanted: number | NotComputed;
  readonly daysOfAutonomy: number | NotComputed;
  /** While everything draws at once. */
  readonly hoursAtPeak: number | NotComputed;
}

/** What puts a day's use back. */
export interface ChargeFigures {
  readonly name: string;
  readonly source: 'shore' | 'engine' | 'sun';
  readonly current: Amperes;
  readonly hours: number | NotComputed;
  /** What it gives in a day, Ah, when its hours are known. */
  readonly aDay?: number;
}

/** Like batteries of an order: all of an item, or those of it that are in one bank. */
export interface Battery {
  readonly item: BuildItem;
  readonly facts: BatteryFacts;
  readonly count: number;
}

/** Batteries of the order, those of the house bank or, without one, the starting ones. */
export function batteriesOf({ items }: Build): {
  readonly house: readonly Battery[];
  readonly start: readonly Battery[];
} {
  const all = items.flatMap((item) => {
    const facts = item.electrics?.battery;
    return facts ? [{ item, facts, count: item.quantity }] : [];
  });
  const of = (bank: BatteryFacts['bank']) => all.filter(({ facts }) => facts.bank === bank);
  const [house, start] = [of('house'), of('start')];
  if (house.length === 0) return { house: start, start };
  return { house, start: start.length > 0 ? start : house };
}

/**
 * The bank against a daily budget; `notComputed` for batteries that must not be joined.
 *
 * @param series - how many batteries in series make the voltage of the budget
 */
export function bankFigures(
  build: Build,
  batteries: readonly Battery[],
  budget: EnergyBudget,
  series = 1,
): BankFigures | NotComputed {
  const [first] = batteries;
  if (!first) return { notComputed: 'the order has no battery' };
  const { chemistry, capacity } = first.facts;
  if (batteries.some(({ facts }) => facts.chemistry !== chemistry)) {
    return { notComputed: 'batteries of different chemistry must not be one bank' };
  }
  const facts = CHEMISTRIES[chemistry];
  const rated =
    batteries.reduce((sum, one) => sum + (one.facts.capacity / HOUR) * one.count, 0) / series;
  const usable = rated * facts.usable;
  const size = sizeBank({
    dailyAmpereHours: budget.ampereHours,
    days: decimalToNumber(build.yard.wiring.days),
    usable: facts.usable,
    batteryAmpereHours: capacity / HOUR,
  });
  const bank = {
    ratedAmpereHours: rated,
    ratingHours: decimalToNumber(first.facts.ratingHours),
    peukert: facts.peukert,
  };
  const flat = hoursUntilFlat(bank, budget.peak);
  return {
    items: batteries.map(({ item }) => item),
    batteries: batteries.reduce((sum, { count }) => sum + count, 0),
    chemistry,
    rated,
    usable,
    wanted: 'notComputed' in size ? size : size.batteries * series,
    daysOfAutonomy:
      budget.ampereHours > 0
        ? usable / budget.ampereHours
        : { notComputed: 'nothing draws from the bank' },
    hoursAtPeak: typeof flat === 'number' ? flat * facts.usable : flat,
  };
}

/**
 * The sources that put a day's use back into the bank, each by itself.
 *
 * @param fromStart - true: the bank is that of the engine, which charges it
 */
export function chargeFigures(
  build: Build,
  { ampereHours }: EnergyBudget,
  chemistry: Chemistry,
  fromStart: boolean,
): readonly ChargeFigures[] {
  const { efficiency } = CHEMISTRIES[chemistry];
  const alternator = build.outboard?.model.current;
  const chargers = build.items.flatMap(({ name, quantity, electrics }) => {
    const facts = electrics?.charger;
    if (!facts) return [];
    const whole = facts.current * quantity;
    const limit = facts.source === 'engine' ? (alternator ?? 0) : Number.POSITIVE_INFINITY;
    const current = amperes(Math.min(whole, limit));
    return [{ name, source: facts.source, current, hoursADay: facts.hoursADay }];
  });
  const outboard =
    alternator !== undefined && fromStart && !chargers.some((one) => one.source === 'engine')
      ? [{ name: 'Outboard', source: 'engine', current: alternator, hoursADay: undefined } as const]
      : [];
  return [...chargers, ...outboard].map(({ name, source, current, hoursADay }) => ({
    name,
    source,
    current,
    hours: hoursToCharge({ used: ampereHours, charging: current, drawn: amperes(0), efficiency }),
    ...(hoursADay && { aDay: current * decimalToNumber(hoursADay) * efficiency }),
  }));
}
