export type { Build, BuildCharge, BuildHours, BuildItem, BuildPart, ItemKind } from './build.ts';
export { checkCatalogue } from './check-catalogue.ts';
export { GROUPS } from './items.ts';
export { type Resolved, resolveOrder } from './resolve-order.ts';
