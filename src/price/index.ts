export { priceOrder, sellingPrice } from './price-order.ts';
export type { PaymentShare, Price, PriceInput, PriceItem, PriceLine, PriceRules } from './types.ts';
