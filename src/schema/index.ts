export * from './catalogue.ts';
export { emitJsonSchemas } from './emit.ts';
export { type Field, type FileFields, listFields } from './list-fields.ts';
export type { IssueParams } from './fields.ts';
export { descriptionOf, innerSchema, mayBeLeftOut, type Schema } from './walk.ts';
export * from './engine-trailer-charge.ts';
export * from './hull.ts';
export type { Architecture, LayUpProcess } from './fibre.ts';
export * from './materials.ts';
export type { PartLaminate } from './part-laminate.ts';
export * from './option.ts';
export { type BatteryFacts, type CircuitFacts, circuitSchema } from './option-electrics.ts';
export * from './order.ts';
export * from './part.ts';
export * from './yard.ts';
export {
  DRIVERS,
  type Driver,
  type Position,
  type Share,
  type Stage,
  STAGES,
  type WaterUse,
} from './shared.ts';
