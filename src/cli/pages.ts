import {
  checksView,
  type DocumentHead,
  fieldsView,
  type IndexLinks,
  type Link,
  type KeptQuote,
  indexView,
  methodsView,
  orderPageView,
  pdfName,
  planPageView,
  purchasesCsv,
  purchasesView,
} from '../documents/index.ts';
import type { Figures } from '../figures/index.ts';
import { checkAcceptance, standingQuote } from '../issued/index.ts';
import type { LedgerLine } from '../read/index.ts';
import type { Yard } from '../schema/index.ts';
import { drawingFontCss, type Page, type RenderedPage, renderPages } from '../site/index.ts';
import type { IsoDate } from '../units/index.ts';
import { orderChecks, runChecks } from '../verify/index.ts';
import type { LoadedWorkspace } from './load.ts';
import { type DocumentPage, type DocumentPlace, plannedDocuments } from './order-documents.ts';

/** A rendered page that is printed too. */
export interface RenderedDocument extends RenderedPage {
  /** Where its PDF will stand in the site. */
  readonly pdf: string;
  readonly head: DocumentHead;
  /** The day that both dates of the PDF say: the order's own, so that the same order is the same file. */
  readonly date: IsoDate;
}

/** A quote that was issued: its page and its PDF are those that were sealed, byte for byte. */
export interface SealedDocument extends DocumentPlace {
  readonly pdf: string;
  readonly line: LedgerLine;
}

interface RenderedSite {
  /** Every page that is made, the documents among them. */
  readonly pages: readonly RenderedPage[];
  readonly documents: readonly RenderedDocument[];
  readonly sealed: readonly SealedDocument[];
  /** The orders that documents were made of. */
  readonly figures: readonly Figures[];
  /** Files of data that stand beside the pages. */
  readonly data: readonly { readonly url: string; readonly text: string }[];
}

interface SiteOptions {
  /** True when PDFs are made too, so that there is something to link to. */
  readonly pdf: boolean;
  /** Documents of this order only; the pages of the yard always speak of all. */
  readonly only?: string;
}

/** Renders the documents of the orders wanted and the pages of the yard, in memory. */
export async function renderSite(
  loaded: LoadedWorkspace,
  { pdf, only }: SiteOptions,
): Promise<RenderedSite> {
  const isWanted = (number: string): boolean => only === undefined || number === only;
  const sealed = sealedDocuments(loaded);
  const copied = sealed.filter(({ number }) => isWanted(number));
  if (!loaded.catalogue) return { pages: [], documents: [], sealed: copied, figures: [], data: [] };
  const planned = loaded.orders.flatMap((entry) => plannedDocuments(entry, loaded));
  const documents = planned
    .filter(({ number }) => isWanted(number))
    .map(({ view, ...page }): DocumentPage => ({ ...page, view: view() }));
  const yardFacts = loaded.catalogue.yard.value;
  const links = linksOf([...sealed, ...planned], pdf);
  const yard = yardPages(loaded, yardFacts, links, isWanted);
  const pages = await renderPages([...documents, ...yard]);
  const byUrl = new Map(documents.map((page) => [page.url, page]));
  return {
    pages,
    documents: pages.flatMap(({ url, html }) => {
      const page = byUrl.get(url);
      return page?.pdf === undefined
        ? []
        : [{ url, html, pdf: page.pdf, head: page.view.document, date: page.date }];
    }),
    sealed: copied,
    figures: loaded.orders.flatMap(({ order, figures }) =>
      figures && isWanted(order.value.number) ? [figures] : [],
    ),
    data: [{ url: 'yard/purchases.csv', text: purchasesCsv(acrossOrders(loaded, yardFacts)) }],
  };
}

/** Quotes as pages of their own, for whoever seals them. */
export async function renderQuotes<T extends { readonly view: KeptQuote; readonly date: IsoDate }>(
  quotes: readonly T[],
): Promise<readonly (T & RenderedDocument)[]> {
  const pages = quotes.map((quote, index) => {
    const head = quote.view.document;
    const template = quote.view.parts ? 'letter' : 'quote-before-forms';
    const page = { url: `${index}/quote.html`, template } as const;
    return { ...quote, ...page, pdf: head.pdf, head };
  });
  const rendered = new Map((await renderPages(pages)).map(({ url, html }) => [url, html]));
  return pages.map((page) => ({ ...page, html: rendered.get(page.url) ?? '' }));
}

/** What the pages across all orders are made of. */
function acrossOrders({ plan, overview }: LoadedWorkspace, yard: Yard) {
  return { plan: plan ?? { notComputed: 'there is no catalogue' }, overview, yard };
}

/** The quotes that count, each of an order of which nothing is in doubt. */
function sealedDocuments({ read, issued, ledger }: LoadedWorkspace): readonly SealedDocument[] {
  return [...issued].flatMap(([number, quotes]): readonly SealedDocument[] => {
    const order = read.get(number);
    if (order && checkAcceptance(order, quotes).length > 0) return [];
    const quote = order ? standingQuote(order.value, quotes) : quotes.at(-1);
    const line = ledger.lines.find(
      (one) => one.number === number && one.revision === quote?.revision,
    );
    if (!line) return [];
    const folder = `customer/${number}`;
    const pdf = `${folder}/${pdfName('quote', number, line.revision)}`;
    return [
      { line, number, name: `Quote, revision ${line.revision}`, url: `${folder}/quote.html`, pdf },
    ];
  });
}

/** For the yard's index: the documents of each order, seen from its folder. */
function linksOf(places: readonly DocumentPlace[], withPdf: boolean): IndexLinks {
  const links = new Map<string, Link[]>();
  const fromYard = (url: string): string => (url.startsWith('yard/') ? url.slice(5) : `../${url}`);
  for (const { number, name: text, url, pdf } of places) {
    const own = links.get(number) ?? [];
    own.push({ text, page: fromYard(url) });
    if (withPdf && pdf !== undefined)
      own.push({ text: 'PDF', page: fromYard(pdf), label: `${text} of ${number} as PDF` });
    links.set(number, own);
  }
  return links;
}

function yardPages(
  loaded: LoadedWorkspace,
  yard: Yard,
  links: IndexLinks,
  isWanted: (number: string) => boolean,
): readonly Page[] {
  const checks = [...runChecks(), ...orderChecks(loaded.orders)];
  const index = indexView({
    ...acrossOrders(loaded, yard),
    fontCss: drawingFontCss(),
    findings: loaded.findings,
    sources: loaded.sources,
    unread: loaded.brokenOrders.map(({ file }) => file),
    documents: links,
  });
  return [
    { url: 'yard/index.html', template: 'page', view: index },
    ...loaded.overview.orders.flatMap((state) => {
      const { number } = state.entry.order.value;
      const view = isWanted(number) ? orderPageView(state, drawingFontCss()) : undefined;
      return view ? [{ url: `yard/${number}/order.html`, template: 'page', view } as const] : [];
    }),
    {
      url: 'yard/plan.html',
      template: 'page',
      view: planPageView({ ...acrossOrders(loaded, yard), fontCss: drawingFontCss() }),
    },
    {
      url: 'yard/purchases.html',
      template: 'page',
      view: purchasesView(acrossOrders(loaded, yard)),
    },
    { url: 'yard/checks.html', template: 'page', view: checksView(checks, yard) },
    { url: 'yard/fields.html', template: 'fields', view: fieldsView(yard) },
    { url: 'yard/methods.html', template: 'page', view: methodsView(yard) },
  ];
}
