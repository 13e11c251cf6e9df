export {
  alternativeOrder,
  removedByVariationInVain,
  removedInVain,
  variedOrder,
} from './alternatives.ts';
export type {
  Build,
  BuildCharge,
  BuildHours,
  BuildItem,
  BuildPackage,
  BuildPart,
  Exchange,
  ItemKind,
} from './build.ts';
export { checkCatalogue } from './check-catalogue.ts';
export { GROUPS } from './items.ts';
export { type Resolved, resolveOrder } from './resolve-order.ts';
