import {
  DEGREE,
  GRAVITY,
  metres,
  metresPerSecond,
  newtons,
  type MetresPerSecond,
  type Radians,
  watts,
} from '../units/index.ts';
import { ROUGHNESS_ALLOWANCE } from './constants.ts';
import { addedDragAt, ittc57 } from './drag.ts';
import { outsideRange } from './range.ts';
import type { AddedDrag, Computed, PlaningHull, PlaningState, Water } from './types.ts';
import { type WettedBottom, wettedBottom, wettedLengths } from './wetted-bottom.ts';

export interface Running {
  readonly hull: PlaningHull;
  readonly water: Water;
  /** Taken to act along the line of thrust: they add drag and no moment. */
  readonly added?: readonly AddedDrag[];
}

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
 * @source Savitsky 1964, the computational procedure up to eq (35) (equation numbers from memory); Cf by
 * ITTC-57 in place of Schoenherr's line
 */
export function planeAt(
  { hull, water, added = [] }: Running,
  speed: MetresPerSecond,
  trim: Radians,
): Computed<PlaningState> {
  const fault = faultOf(hull, speed, trim);
  if (fault) return { notComputed: fault };
  const weight = hull.mass * GRAVITY;
  const liftArea = weight / (0.5 * water.density * speed ** 2);
  const bottom = wettedBottom(hull, liftArea, speed, trim);
  const { wettedRatio, speedCoefficient, lift, flatLift } = bottom;
  const rub = frictionOn(bottom, hull.deadrise, water, speed, trim);
  if (!rub) return { notComputed: 'so little of the bottom is wetted that there is no solution' };
  const wettedBeam = metres(bottom.beam);
  const pressed = pressureCentre(wettedRatio, speedCoefficient) * wettedRatio * wettedBeam;
  const bareDrag = weight * Math.tan(trim) + rub.frictionDrag / Math.cos(trim);
  const addedDrag = addedDragAt(added, speed, water);
  const wetted = wettedLengths(wettedRatio, wettedBeam, trim, hull.deadrise);
  const state: PlaningState = {
    speed,
    trim,
    speedCoefficient,
    lift,
    flatLift,
    wettedRatio,
    wettedBeam,
    ...wetted,
    ...rub,
    centreOfPressure: metres(pressed),
    moment: momentAt({ ...hull, beam: wettedBeam }, weight, trim, rub.frictionDrag, pressed),
    bareDrag: newtons(bareDrag),
    addedDrag,
    drag: newtons(bareDrag + addedDrag),
    effectivePower: watts((bareDrag + addedDrag) * speed),
    outside: outsideRange({ hull, trim, speedCoefficient, wettedRatio, wettedBeam, ...wetted }),
  };
  return isSound(state)
    ? state
    : { notComputed: 'the figures are too far from any boat for the method' };
}

const isSound = (state: PlaningState): boolean =>
  Object.values(state).every((value) => typeof value !== 'number' || Number.isFinite(value));

/** Friction along the bottom; undefined when the mean bottom speed has no solution. */
function frictionOn(
  { beam, wettedRatio }: WettedBottom,
  deadrise: number,
  water: Water,
  speed: number,
  trim: number,
) {
  const share = bottomSpeedShare(wettedRatio, trim, deadrise);
  if (share <= 0) return undefined;
  const bottomSpeed = metresPerSecond(speed * share);
  const reynolds = (bottomSpeed * wettedRatio * beam) / water.viscosity;
  const friction = ittc57(reynolds);
  const area = (wettedRatio * beam ** 2) / Math.cos(deadrise);
  const coefficient = friction + ROUGHNESS_ALLOWANCE;
  const frictionDrag = newtons(0.5 * water.density * bottomSpeed ** 2 * area * coefficient);
  return { bottomSpeed, reynolds, friction, frictionDrag };
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

/** V1/V; 0 or less when there is none. */
function bottomSpeedShare(wettedRatio: number, trim: number, deadrise: number): number {
  const flat = 0.012 * Math.sqrt(wettedRatio) * (trim / DEGREE) ** 1.1;
  const dynamic = flat - 0.0065 * (deadrise / DEGREE) * flat ** 0.6;
  const squared = 1 - dynamic / (wettedRatio * Math.cos(trim));
  return squared > 0 ? Math.sqrt(squared) : 0;
}

function pressureCentre(wettedRatio: number, speedCoefficient: number): number {
  return 0.75 - 1 / ((5.21 * speedCoefficient ** 2) / wettedRatio ** 2 + 2.39);
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
