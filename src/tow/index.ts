export {
  BALL_SHARES,
  USUAL_SHARE,
  ballLoad,
  ballShareMargins,
  trailerLoad,
  winchPostFor,
} from './ball-load.ts';
export {
  brakeFaults,
  type BrakeInput,
  type BrakeNeed,
  brakesNeeded,
  type TrailerBrakes,
} from './brakes.ts';
export { BRAKE_LAWS, type BrakeLaw, type BrakeStep } from './brakes-table.ts';
export {
  ROAD_LENGTHS,
  ROAD_WIDTHS,
  roadLength,
  roadLengthMargin,
  roomMargins,
  roadWidth,
  type RunningGear,
  runningGearMargins,
  winchPostMargins,
} from './running-gear.ts';
export type * from './types.ts';
export {
  couplingForce,
  type RoofLoadInput,
  roofMargins,
  type VehicleLimits,
  vehicleMargins,
} from './vehicle.ts';
