export { type CalendarSettings, createCalendar, type WorkCalendar } from './calendar.ts';
export { partNeedsOf, planOrderOf, type ShopPractice } from './from-figures.ts';
export { type OrderState, type Overview, overviewOrders, type StatusTotal } from './overview.ts';
export { type DatePromise, planOrders, promiseDate } from './plan-orders.ts';
export {
  type PartNeed,
  type PurchaseLine,
  purchaseList,
  type SupplierList,
} from './purchase-list.ts';
export type {
  MouldHold,
  Plan,
  PlanInput,
  PlannedOrder,
  PlannedStage,
  PlanOrder,
  PlanStage,
  Wait,
} from './types.ts';
