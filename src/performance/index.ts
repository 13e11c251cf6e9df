export { bottomFrom } from './bottom.ts';
export {
  type ElectricMotor,
  type Holding,
  type HoldingForce,
  holdingForce,
  type HoldingTime,
  holdingTime,
} from './bow-motor.ts';
export { FRESH_WATER, OUTBOARD_THRUST, ROUGHNESS_ALLOWANCE, SEA_WATER } from './constants.ts';
export { CROUCH_CONSTANTS, crouchConstant, type CrouchHull, crouchSpeed } from './crouch.ts';
export { findHump, type Hump } from './curve.ts';
export { addedDragAt, ittc57 } from './drag.ts';
export { climbOf, type Climb, fastestOn, joinedCurve, type SlowEstimate } from './climb.ts';
export { planingStates, runAt } from './equilibrium.ts';
export type { HullAtRest } from './pre-planing.ts';
export { type Burning, FOUR_STROKE, fuelFlow, fuelRange, THIRDS_RESERVE } from './fuel.ts';
export { porpoisingTrim } from './porpoising.ts';
export { type Gearing, pitchBand, type PitchChoice, pitchFor } from './propeller.ts';
export { planeAt, type Running } from './savitsky.ts';
export { type Driven, OUTBOARD_EFFICIENCY, type SpeedEstimate, speedFor } from './speed.ts';
export type * from './types.ts';
export { windageFrom } from './windage.ts';
