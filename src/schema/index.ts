export * from './catalogue.ts';
export { emitJsonSchemas } from './emit.ts';
export type { IssueParams } from './fields.ts';
export * from './engine-trailer-charge.ts';
export * from './hull.ts';
export * from './materials.ts';
export * from './option.ts';
export {
  type BatteryFacts,
  type CircuitFacts,
  circuitSchema,
} from './option-electrics.ts';
export * from './order.ts';
export * from './part.ts';
export * from './yard.ts';
export { DRIVERS, type Driver, type Position, type Share, type Stage, STAGES } from './shared.ts';
