import { wholeDown } from '../maths/index.ts';
import type { Kilograms } from '../units/index.ts';
import { outsideLaw } from './cfr-183-power.ts';
import { motorWeights } from './motor-weight.ts';
import { inPounds, ofPounds } from './us-units.ts';
import type { Computed, RatedBoat } from './types.ts';

export interface PersonsCapacity {
  readonly mass: Kilograms;
  readonly people: number;
  /** True when it is below 550 lb: the law then asks for a test with weights along one side. */
  readonly needsSideTest: boolean;
}

/** Pounds below which 183.41(a)(2) asks for the test. */
const SIDE_TEST_BELOW = 550;

/**
 * Greatest weight that may be marked: people, motor, gear and portable fuel.
 *
 * Outboards: a fifth of the maximum displacement less the boat's weight, which counts full permanent tanks. Boats for
 * motors of 2 hp or less: three tenths of it.
 *
 * @param horsepower - marked on the boat
 * @returns `notComputed` for boats that the law does not cover, or that do not carry themselves
 * @validity monohull outboard boats shorter than 20 ft; fresh water
 * @source 33 CFR 183.35; for 2 hp or less 183.37 (three tenths: from memory)
 */
export function weightCapacity(boat: RatedBoat, horsepower: number): Computed<Kilograms> {
  const why = outsideLaw(boat.hull);
  if (why) return { notComputed: why };
  if (!(horsepower > 0)) return { notComputed: 'the boat is marked for no power' };
  const spare =
    inPounds(boat.greatestDisplacement) - inPounds(boat.light) - inPounds(boat.fixedFuel);
  if (!(spare > 0)) return { notComputed: 'the boat weighs as much as it can displace, or more' };
  return ofPounds(horsepower > 2 ? spare / 5 : spare * 0.3);
}

/**
 * Persons capacity, in mass and in number.
 *
 * Above 2 hp: the weight capacity less the motor's table total; where that is below 550 lb and a side test was made,
 * the lesser of it and test weight / 0.6. To 2 hp: 90 % of the weight capacity, less 25 lb. People: (lb + 32)/141,
 * half rounded up.
 *
 * @returns `notComputed` when nothing is left for people
 * @validity as `weightCapacity`; one motor
 * @source 33 CFR 183.41 and 183.43; the motor's total as the Coast Guard Boatbuilder's Handbook counts it
 */
export function personsCapacity(boat: RatedBoat, horsepower: number): Computed<PersonsCapacity> {
  const weight = weightCapacity(boat, horsepower);
  if (typeof weight === 'object') return weight;
  const byWeight = poundsForPeople(inPounds(weight), horsepower);
  if (typeof byWeight === 'object') return byWeight;
  if (byWeight <= 0) return { notComputed: 'motor, battery and fuel use up the weight capacity' };
  const needsSideTest = horsepower > 2 && byWeight < SIDE_TEST_BELOW - 1e-9;
  const byTest =
    needsSideTest && boat.sideTest !== undefined
      ? inPounds(boat.sideTest) / 0.6
      : Number.POSITIVE_INFINITY;
  const pounds = Math.min(byWeight, byTest);
  return { mass: ofPounds(pounds), people: peopleFor(pounds), needsSideTest };
}

function poundsForPeople(weight: number, horsepower: number): Computed<number> {
  if (horsepower <= 2) return 0.9 * weight - 25;
  const motor = motorWeights(horsepower);
  return 'notComputed' in motor ? motor : weight - motor.total;
}

/**
 * Number of people for a persons capacity in pounds: (lb + 32)/141, to the nearest whole number, half up.
 *
 * @source 33 CFR 183.41(b), 183.43(b) and (c)
 */
export function peopleFor(pounds: number): number {
  return wholeDown((pounds + 32) / 141 + 0.5);
}
