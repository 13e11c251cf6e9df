import { DEGREE } from '../units/index.ts';
import type { PlaningHull } from './types.ts';

interface Ranged {
  readonly hull: PlaningHull;
  readonly trim: number;
  readonly speedCoefficient: number;
  readonly wettedRatio: number;
  readonly wettedKeel: number;
  readonly wettedBeam: number;
}

/**
 * The ranges of Savitsky's method that a state is outside of.
 *
 * @returns one phrase for each; empty when all hold
 * @source Savitsky 1964, range of the lift equation: 0.60 <= Cv <= 13, 2° <= τ <= 15°, λ <= 4; wetted chine and keel: the prism
 * that the method stands for has both chines wetted and is no longer than the hull
 */
export function outsideRange(state: Ranged): readonly string[] {
  const degrees = state.trim / DEGREE;
  const checks: readonly (readonly [boolean, string])[] = [
    [state.speedCoefficient < 0.6, 'speed coefficient below 0.60'],
    [state.speedCoefficient > 13, 'speed coefficient above 13'],
    [degrees < 2, 'trim below 2°'],
    [degrees > 15, 'trim above 15°'],
    [state.wettedRatio > 4, 'wetted length more than 4 beams'],
    [state.wettedKeel > state.hull.length, 'wetted keel longer than the hull'],
    [state.wettedBeam < state.hull.beam, 'chines dry: computed on the wetted beam'],
  ];
  return checks.filter(([broken]) => broken).map(([, words]) => words);
}

/**
 * Why a planing method says nothing of a state; undefined when it does. Below 2° of trim it does, and `outsideRange`
 * says that it is outside: light, fast boats run there.
 *
 * @source Savitsky 1964 for λ and Cv <= 13; Cv >= 1.0 is the range of his mean bottom speed (from memory)
 */
export function refusal(state: Ranged): string | undefined {
  if (state.speedCoefficient > 13) return 'too fast for the method: a speed coefficient above 13';
  if (state.speedCoefficient < 1) return 'pre-planing: the speed coefficient is below 1.0';
  if (state.wettedKeel > state.hull.length)
    return 'pre-planing: more keel would be wet than there is';
  if (state.wettedRatio > 4) return 'pre-planing: the wetted length is more than 4 beams';
  return undefined;
}
