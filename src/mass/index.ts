export { type GrowthAllowance, growthOf } from './growth.ts';
export type { MassGroup, MassInput, MassItem, MassResult, WeightedCentre } from './types.ts';
export { centreOf, weighBoat } from './weigh.ts';
