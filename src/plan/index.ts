export { type CalendarSettings, createCalendar, type WorkCalendar } from './calendar.ts';
export { planOrderOf, practiceOf, type ShopPractice } from './from-figures.ts';
export {
  type OrderState,
  type Overview,
  overviewOrders,
  priceOf,
  type StatusTotal,
} from './overview.ts';
export { NO_SUPPLIER, openNeedsOf, partNeedsOf } from './part-needs.ts';
export { isDue, planFindings } from './plan-findings.ts';
export { type DatePromise, planOrders, promiseAfter } from './plan-orders.ts';
export {
  type PartNeed,
  type PurchaseLine,
  purchaseList,
  type SupplierList,
} from './purchase-list.ts';
export { type ShelfLine, takeFromShelf } from './shelf.ts';
export {
  type Offer,
  type OrderDays,
  planShop,
  type ShopPlan,
  type StageDays,
} from './shop-plan.ts';
export { planWithShelf } from './with-shelf.ts';
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
export { waitsFor } from './wait-words.ts';
