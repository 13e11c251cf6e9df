import { wholeUp } from '../maths/index.ts';
import { type Amperes, amperes } from '../units/index.ts';
import type { Circuit, NotComputed } from './types.ts';

export type Chemistry = 'flooded' | 'agm' | 'lifepo4';

interface ChemistryFacts {
  /** Share of the rated capacity that may be used and the battery still last. */
  readonly usable: number;
  /** Peukert's exponent. */
  readonly peukert: number;
  /** Charge that comes out over charge that goes in. */
  readonly efficiency: number;
}

/** Usual values, from memory; the maker's data sheet goes before them. */
export const CHEMISTRIES: Readonly<Record<Chemistry, ChemistryFacts>> = {
  flooded: { usable: 0.5, peukert: 1.25, efficiency: 0.8 },
  agm: { usable: 0.5, peukert: 1.1, efficiency: 0.85 },
  lifepo4: { usable: 0.8, peukert: 1.05, efficiency: 0.98 },
};

/** A bank as its label says: so many ampere-hours when emptied in so many hours. */
export interface BatteryBank {
  readonly ratedAmpereHours: number;
  /** The hours of the rating: 20 for most, 100 or 5 for some. */
  readonly ratingHours: number;
  readonly peukert: number;
}

/**
 * Hours until the bank is flat at a steady current, t = H (C / (I H))^k.
 *
 * @param current - I, A, above 0
 * @returns t, h; `notComputed` for a current of 0
 * @validity steady current, 25 C, new battery; k from 1 to 1.6
 * @source Peukert (1897), written with the rating's own hours H
 */
export function hoursUntilFlat(
  { ratedAmpereHours, ratingHours, peukert }: BatteryBank,
  current: Amperes,
): number | NotComputed {
  if (!(current > 0)) return { notComputed: 'nothing uses this bank' };
  return ratingHours * (ratedAmpereHours / (current * ratingHours)) ** peukert;
}

/** What the circuits take in a day. */
export interface EnergyBudget {
  readonly ampereHours: number;
  readonly wattHours: number;
  /** Current while every circuit draws. */
  readonly peak: Amperes;
  readonly average: Amperes;
}

/**
 * The daily energy budget: current times hours, summed over the circuits.
 *
 * @returns Ah, Wh and A
 * @source derived
 */
export function energyBudget(
  circuits: readonly Pick<Circuit, 'current' | 'hoursADay'>[],
  nominalVolts: number,
): EnergyBudget {
  const ampereHours = circuits.reduce((sum, one) => sum + one.current * one.hoursADay, 0);
  return {
    ampereHours,
    wattHours: ampereHours * nominalVolts,
    peak: amperes(circuits.reduce((sum, { current }) => sum + current, 0)),
    average: amperes(ampereHours / 24),
  };
}

/** A bank made of like batteries in parallel. */
export interface BankChoice {
  readonly batteries: number;
  readonly ratedAmpereHours: number;
  readonly usableAmpereHours: number;
  /** Days that the usable share lasts at the daily budget, no charging. */
  readonly daysOfAutonomy: number;
  readonly hoursOfAutonomy: number;
}

/**
 * How many batteries carry a daily budget for some days without charging.
 *
 * @param usable - share of the rating that may be used, 0 to 1, not 0
 * @source derived; the usable share is the chemistry's (common practice). The gentle currents of a daily budget are
 * near the rating's own, so Peukert's loss is left out here
 */
export function sizeBank(choice: {
  readonly dailyAmpereHours: number;
  readonly days: number;
  readonly usable: number;
  readonly batteryAmpereHours: number;
}): BankChoice | NotComputed {
  const { dailyAmpereHours, days, usable, batteryAmpereHours } = choice;
  if (!(dailyAmpereHours > 0 && days > 0 && usable > 0 && batteryAmpereHours > 0)) {
    return { notComputed: 'budget, days, usable share and battery must be above 0' };
  }
  const batteries = wholeUp((dailyAmpereHours * days) / (usable * batteryAmpereHours));
  const ratedAmpereHours = batteries * batteryAmpereHours;
  const usableAmpereHours = ratedAmpereHours * usable;
  const daysOfAutonomy = usableAmpereHours / dailyAmpereHours;
  return {
    batteries,
    ratedAmpereHours,
    usableAmpereHours,
    daysOfAutonomy,
    hoursOfAutonomy: daysOfAutonomy * 24,
  };
}

/**
 * Hours to put back what was used.
 *
 * @param used - Ah taken out
 * @param charging - sum of the sources' currents at once, A
 * @param drawn - what the boat draws meanwhile, A
 * @param efficiency - charge out over charge in, 0 to 1
 * @returns h; `notComputed` when the sources do not outrun the draw
 * @validity the bulk of the charge; the last tenth of a lead battery takes hours more
 * @source derived
 */
export function hoursToCharge(charge: {
  readonly used: number;
  readonly charging: Amperes;
  readonly drawn: Amperes;
  readonly efficiency: number;
}): number | NotComputed {
  const into = charge.charging - charge.drawn;
  if (!(into > 0 && charge.efficiency > 0)) {
    return { notComputed: 'the sources do not give more than the boat uses' };
  }
  return charge.used / (into * charge.efficiency);
}
