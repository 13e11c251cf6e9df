import {
  metres,
  metresPerSecond,
  newtons,
  type Metres,
  type MetresPerSecond,
  type Radians,
  watts,
} from '../units/index.ts';
import { addedDragAt } from './added-drag.ts';
import { solveRising } from './solve.ts';
import { GRAVITY, ROUGHNESS_ALLOWANCE } from './constants.ts';
import { ittc57 } from './friction.ts';
import { outsideRange } from './range.ts';
import type { AddedDrag, Computed, PlaningHull, PlaningState, Water } from './types.ts';

export interface Running {
  readonly hull: PlaningHull;
  readonly water: Water;
  /** Taken to act along the line of thrust: they add drag and no moment. */
  readonly added?: readonly AddedDrag[];
}

const inDegrees = (angle: number): number => (angle * 180) / Math.PI;

/**
 * A planing hull at a given speed and trim, by all equations of Savitsky's method.
 *
 * Symbols: V speed, b chine beam, τ trim, β deadrise, λ mean wetted length / b, ρ and ν of the water, W weight.
 * Cv = V/√(g b); CLβ = W/(½ρV²b²) = CL0 - 0.0065 β CL0^0.6; CL0 = τ^1.1 (0.0120 λ^0.5 + 0.0055 λ^2.5/Cv²);
 * V1 = V √(1 - CLd/(λ cos τ)) with CLd the dynamic part of the lift; Df = ½ρV1² λ b² (Cf + ΔCf)/cos β;
 * D = W tan τ + Df/cos τ; Cp = 0.75 - 1/(5.21 Cv²/λ² + 2.39); τ and β in degrees in CL0, CLβ, CLd.
 *
 * @returns the state, with every range of the method that it is outside of named in `outside`; `notComputed` when
 * the method has no solution there
 * @validity 0.60 <= Cv <= 13, 2° <= τ <= 15°, λ <= 4; prismatic hull, calm water; no air, spray or appendage drag
 * but what `added` names
 * @source Savitsky 1964, eqs (10), (15), (16), (22) to (35); Cf by ITTC-57 in place of Schoenherr's line
 */
export function planeAt(
  { hull, water, added = [] }: Running,
  speed: MetresPerSecond,
  trim: Radians,
): Computed<PlaningState> {
  const fault = faultOf(hull, speed, trim);
  if (fault) return { notComputed: fault };
  const { deadrise } = hull;
  const weight = hull.mass * GRAVITY;
  const { beam, speedCoefficient, lift, flatLift, wettedRatio } = bottomOf(
    hull,
    weight / (0.5 * water.density * speed ** 2),
    speed,
    trim,
  );
  const share = bottomSpeedShare(wettedRatio, trim, deadrise);
  if (share <= 0) {
    return { notComputed: 'so little of the bottom is wetted that the method has no solution' };
  }
  const bottomSpeed = speed * share;
  const reynolds = (bottomSpeed * wettedRatio * beam) / water.viscosity;
  const friction = ittc57(reynolds);
  const frictionDrag =
    (water.density *
      bottomSpeed ** 2 *
      wettedRatio *
      beam ** 2 *
      (friction + ROUGHNESS_ALLOWANCE)) /
    (2 * Math.cos(deadrise));
  const centreOfPressure = pressureCentre(wettedRatio, speedCoefficient) * wettedRatio * beam;
  const bareDrag = weight * Math.tan(trim) + frictionDrag / Math.cos(trim);
  const addedDrag = addedDragAt(added, speed, water);
  const wetted = wettedLengths(wettedRatio, beam, trim, deadrise);
  return {
    speed,
    trim,
    speedCoefficient,
    lift,
    flatLift,
    wettedRatio,
    wettedBeam: metres(beam),
    ...wetted,
    bottomSpeed: metresPerSecond(bottomSpeed),
    reynolds,
    friction,
    frictionDrag: newtons(frictionDrag),
    centreOfPressure: metres(centreOfPressure),
    moment: momentAt({ ...hull, beam: metres(beam) }, weight, trim, frictionDrag, centreOfPressure),
    bareDrag: newtons(bareDrag),
    addedDrag,
    drag: newtons(bareDrag + addedDrag),
    effectivePower: watts((bareDrag + addedDrag) * speed),
    outside: outsideRange({
      hull,
      trim,
      speedCoefficient,
      wettedRatio,
      wettedBeam: metres(beam),
      ...wetted,
    }),
  };
}

