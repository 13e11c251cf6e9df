import {
  type CubicMetres,
  cubicMetres,
  FOOT,
  type Kilograms,
  type KilogramsPerCubicMetre,
  kilogramsPerCubicMetre,
  type Metres,
} from '../units/index.ts';
import { motorWeights } from './motor-weight.ts';
import { inPounds, ofPounds, TWENTY_FEET } from './us-units.ts';
import type { Computed } from './types.ts';

/** Weight under water over weight in air, as the Coast Guard Boatbuilder's Handbook gives it. */
export const SUBMERGED_SHARE = { fibreglass: 0.33, aluminium: 0.63, ABS: 0.11 } as const;

const WATER = 62.4;

/** Fresh water as the Handbook has it, 62.4 lb/ft³. */
export const HANDBOOK_WATER = kilogramsPerCubicMetre(ofPounds(WATER) / FOOT ** 3);

/**
 * Weight under fresh water over weight in air, K = (SG - 1)/SG; below zero for what floats, which is then a credit.
 *
 * @param gravity - SG, specific gravity, above 0
 * @source derived: Archimedes
 */
export const submergedShare = (gravity: number): number => (gravity - 1) / gravity;

/** A part of the boat when it lies swamped. */
export interface FlotationPart {
  readonly name: string;
  readonly mass: Kilograms;
  /** Weight under water over weight in air; 1 for what stays above it. */
  readonly share: number;
}

export interface FlotationInput {
  readonly length: Metres;
  readonly parts: readonly FlotationPart[];
  /** Rated horsepower, above 2. */
  readonly horsepower: number;
  /** True where the transom is 20 in or lower. */
  readonly lowTransom?: boolean;
  readonly personsCapacity: Kilograms;
  readonly weightCapacity: Kilograms;
  /** Buoyant foam, as fitted. */
  readonly foam: { readonly density: KilogramsPerCubicMetre; readonly fitted: CubicMetres };
}

/** What has to be carried, term by term. */
export interface FlotationTerms<Amount> {
  readonly boat: Amount;
  readonly propulsion: Amount;
  readonly people: Amount;
  readonly total: Amount;
}

export interface Flotation {
  /** False for boats of 20 ft and more, which the law does not ask it of. */
  readonly applies: boolean;
  /** In kilograms of lift. */
  readonly lift: FlotationTerms<Kilograms>;
  /** In foam that lifts as much. */
  readonly foam: FlotationTerms<CubicMetres>;
  readonly stillNeeded: CubicMetres;
  readonly caution: string;
}

/**
 * Foam for level flotation of a swamped outboard boat.
 *
 * Boat: Σ weight x share under water. Propulsion: swamped motor, controls, submerged battery. People and gear: half of
 * the first 550 lb of persons capacity, an eighth of the rest, a quarter of what weight capacity is left besides. Foam:
 * the sum over (62.4 - its density) lb/ft³.
 *
 * @returns `notComputed` for foam as heavy as water or a motor that is in no table
 * @validity monohull outboard boats shorter than 20 ft, above 2 hp; an amount only: where the foam lies decides
 * whether it floats level
 * @source 33 CFR 183.201 to 183.235 by the method of the Coast Guard Boatbuilder's Handbook, flotation, steps 1 to 3;
 * the columns for propulsion from memory
 */
export function levelFlotation(input: FlotationInput): Computed<Flotation> {
  const { foam, parts, personsCapacity, weightCapacity } = input;
  const motor = motorWeights(input.horsepower, input.lowTransom);
  if ('notComputed' in motor) return motor;
  const liftOfFoam = HANDBOOK_WATER - foam.density;
  if (!(liftOfFoam > 0)) return { notComputed: 'the foam is as heavy as water' };
  const boat = parts.reduce((sum, { mass, share }) => sum + inPounds(mass) * share, 0);
  const propulsion = motor.swamped + motor.controls + motor.batterySubmerged;
  const people = peopleAndGear(inPounds(personsCapacity), inPounds(weightCapacity) - motor.total);
  const total = boat + propulsion + people;
  const volume = (pounds: number): CubicMetres => cubicMetres(ofPounds(pounds) / liftOfFoam);
  return {
    applies: input.length < TWENTY_FEET,
    lift: termsOf({ boat, propulsion, people, total }, ofPounds),
    foam: termsOf({ boat, propulsion, people, total }, volume),
    stillNeeded: cubicMetres(Math.max(0, volume(total) - foam.fitted)),
    caution:
      'estimated to the Boatbuilder’s Handbook’s method for 33 CFR 183 subpart G; verify by a swamping test',
  };
}

function termsOf<Amount>(
  { boat, propulsion, people, total }: FlotationTerms<number>,
  of: (pounds: number) => Amount,
): FlotationTerms<Amount> {
  return { boat: of(boat), propulsion: of(propulsion), people: of(people), total: of(total) };
}

/**
 * Pounds of lift for people and gear.
 *
 * @param persons - persons capacity, lb
 * @param leftForAll - weight capacity less the motor's table total, lb
 * @source Coast Guard Boatbuilder's Handbook, flotation, step 3
 */
export function peopleAndGear(persons: number, leftForAll: number): number {
  const first = 0.5 * Math.min(persons, 550);
  const rest = 0.125 * Math.max(persons - 550, 0);
  return first + rest + 0.25 * Math.max(leftForAll - persons, 0);
}
