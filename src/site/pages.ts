import type { PageHead } from '../documents/index.ts';

export type TemplateName = 'letter' | 'quote-before-forms' | 'build-sheet' | 'page' | 'fields';

/** One page to be made: templates see `view` and nothing else. */
export interface Page {
  /** Where it will stand in the site: `customer/2026-031/quote.html`. */
  readonly url: string;
  readonly template: TemplateName;
  readonly view: { readonly document: PageHead };
}

export interface RenderedPage {
  readonly url: string;
  readonly html: string;
}
