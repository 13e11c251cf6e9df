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
export { FULL_TANK } from '../float/index.ts';
export type { FigureDatum, Figures } from './types.ts';
export type { Afloat, Ballast, FloatFigures, Move, Swamped } from './float-types.ts';
export { type Priced, priceOn } from './price-on.ts';
export { moneyDatum } from './price-data.ts';
export { peopleByLoad } from './people-by-load.ts';
export type { DriveFigures, DriveLoading, EngineRow, SpeedBand } from './drive-figures.ts';
export { type FuelUse, reserveOf } from './fuel-use.ts';
export type { LimitsFigures } from './limits-figures.ts';
export type { TowFigures, TrailerFigures } from './tow-figures.ts';
export type { BankFigures, ChargeFigures } from './battery-figures.ts';
export type { WiredCircuit } from './circuits.ts';
export type { ElectricsFigures, FeederFigures, StarterFigures } from './electrics-figures.ts';
export type { SeriesBank } from './series-banks.ts';
export { type Gate, weighedAt, type WeighedStage } from './gate-figures.ts';
export type { InfusionFigures } from './infusion-figures.ts';
export type { KitFigures, KitLine } from './kit-figures.ts';
export type { LaminateFigures } from './laminate-figures.ts';
export type { BoatKitLine } from './boat-kit.ts';
export type { PartLayUp } from './part-laminate.ts';
export type { MixingFigures } from './mixing-figures.ts';
export { ELECTRICS_BASIS, type WiringRow } from '../electrics/index.ts';
export {
  type InfusionPlan,
  judgeWeighing,
  LAMINATE_BASIS,
  MIXING_CAUTIONS,
} from '../laminate/index.ts';