function faultOf(hull: PlaningHull, speed: number, trim: number): string | undefined {
  const positive = [hull.mass, hull.beam, hull.length, speed, trim];
  if (!positive.every((value) => Number.isFinite(value) && value > 0)) {
    return 'mass, beam, length, speed and trim must be numbers above zero';
  }
  if (!(hull.deadrise >= 0 && hull.deadrise < Math.PI / 3)) {
    return 'the deadrise must be from 0° to less than 60°';
  }
  const places = [hull.centre.x, hull.centre.z, hull.thrust.x, hull.thrust.z, hull.thrust.angle];
  return places.every(Number.isFinite) ? undefined : 'a place is not a number';
}

interface Bottom {
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
 */
function bottomOf(
  { beam, deadrise }: PlaningHull,
  liftArea: number,
  speed: number,
  trim: number,
): Bottom {
  const degrees = inDegrees(deadrise);
  const speedCoefficient = speed / Math.sqrt(GRAVITY * beam);
  const lift = liftArea / beam ** 2;
  const flatLift = flatLiftOf(lift, degrees);
  const wettedRatio = wettedRatioOf(flatLift, inDegrees(trim), speedCoefficient);
  const dryBelow = Math.tan(deadrise) / (2 * Math.PI * Math.tan(trim));
  if (wettedRatio >= dryBelow) return { beam, speedCoefficient, lift, flatLift, wettedRatio };
  const flatLiftAt = (wetted: number): number =>
    inDegrees(trim) ** 1.1 *
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

/** V1/V; 0 or less when there is none. */
function bottomSpeedShare(wettedRatio: number, trim: number, deadrise: number): number {
  const flat = 0.012 * Math.sqrt(wettedRatio) * inDegrees(trim) ** 1.1;
  const dynamic = flat - 0.0065 * inDegrees(deadrise) * flat ** 0.6;
  const squared = 1 - dynamic / (wettedRatio * Math.cos(trim));
  return squared > 0 ? Math.sqrt(squared) : 0;
}

function pressureCentre(wettedRatio: number, speedCoefficient: number): number {
  return 0.75 - 1 / ((5.21 * speedCoefficient ** 2) / wettedRatio ** 2 + 2.39);
}

/** Lk - Lc = b tan β / (π tan τ), shared half and half about the mean. */
function wettedLengths(
  ratio: number,
  beam: number,
  trim: number,
  deadrise: number,
): { readonly wettedKeel: Metres; readonly wettedChine: Metres } {
  const half = (beam * Math.tan(deadrise)) / (2 * Math.PI * Math.tan(trim));
  return { wettedKeel: metres(ratio * beam + half), wettedChine: metres(ratio * beam - half) };
}

/** Left side of eq (35): W [(1 - sin τ sin(τ + ε)) c / cos τ - f sin τ] + Df (a - f). */
function momentAt(
  { beam, deadrise, centre, thrust }: PlaningHull,
  weight: number,
  trim: number,
  frictionDrag: number,
  centreOfPressure: number,
): number {
  const arm = centre.x - centreOfPressure;
  const frictionArm = centre.z - (beam / 4) * Math.tan(deadrise);
  const thrustArm =
    (centre.z - thrust.z) * Math.cos(thrust.angle) - (centre.x - thrust.x) * Math.sin(thrust.angle);
  const tilted = 1 - Math.sin(trim) * Math.sin(trim + thrust.angle);
  return (
    weight * ((tilted * arm) / Math.cos(trim) - thrustArm * Math.sin(trim)) +
    frictionDrag * (frictionArm - thrustArm)
  );
}
