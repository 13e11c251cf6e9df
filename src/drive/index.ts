export { runAt } from './equilibrium.ts';
export { ittc57 } from './friction.ts';
export { planeAt, type Running } from './savitsky.ts';
export { FRESH_WATER, SEA_WATER } from './constants.ts';
export type * from './types.ts';
