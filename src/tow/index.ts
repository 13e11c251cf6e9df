export { trailerLoad } from './trailer-load.ts';
export type { TrailerLoad, TrailerLoadInput } from './types.ts';
