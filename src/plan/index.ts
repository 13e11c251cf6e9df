export { type OrderState, type Overview, overviewOrders, type StatusTotal } from './overview.ts';
