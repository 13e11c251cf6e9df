export { centreOf, sumMass } from './centre.ts';
export { edgeOf, leanOf, toSide } from './crew.ts';
export { growthOf } from './growth.ts';
export { FULL_TANK, massOf } from './loadings.ts';
export type * from './types.ts';
export { loadTanksFull, peopleWithin, weighBoat } from './weigh.ts';
