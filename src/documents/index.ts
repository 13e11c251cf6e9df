export {
  type BuildSheetOptions,
  type BuildSheetView,
  buildSheetView,
} from './build-sheet/build-sheet.ts';
export { checksView } from './yard/checks.ts';
export { methodsView } from './yard/methods-page.ts';
export { handoverView } from './handover/handover.ts';
export { type FieldsView, fieldsView } from './yard/fields-page.ts';
export { type DocumentHead, type PageHead, pdfName } from './sections/head.ts';
export { orderPageView } from './order-page/order-page.ts';
export type { Picture } from './sections/picture.ts';
export { planPageView } from './yard/plan-page.ts';
export { purchasesCsv, purchasesView } from './yard/purchases.ts';
export { notToBeSent } from './sections/not-to-be-sent.ts';
export { type QuoteOptions, quoteView } from './quote/quote.ts';
export { drawBoat } from './sections/boat-drawing.ts';
export { deliveryOf } from './quote/glance.ts';
export { type IndexLinks, indexView } from './yard/yard-index.ts';
export { variationsView } from './variations/variations.ts';
export { isKeptQuote, type KeptQuote, type Letter } from './blocks/letter.ts';
export type { Link, Part } from './blocks/block.ts';
export type { YardPage } from './blocks/page.ts';
