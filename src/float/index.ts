export { type BallastEffect, ballastEffect, type BallastState } from './ballast.ts';
export { buildHull, type BuiltHull } from './hull/build-hull.ts';
export { standsOut } from './hull/fits.ts';
export { compareDeclared } from './hull/check-lines.ts';
export {
  type Condition,
  type ConditionName,
  CONDITIONS,
  type ConditionsInput,
  floatConditions,
} from './conditions.ts';
export {
  type DrainInput,
  drainTime,
  type FillInput,
  fillTime,
  type FlowTime,
  type SurfaceAreas,
} from './drain.ts';
export { type Equilibrium, findEquilibrium } from './equilibrium.ts';
export { type FloatingState, stateOf } from './floating-state.ts';
export { felt, type FreeSurface, freeSurfaceMoment } from './free-surface.ts';
export { type Freeboard, type Freeboards, freeboards, lowestOf } from './freeboard.ts';
export { type GrowthInput, type GrowthLimit, type GrowthMargin, growthUntil } from './growth.ts';
export { type Hydrostatics, hydrostatics, momentToTrim } from './hydrostatics.ts';
export { capacityOf, type Immersed, immerse } from './immerse.ts';
export { type LinesSpread, linesSpread } from './lines-spread.ts';
export { type MetacentricHeight, metacentricHeight } from './metacentric-height.ts';
export { armAt, type RightingArm, type RightingCurve, rightingCurve } from './righting-curve.ts';
export type { FloatRemedy } from './remedy.ts';
export { type SwampedBalance, swampedBalance, type SwampedPart, weightSwamped } from './swamped.ts';
export { clash, sideBySide, type Size, type Space, standsIn } from './space.ts';
export { endsOf } from './ends.ts';
export { endArea, surfaceAreas, tankForm, type TankSpace } from './hull/tank-form.ts';
export {
  type BestPlace,
  bestPlace,
  type BestPlaceInput,
  type NamedMass,
  type Place,
  type PlaceTried,
  trimEffects,
  type TrimEffect,
} from './trim-effects.ts';
export type * from './types.ts';
export { heightAbove } from './water-plane.ts';
export { type PointMass, withMasses } from './with-masses.ts';
