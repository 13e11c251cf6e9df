import {
  cubicMetres,
  type CubicMetres,
  kilograms,
  type Kilograms,
  type KilogramsPerCubicMetre,
} from '../units/index.ts';

/** A part of the boat, or of what is in it, when it is swamped. */
export interface SwampedPart {
  readonly name: string;
  readonly mass: Kilograms;
  readonly density: KilogramsPerCubicMetre;
  /** True when it lies below the swamped waterline. */
  readonly submerged: boolean;
}

export interface SwampedBalance {
  /** What everything weighs in the water, less what floats of itself. */
  readonly weight: Kilograms;
  /** What the foam lifts. */
  readonly lift: Kilograms;
  /** Lift less weight: below zero it sinks. */
  readonly reserve: Kilograms;
  readonly stillNeeded: CubicMetres;
}

/**
 * What a part weighs when it is swamped, kg; below zero when it lifts.
 *
 * @param density - of part and water, kg/m3, above 0
 * @source Archimedes' principle
 */
export function weightSwamped(
  { mass, density, submerged }: SwampedPart,
  water: KilogramsPerCubicMetre,
): Kilograms {
  return submerged ? kilograms(mass * (1 - water / density)) : mass;
}

/**
 * Whether the swamped boat stays afloat by buoyancy alone.
 *
 * @param foam - buoyancy foam beside the parts
 * @validity every submerged part wholly under water, the foam too; no account of how level it lies. An
 * estimate; verify by the swamping test
 * @source Archimedes' principle
 */
export function swampedBalance(
  parts: readonly SwampedPart[],
  foam: { readonly density: KilogramsPerCubicMetre; readonly fitted: CubicMetres },
  water: KilogramsPerCubicMetre,
): SwampedBalance {
  const weight = parts.reduce((sum, part) => sum + weightSwamped(part, water), 0);
  const lift = foam.fitted * (water - foam.density);
  return {
    weight: kilograms(weight),
    lift: kilograms(lift),
    reserve: kilograms(lift - weight),
    stillNeeded: cubicMetres(Math.max(0, weight - lift) / (water - foam.density)),
  };
}
