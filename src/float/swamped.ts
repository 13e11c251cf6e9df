import {
  cubicMetres,
  type CubicMetres,
  kilograms,
  type Kilograms,
  type KilogramsPerCubicMetre,
  type Metres,
} from '../units/index.ts';
import { HANDBOOK_FRESH_WATER, LONGEST_REGULATED, PERSONS_FIRST } from './constants.ts';

/** A part of the boat, when she is swamped. */
export interface SwampedPart {
  readonly name: string;
  readonly mass: Kilograms;
  readonly density: KilogramsPerCubicMetre;
  /** True when it lies below the swamped waterline. */
  readonly submerged: boolean;
  /** Share of its dry mass that it still weighs under water, when a rule gives one. */
  readonly weightShare?: number;
}

export interface HandbookInput {
  readonly length: Metres;
  readonly parts: readonly SwampedPart[];
  /** Engine swamped, controls, and battery submerged, from the rule's table. */
  readonly propulsion: Kilograms;
  readonly personsCapacity: Kilograms;
  /** Greatest weight capacity less the table's total for the rated power; nothing below 0 counts. */
  readonly capacityLessPropulsion: Kilograms;
  readonly foam: { readonly density: KilogramsPerCubicMetre; readonly fitted: CubicMetres };
}

export interface HandbookFlotation {
  /** False for boats of 20 ft and more, to which the rule does not apply. */
  readonly applies: boolean;
  readonly boat: CubicMetres;
  readonly propulsion: CubicMetres;
  readonly persons: CubicMetres;
  readonly total: CubicMetres;
  readonly stillNeeded: CubicMetres;
}

/**
 * Foam for level flotation by the handbook's method: estimated to 33 CFR 183 subpart G; verify by the swamping
 * test in fresh water.
 *
 * Boat (sum W K + Wd) / B, propulsion W / B, persons and gear (0.5 x the first 550 lb + 0.125 x the rest +
 * 0.25 x (capacity less propulsion - persons)) / B, with B = water - foam.
 *
 * @validity single-hulled outboard boats of more than 2 hp, shorter than 20 ft; a part lighter than water
 * counts as a credit
 * @source US Coast Guard Boatbuilder's Handbook, flotation, on 33 CFR 183.201 to 183.235; which weights count
 * for propulsion is from memory
 */
export function handbookFlotation(input: HandbookInput): HandbookFlotation {
  const { personsCapacity, capacityLessPropulsion, foam } = input;
  const lift = HANDBOOK_FRESH_WATER - foam.density;
  const boat = input.parts.reduce((sum, part) => sum + part.mass * weightShare(part), 0);
  const first = Math.min(personsCapacity, PERSONS_FIRST);
  const gear = Math.max(0, capacityLessPropulsion - personsCapacity);
  const persons = 0.5 * first + 0.125 * (personsCapacity - first) + 0.25 * gear;
  const total = (boat + input.propulsion + persons) / lift;
  return {
    applies: input.length < LONGEST_REGULATED,
    boat: cubicMetres(boat / lift),
    propulsion: cubicMetres(input.propulsion / lift),
    persons: cubicMetres(persons / lift),
    total: cubicMetres(total),
    stillNeeded: cubicMetres(Math.max(0, total - foam.fitted)),
  };
}

/** Handbook: K where it gives one; else (s - 1) / s with s the density over that of water; 1 above the water. */
function weightShare({ submerged, weightShare: given, density }: SwampedPart): number {
  if (!submerged) return 1;
  return given ?? (density - HANDBOOK_FRESH_WATER) / density;
}

export interface SwampedBalance {
  /** What everything weighs in the water, less what floats of itself. */
  readonly weight: Kilograms;
  /** What the foam lifts. */
  readonly lift: Kilograms;
  /** Lift less weight: below zero she sinks. */
  readonly reserve: Kilograms;
  readonly stillNeeded: CubicMetres;
}

/**
 * Whether the swamped boat stays afloat by buoyancy alone.
 *
 * @validity every submerged part wholly under water, the foam too; no account of how level she lies. An
 * estimate; verify by the swamping test
 * @source Archimedes' principle
 */
export function swampedBalance(
  parts: readonly SwampedPart[],
  foam: HandbookInput['foam'],
  water: KilogramsPerCubicMetre,
): SwampedBalance {
  const weight = parts.reduce(
    (sum, { mass, density, submerged }) => sum + (submerged ? mass * (1 - water / density) : mass),
    0,
  );
  const lift = foam.fitted * (water - foam.density);
  return {
    weight: kilograms(weight),
    lift: kilograms(lift),
    reserve: kilograms(lift - weight),
    stillNeeded: cubicMetres(Math.max(0, weight - lift) / (water - foam.density)),
  };
}
