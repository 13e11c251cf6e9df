import type { Yard } from '../../schema/index.ts';
import { inEdition } from '../../words/index.ts';

/** What the head of every page says: for the tab of a browser, a screen reader and a PDF's properties. */
export interface PageHead {
  readonly title: string;
  /** BCP 47 tag of the language and region that the page is written in. */
  readonly lang: string;
  /** One sentence: what the page is about. */
  readonly subject: string;
  /** The shop's name. */
  readonly author: string;
  /** What the shop calls the final price; left out: what its place calls it. */
  readonly finalPrice?: string | undefined;
}

/** The head of a page of a shop. */
export const pageHead = (
  { shop, locale, finalPrice }: Pick<Yard, 'shop' | 'locale' | 'finalPrice'>,
  title: string,
  subject: string,
): PageHead => ({
  title,
  lang: locale,
  // A PDF takes it from here, not from the page.
  subject: inEdition(subject, { locale, finalPrice }),
  author: shop.name,
  finalPrice,
});

/** What the head of a printed document says as well. */
export interface DocumentHead extends PageHead {
  /** Top right of every sheet but the first: the order's number and the boat. */
  readonly runningHead: string;
  /** Bottom left of every sheet: which document of which date. */
  readonly reference: string;
  /** File name of the printed document, beside the page; empty where none is made. */
  readonly pdf: string;
}

/** `quote-DC-2608-r2.pdf`: a name that says what it is wherever it is mailed to. */
export function pdfName(document: string, number: string, revision?: number): string {
  return `${document}-${number}${revision === undefined ? '' : `-r${revision}`}.pdf`;
}
