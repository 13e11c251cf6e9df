import { findRoot } from '../maths/index.ts';
import { DEGREE, GRAVITY, type Metres, metres } from '../units/index.ts';
import type { PlaningHull } from './types.ts';

export interface WettedBottom {
  /** The chine beam, or less where the chines are dry. */
  readonly beam: number;
  readonly speedCoefficient: number;
  readonly lift: number;
  readonly flatLift: number;
  readonly wettedRatio: number;
}

/**
 * What of the bottom is wetted at a trim. Where the chines would run dry the beam is the widest that is still wetted:
 * the prism whose chines are just reached by the water carries the weight.
 *
 * @param liftArea - W / (½ρV²), m²
 * @source Savitsky 1964, his lift equations solved for CL0 and λ; the wetted beam of dry chines is derived: the widest
 * at which the wetted chine is not below zero
 */
export function wettedBottom(
  { beam, deadrise }: PlaningHull,
  liftArea: number,
  speed: number,
  trim: number,
): WettedBottom {
  const degrees = deadrise / DEGREE;
  const speedCoefficient = speed / Math.sqrt(GRAVITY * beam);
  const lift = liftArea / beam ** 2;
  const flatLift = flatLiftOf(lift, degrees);
  const wettedRatio = wettedRatioOf(flatLift, trim / DEGREE, speedCoefficient);
  const dryBelow = Math.tan(deadrise) / (2 * Math.PI * Math.tan(trim));
  if (wettedRatio >= dryBelow) return { beam, speedCoefficient, lift, flatLift, wettedRatio };
  const flatLiftAt = (wetted: number): number =>
    (trim / DEGREE) ** 1.1 *
    (0.012 * Math.sqrt(dryBelow) + (0.0055 * dryBelow ** 2.5 * GRAVITY * wetted) / speed ** 2);
  const wetted = solveRising(
    (width) => {
      const flat = flatLiftAt(width);
      return (flat - 0.0065 * degrees * flat ** 0.6) * width ** 2;
    },
    liftArea,
    0,
  );
  return {
    beam: wetted,
    speedCoefficient: speed / Math.sqrt(GRAVITY * wetted),
    lift: liftArea / wetted ** 2,
    flatLift: flatLiftAt(wetted),
    wettedRatio: dryBelow,
  };
}

/** CL0 from CLβ: the larger of the two roots, the one that goes with lift (the smaller is spurious). */
function flatLiftOf(lift: number, deadrise: number): number {
  const turning = (0.0039 * deadrise) ** 2.5;
  return solveRising((flat) => flat - 0.0065 * deadrise * flat ** 0.6, lift, turning);
}

function wettedRatioOf(flatLift: number, trim: number, speedCoefficient: number): number {
  return solveRising(
    (ratio) => 0.012 * Math.sqrt(ratio) + (0.0055 * ratio ** 2.5) / speedCoefficient ** 2,
    flatLift / trim ** 1.1,
    0,
  );
}

/** The argument from `low` on at which a function that rises without end reaches a value; NaN when it is not found. */
function solveRising(at: (arg: number) => number, value: number, low: number): number {
  const off = (arg: number): number => at(arg) - value;
  let [from, below] = [low, off(low)];
  if (below >= 0) return low;
  let to = Math.max(1, 2 * low);
  let above = off(to);
  for (let step = 0; step < 60 && above < 0; step += 1) {
    [from, below] = [to, above];
    to *= 2;
    above = off(to);
  }
  const close = { within: 1e-13 * (to - from), close: 1e-14 };
  const root = findRoot(off, [from, below], [to, above], close);
  return root.outcome === 'found' ? root.at : Number.NaN;
}

/**
 * Wetted lengths of keel and chine: Lk - Lc = b tan β / (π tan τ), shared half and half about the mean.
 *
 * @source Savitsky 1964, wetted lengths of a prism
 */
export function wettedLengths(
  ratio: number,
  beam: number,
  trim: number,
  deadrise: number,
): { readonly wettedKeel: Metres; readonly wettedChine: Metres } {
  const half = (beam * Math.tan(deadrise)) / (2 * Math.PI * Math.tan(trim));
  return { wettedKeel: metres(ratio * beam + half), wettedChine: metres(ratio * beam - half) };
}
