import {
  buildSheetView,
  checksView,
  type DocumentHead,
  handoverView,
  indexView,
  isQuoteView,
  orderPageView,
  planPageView,
  purchasesCsv,
  purchasesView,
  type QuoteView,
  quoteView,
} from '../documents/index.ts';
import type { Figures } from '../figures/index.ts';
import type { IssuedQuote } from '../issued/index.ts';
import type { Yard } from '../schema/index.ts';
import { drawingFontCss, type Page, type RenderedPage, renderPages } from '../site/index.ts';
import type { IsoDate } from '../units/index.ts';
import { runChecks } from '../verify/index.ts';
import type { LoadedWorkspace } from './load.ts';

/** A rendered page that is printed too. */
export interface RenderedDocument extends RenderedPage {
  readonly head: DocumentHead;
  /** The day that both dates of the PDF say: the order's own, so that the same order is the same file. */
  readonly date: IsoDate;
}

export interface RenderedSite {
  /** Every page, the documents among them. */
  readonly pages: readonly RenderedPage[];
  readonly documents: readonly RenderedDocument[];
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
  if (!loaded.catalogue) return { pages: [], documents: [], figures: [], data: [] };
  const isWanted = (number: string): boolean => only === undefined || number === only;
  const figures = loaded.orders.flatMap(({ order, figures: computed }) =>
    computed && isWanted(order.value.number) ? [computed] : [],
  );
  const sent = [...loaded.issued.values()].flatMap((revisions) => revisions.at(-1) ?? []);
  const documents = [
    ...sent.filter(({ number }) => isWanted(number)).flatMap(issuedPage),
    ...figures.flatMap((one) => documentPages(one, loaded)),
  ];
  const yardFacts = loaded.catalogue.yard.value;
  const yard = yardPages(loaded, yardFacts, { pdf, isWanted });
  const pages = await renderPages([...documents, ...yard]);
  const byUrl = new Map(documents.map((page) => [page.url, page]));
  return {
    pages,
    documents: pages.flatMap(({ url, html }) => {
      const page = byUrl.get(url);
      return page ? [{ url, html, head: page.view.document, date: page.date }] : [];
    }),
    figures,
    data: [{ url: 'yard/purchases.csv', text: purchasesCsv(acrossOrders(loaded, yardFacts)) }],
  };
}

/** What the pages across all orders are made of. */
function acrossOrders({ plan, overview }: LoadedWorkspace, yard: Yard) {
  return { plan: plan ?? { notComputed: 'there is no catalogue' }, overview, yard };
}

interface DocumentPage extends Page {
  readonly view: { readonly document: DocumentHead };
  readonly date: IsoDate;
}

function documentPages(
  figures: Figures,
  { issued: sent, overview }: LoadedWorkspace,
): readonly DocumentPage[] {
  const { number, dates } = figures.build.order;
  const issued = sent.has(number);
  const planned = overview.orders.find(({ entry }) => entry.figures === figures)?.planned;
  const drawing = { fontCss: drawingFontCss() };
  const date = dates.quoted ?? dates.enquiry;
  return [
    ...(issued ? [] : [quotePage(number, quoteView(figures, drawing), date)]),
    {
      url: `yard/${number}/build-sheet.html`,
      template: 'build-sheet',
      view: buildSheetView(figures, {
        ...drawing,
        ...(planned && { planned: { asOf: overview.today, stages: planned.stages } }),
      }),
      date,
    },
    {
      url: `customer/${number}/handover.html`,
      template: 'handover',
      view: handoverView(figures, drawing),
      date,
    },
  ];
}

/** The quote as it was sent, whatever the order and the catalogue say today. */
function issuedPage({ number, view, issuedOn }: IssuedQuote): readonly DocumentPage[] {
  return isQuoteView(view) ? [quotePage(number, view, issuedOn)] : [];
}

function quotePage(number: string, view: QuoteView, date: IsoDate): DocumentPage {
  return { url: `customer/${number}/quote.html`, template: 'quote', view, date };
}

function yardPages(
  loaded: LoadedWorkspace,
  yard: Yard,
  { pdf, isWanted }: { readonly pdf: boolean; readonly isWanted: (number: string) => boolean },
): readonly Page[] {
  const index = indexView({
    overview: loaded.overview,
    yard,
    findings: loaded.findings,
    sources: loaded.sources,
    unread: loaded.brokenOrders.map(({ file }) => file),
    pdf,
  });
  return [
    { url: 'yard/index.html', template: 'index', view: index },
    ...loaded.overview.orders.flatMap((state) => {
      const { number } = state.entry.order.value;
      const view = isWanted(number) ? orderPageView(state) : undefined;
      return view ? [{ url: `yard/${number}/order.html`, template: 'order', view } as const] : [];
    }),
    {
      url: 'yard/plan.html',
      template: 'sections',
      view: planPageView({ ...acrossOrders(loaded, yard), fontCss: drawingFontCss() }),
    },
    {
      url: 'yard/purchases.html',
      template: 'sections',
      view: purchasesView(acrossOrders(loaded, yard)),
    },
    { url: 'yard/checks.html', template: 'checks', view: checksView(runChecks(), yard) },
  ];
}
