export { costOrder } from './cost-order.ts';
export { loadedRate } from './labour.ts';
export { sellingPrice } from './margin.ts';
export { priceOrder } from './price-order.ts';
export type * from './result-types.ts';
export { type MarginThen, sensitivity, type Sensitivity, type WhatIf } from './sensitivity.ts';
export type * from './types.ts';
