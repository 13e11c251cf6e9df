export {
  type BankChoice,
  type BatteryBank,
  CHEMISTRIES,
  type Chemistry,
  energyBudget,
  type EnergyBudget,
  hoursToCharge,
  hoursUntilFlat,
  sizeBank,
} from './battery.ts';
export {
  ampacityOf,
  areaOf,
  bundlingShare,
  conductorsFor,
  copperForDrop,
  voltsLost,
} from './conductor.ts';
export { bilgeFlow } from './pumps.ts';
export { gaugeFor, mainFuse, type MainFuse, starterCable, type StarterCable } from './starter.ts';
export type {
  Circuit,
  Conductor,
  DropClass,
  NotComputed,
  Purpose,
  WiringRow,
  WiringRules,
  WiringSchedule,
} from './types.ts';
export {
  ENGINE_SPACE_SHARE,
  type Insulation,
  METRIC_AREAS,
  PROTECTION_RATINGS,
  WIRE_SIZES,
  type WireSize,
} from './wire-table.ts';
export { cableRun, cableToPick, chooseFuse, planWiring } from './wiring.ts';
