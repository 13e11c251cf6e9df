import { type Kilograms, kilograms } from '../units/index.ts';

/** What a stage adds to the boat, and how sure that is. */
export interface StageMass {
  readonly stage: string;
  readonly mass: Kilograms;
  /** Share by which what is added may differ: laminate by hand 0.1, infused 0.05, bought parts 0.02. */
  readonly spread: number;
}

export interface WeighGate {
  readonly stage: string;
  readonly expected: Kilograms;
  readonly tolerance: Kilograms;
  readonly least: Kilograms;
  readonly most: Kilograms;
}

/**
 * What the boat must weigh after each stage, and how far off it may be: spreads of the stages, independent of one
 * another, and of the scale make one tolerance by the root of the sum of squares.
 *
 * @param scale - how exactly the scale weighs
 * @returns one gate a stage, in order; the last expects the whole mass
 * @source derived; the spreads are common practice, no source
 */
export function weighGates(stages: readonly StageMass[], scale: Kilograms): readonly WeighGate[] {
  let expected = 0;
  let squares = scale ** 2;
  return stages.map(({ stage, mass, spread }) => {
    expected += mass;
    squares += (mass * spread) ** 2;
    const tolerance = Math.sqrt(squares);
    return {
      stage,
      expected: kilograms(expected),
      tolerance: kilograms(tolerance),
      least: kilograms(expected - tolerance),
      most: kilograms(expected + tolerance),
    };
  });
}

/** What to make of a weighing. */
export interface Weighing {
  readonly verdict: 'within' | 'light' | 'heavy';
  /** Measured less expected. */
  readonly difference: Kilograms;
  readonly todo: string;
}

const TODO: Readonly<Record<Weighing['verdict'], string>> = {
  within: 'Sign and go on.',
  light: 'Look for a missing layer, a dry area or a part not yet fitted before going on.',
  heavy: 'Look for resin pools and extra layers; tell whoever answers for the load rating.',
};

/**
 * Judges a measured mass at a gate; the limits themselves still pass.
 *
 * @source common practice, no source
 */
export function judgeWeighing(gate: WeighGate, measured: Kilograms): Weighing {
  const verdict = measured < gate.least ? 'light' : measured > gate.most ? 'heavy' : 'within';
  return { verdict, difference: kilograms(measured - gate.expected), todo: TODO[verdict] };
}
