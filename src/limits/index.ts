export { australianPeople, australianPlateFacts } from './australian-plate.ts';
export { type Governing, governingLimit } from './governing.ts';
export {
  CATEGORIES,
  type Category,
  downfloodingNeeded,
  offsetHeelAllowed,
  screenCategories,
  type ScreenInput,
  type Screening,
} from './category.ts';
export {
  type Flotation,
  type FlotationInput,
  type FlotationPart,
  type FlotationTerms,
  HANDBOOK_WATER,
  levelFlotation,
  peopleAndGear,
  SUBMERGED_SHARE,
  submergedShare,
} from './cfr-183-flotation.ts';
export { outsideLaw, POWER_STEPS, type PowerCapacity, powerCapacity } from './cfr-183-power.ts';
export {
  peopleFor,
  personsCapacity,
  type PersonsCapacity,
  weightCapacity,
} from './cfr-183-weight.ts';
export {
  type EngineFit,
  type EngineFitInput,
  fitEngine,
  SHAFT_HEIGHTS,
  type ShaftLength,
  sternFreeboard,
  trimByEngine,
} from './engine-fit.ts';
export { EFFECTS, isoLoad, type IsoLoad, type IsoLoadInput, isoPeople } from './iso-load.ts';
export { isoPower, type IsoPower } from './iso-power.ts';
export { type MethodId, rateBoat, type Rating } from './methods.ts';
export { motorWeights } from './motor-weight.ts';
export { MOTOR_WEIGHTS, type MotorRow } from './motor-weight-table.ts';
export { PLATE_CAUTION, plateFacts } from './plate.ts';
export type * from './types.ts';
