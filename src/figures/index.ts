export { computeFigures, priceBuild } from './compute-figures.ts';
export { type FiguredOrder, figureOrders } from './figure-orders.ts';
export { type FigureDatum, figuresData } from './figures-data.ts';
export type { Figures } from './types.ts';
