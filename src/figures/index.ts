export { computeFigures, priceBuild } from './compute-figures.ts';
export {
  type Differences,
  figureAlternatives,
  type FiguredAlternative,
} from './figure-alternatives.ts';
export { type FiguredOrder, figureOrders } from './figure-orders.ts';
export type { FiguredVariation } from './figure-variations.ts';
export { figuresData } from './figures-data.ts';
export { conditionOf } from './float-conditions.ts';
export type { Afloat, Ballast, FloatFigures, Move, Swamped } from './float-types.ts';
export type { FigureDatum, Figures } from './types.ts';
export { peopleByLoad } from './people-by-load.ts';
export type { DriveFigures, DriveLoading, EngineRow, SpeedBand } from './drive-figures.ts';
export { type FuelUse, reserveOf } from './fuel-use.ts';
export type { LimitsFigures } from './limits-figures.ts';
export type { TowFigures, TrailerFigures } from './tow-figures.ts';
