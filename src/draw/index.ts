export { type ArrangementInput, drawArrangement } from './arrangement.ts';
export { toDataUri } from './svg.ts';
export type { Drawing, DrawnItem, HullShape, OutboardShape, Place, Station } from './types.ts';
