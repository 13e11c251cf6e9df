import {
  buildSheetView,
  checksView,
  type DocumentHead,
  drawBoat,
  handoverView,
  indexView,
  isQuoteView,
  orderPageView,
  planPageView,
  purchasesCsv,
  purchasesView,
  type QuoteView,
  quoteView,
  variationsView,
} from '../documents/index.ts';
import type { FiguredOrder, Figures } from '../figures/index.ts';
import type { IssuedQuote } from '../issued/index.ts';
import type { Yard } from '../schema/index.ts';
import { drawingFontCss, type Page, type RenderedPage, renderPages } from '../site/index.ts';
import type { IsoDate } from '../units/index.ts';
import { orderChecks, runChecks } from '../verify/index.ts';
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
  const wanted = loaded.orders.filter(({ order }) => isWanted(order.value.number));
  const sent = [...loaded.issued.values()].flatMap((revisions) => revisions.at(-1) ?? []);
  const documents = [
    ...sent.filter(({ number }) => isWanted(number)).flatMap(issuedPage),
    ...wanted.flatMap((entry) => documentPages(entry, loaded)),
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
    figures: wanted.flatMap(({ figures }) => figures ?? []),
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
  { figures, quoted, alternatives, variations }: FiguredOrder,
  { issued: sent, overview }: LoadedWorkspace,
): readonly DocumentPage[] {
  if (!figures || !quoted) return [];
  const { number, dates, acceptance } = figures.build.order;
  const issued = sent.get(number) ?? [];
  const planned = overview.orders.find(({ entry }) => entry.figures === figures)?.planned;
  const fontCss = drawingFontCss();
  const drawn = drawBoat(figures, fontCss);
  const date = dates.quoted ?? dates.enquiry;
  const accepted = issued.find(({ revision }) => revision === acceptance?.revision);
  const page = (url: string, template: DocumentPage['template'], view: DocumentPage['view']) => ({
    url,
    template,
    view,
    date,
  });
  return [
    ...(issued.length > 0
      ? []
      : [
          quotePage(
            number,
            quoteView(quoted, { fontCss, alternatives, ...(quoted === figures && { drawn }) }),
            date,
          ),
        ]),
    page(
      `yard/${number}/build-sheet.html`,
      'build-sheet',
      buildSheetView(figures, {
        fontCss,
        variations,
        ...(planned && { planned: { asOf: overview.today, stages: planned.stages } }),
      }),
    ),
    page(`customer/${number}/handover.html`, 'handover', handoverView(figures, { fontCss, drawn })),
    ...(variations.length === 0
      ? []
      : [
          page(
            `customer/${number}/variations.html`,
            'variations',
            variationsView({ quoted, variations, issued: accepted ?? issued.at(-1) }),
          ),
        ]),
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
  const figures = loaded.orders.flatMap((entry) => entry.figures ?? []);
  const checks = [...runChecks(), ...orderChecks(figures)];
  const index = indexView({
    ...acrossOrders(loaded, yard),
    fontCss: drawingFontCss(),
    findings: loaded.findings,
    sources: loaded.sources,
    unread: loaded.brokenOrders.map(({ file }) => file),
    pdf,
  });
  return [
    { url: 'yard/index.html', template: 'index', view: index },
    ...loaded.overview.orders.flatMap((state) => {
      const { number } = state.entry.order.value;
      const view = isWanted(number) ? orderPageView(state, drawingFontCss()) : undefined;
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
    { url: 'yard/checks.html', template: 'checks', view: checksView(checks, yard) },
  ];
}
