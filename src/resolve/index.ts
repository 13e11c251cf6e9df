export {
  alternativeOrder,
  unmatchedRemovals,
  unmatchedVariationRemovals,
  variedOrder,
} from './alternatives.ts';
export type {
  Build,
  BuildTrailer,
  BuildCharge,
  BuildHours,
  BuildItem,
  BuildPackage,
  BuildPart,
  Exchange,
  ItemLayUp,
  ItemKind,
} from './build.ts';
export { allowanceOf, isWhole, toFetch } from './allowance.ts';
export { checkCatalogue } from './check-catalogue.ts';
export type { FloatFacts } from './float-facts.ts';
export { GROUPS } from './items.ts';
export { type Resolved, resolveOrder } from './resolve-order.ts';
export { driverFactor, outboardCentre, placeInHull } from './hull-coordinates.ts';
export { stageOfPart, stagesOf } from './stage-of-part.ts';
