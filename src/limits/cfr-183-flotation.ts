import { type CubicMetres, cubicMetres, type Kilograms } from '../units/index.ts';
import { motorWeights } from './motor-weight.ts';
import { FOOT, inPounds, ofPounds } from './pounds.ts';
import type { Computed } from './types.ts';

/** Weight under water over weight in air, as the Coast Guard Boatbuilder's Handbook gives it. */
export const SUBMERGED_SHARE = { fibreglass: 0.33, aluminium: 0.63, ABS: 0.11 } as const;

/**
 * Weight under fresh water over weight in air, K = (SG - 1)/SG; below zero for what floats, which is then a credit.
 *
 * @param gravity - SG, specific gravity, above 0
 * @source derived: Archimedes
 */
export const submergedShare = (gravity: number): number => (gravity - 1) / gravity;

/** A part of the boat when she lies swamped. */
export interface SwampedPart {
  readonly name: string;
  readonly mass: Kilograms;
  /** Weight under water over weight in air; 1 for what stays above it. */
  readonly share: number;
}

export interface FlotationInput {
  readonly parts: readonly SwampedPart[];
  /** Rated horsepower, above 2. */
  readonly horsepower: number;
  readonly personsCapacity: Kilograms;
  readonly weightCapacity: Kilograms;
  /** Of the buoyant foam. */
  readonly foamDensity: number;
}

export interface Flotation {
  /** What the foam has to carry, each in kilograms of lift. */
  readonly boat: Kilograms;
  readonly propulsion: Kilograms;
  readonly people: Kilograms;
  readonly total: Kilograms;
  readonly foam: CubicMetres;
  readonly caution: string;
}

const WATER = 62.4;

/**
 * Foam for level flotation of a swamped outboard boat.
 *
 * Boat: Σ weight x share under water. Propulsion: swamped motor, controls, submerged battery. People and gear: half of
 * the first 550 lb of persons capacity, an eighth of the rest, a quarter of what weight capacity is left besides. Foam:
 * the sum over (62.4 - its density) lb/ft³.
 *
 * @param foamDensity - kg/m³
 * @returns `notComputed` for foam as heavy as water or a motor that is in no table
 * @validity monohull outboard boats shorter than 20 ft, above 2 hp; an amount only: where the foam lies decides
 * whether she floats level
 * @source 33 CFR 183.201 to 183.235 by the method of the Coast Guard Boatbuilder's Handbook, flotation, steps 1 to 3;
 * the columns for propulsion from memory
 */
export function levelFlotation(input: FlotationInput): Computed<Flotation> {
  const motor = motorWeights(input.horsepower);
  if ('notComputed' in motor) return motor;
  const lift = WATER - inPoundsPerCubicFoot(input.foamDensity);
  if (!(lift > 0)) return { notComputed: 'the foam is as heavy as water' };
  const boat = input.parts.reduce((sum, { mass, share }) => sum + inPounds(mass) * share, 0);
  const propulsion = motor.swamped + motor.controls + motor.batterySubmerged;
  const people = peopleAndGear(
    inPounds(input.personsCapacity),
    inPounds(input.weightCapacity) - motor.total,
  );
  const total = boat + propulsion + people;
  return {
    boat: ofPounds(boat),
    propulsion: ofPounds(propulsion),
    people: ofPounds(people),
    total: ofPounds(total),
    foam: cubicMetres((total / lift) * FOOT ** 3),
    caution:
      'estimated to the Boatbuilder’s Handbook’s method for 33 CFR 183 subpart G; verify by a swamping test',
  };
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

const inPoundsPerCubicFoot = (density: number): number => density / (ofPounds(1) / FOOT ** 3);
