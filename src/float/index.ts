export { buildHull, type BuiltHull } from './build-hull.ts';
export { compareDeclared } from './check-lines.ts';
export { type Hydrostatics, hydrostatics, momentToTrim } from './hydrostatics.ts';
export { type Immersed, immerse } from './immerse.ts';
export type * from './types.ts';
export { heightAbove } from './water-plane.ts';
