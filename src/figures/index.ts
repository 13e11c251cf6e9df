export { computeFigures } from './compute-figures.ts';
export { figureAlternatives, type FiguredAlternative } from './figure-alternatives.ts';
export { type Change, type Differences, moneyChange, type ToldFacts } from './told-facts.ts';
export { type FiguredOrder, figureOrders } from './figure-orders.ts';
export type { FiguredVariation } from './figure-variations.ts';
export { allFacts, figuresData } from './facts/all-facts.ts';
export { type Fact, type FactKey, factsOf, isNotComputed } from './facts/fact.ts';
export type { Method } from './facts/method.ts';
export { type MethodId, METHODS, METHODS_BY_SUBJECT, type MethodSubject } from './facts/methods.ts';
export { type FigureDatum, toData } from './facts/to-data.ts';
export { conditionOf } from './float/conditions.ts';
export { defaultsUsed } from './hull-defaults.ts';
export type { CrewFigures, PeopleToSide } from './float/crew.ts';
export { movedFar, outcomeText, placeWords, remedyText } from './float/outcome.ts';
export { FULL_TANK } from '../mass/index.ts';
export type { Figures, Known } from './types.ts';
export { type PerformanceFacts, performanceFacts } from './performance/facts.ts';
export { towFacts } from './tow/facts.ts';
export type { Afloat, Ballast, FloatFigures, Move, Swamped } from './float/types.ts';
export { customerAlternative, customerFigures, customerVariation } from './customer/customer.ts';
export type {
  CustomerAlternative,
  CustomerBuild,
  CustomerElectrics,
  CustomerFigures,
  CustomerFinding,
  CustomerTrailer,
  CustomerVariation,
} from './customer/types.ts';
export { priceInput, priceRules, termsOf } from './price/input.ts';
export { type Priced, priceOn } from './price/price-on.ts';
export { priceOrder } from '../price/index.ts';
export type { DriveFigures, DriveLoading, EngineRow, SpeedBand } from './performance/speed.ts';
export { enginesOf } from './performance/speed.ts';
export { type FuelUse, reserveOf } from './performance/fuel-use.ts';
export type { LimitsFigures } from './limits/limits.ts';
export type { TowFigures, TrailerFigures } from './tow/tow.ts';
export type { BankFigures, ChargeFigures } from './electrics/batteries.ts';
export type { WiredCircuit } from './electrics/circuits.ts';
export type { ElectricsFigures, FeederFigures, StarterFigures } from './electrics/electrics.ts';
export type { SeriesBank } from './electrics/series-banks.ts';
export { type Gate, weighedAt, type WeighedStage } from './mass/gates.ts';
export type { InfusionFigures } from './laminate/infusion.ts';
export type { KitFigures, KitLine } from './laminate/kit.ts';
export type { LaminateFigures } from './laminate/shell.ts';
export type { BoatKitLine } from './laminate/boat-kit.ts';
export type { PartLayUp } from './laminate/parts.ts';
export type { MixingFigures } from './laminate/mixing.ts';
export type { WiringRow } from '../electrics/index.ts';
export { type InfusionPlan, judgeWeighing, MIXING_CAUTIONS } from '../laminate/index.ts';
