export { areaUnder, GAUSS_INSET, interpolate, lerp, type Points } from './interpolate.ts';
export { clamp, sum, wholeDown, wholeUp } from './numbers.ts';
export { findRoot, findSummit, type Root } from './search.ts';
export { solveSpd, type Symmetric, type Triple } from './solve-spd.ts';
