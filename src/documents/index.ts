export { type ChecksView, checksView } from './checks.ts';
export type { DocumentHead, PageHead } from './head.ts';
export type { Picture } from './picture.ts';
export { type QuoteOptions, quoteView } from './quote.ts';
export type { QuoteView } from './quote-types.ts';
export { type IndexView, indexView } from './yard-index.ts';
