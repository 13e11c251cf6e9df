import {
  buildSheetView,
  deliveryOf,
  type DocumentHead,
  drawBoat,
  handoverView,
  type Letter,
  notToBeSent,
  pdfName,
  quoteView,
  variationsView,
} from '../documents/index.ts';
import {
  customerAlternative,
  customerFigures,
  customerVariation,
  type FiguredOrder,
  type Figures,
} from '../figures/index.ts';
import { type Finding, openFindings } from '../findings/index.ts';
import type { Status } from '../schema/index.ts';
import { drawingFontCss, type Page } from '../site/index.ts';
import type { IsoDate } from '../units/index.ts';
import type { LoadedWorkspace } from './load.ts';

/** Where a document of an order stands in the site, and what it is called. */
export interface DocumentPlace {
  readonly number: string;
  readonly name: string;
  readonly url: string;
  /** Missing for a page that is not to be sent. */
  readonly pdf?: string;
}

interface PlannedDocument extends DocumentPlace {
  readonly template: Page['template'];
  readonly date: IsoDate;
  readonly view: () => DocumentPage['view'];
}

export interface DocumentPage extends Page, DocumentPlace {
  readonly view: { readonly document: DocumentHead };
  readonly date: IsoDate;
}

/** Whose half the handover pack stands in: the customer's from the day that the boat is ready, a preview before. */
const HANDOVER_HALF: ReadonlyMap<Status, 'yard' | 'customer'> = new Map([
  ['quoted', 'yard'],
  ['accepted', 'yard'],
  ['building', 'yard'],
  ['ready', 'customer'],
  ['handed-over', 'customer'],
]);

/** The documents that an order has as it stands; none when it has no figures. */
export function plannedDocuments(
  { figures, quoted, alternatives, variations }: FiguredOrder,
  { issued, overview, plan }: LoadedWorkspace,
): readonly PlannedDocument[] {
  if (!figures || !quoted) return [];
  const { number, status } = figures.build.order;
  const state = overview.orders.find(({ entry }) => entry.figures === figures);
  const { planned, account } = state ?? {};
  const fontCss = drawingFontCss();
  let picture: ReturnType<typeof drawBoat> | undefined;
  const drawn = () => (picture ??= drawBoat(figures, fontCss));
  const sold = customerFigures(quoted);
  const built = quoted === figures ? sold : customerFigures(figures);
  const document = documentOf(figures);
  const paper = paperOf(document);
  const asSold = openFindings(quoted.findings, 'offer');
  const half = HANDOVER_HALF.get(status);
  const asBuilt = (kind: 'offer' | 'handover') => openFindings(figures.findings, kind);
  const pack = half === 'yard' ? 'Preview of handover pack' : 'Handover pack';
  return [
    ...(issued.has(number)
      ? []
      : [
          paper(asSold, 'customer', 'quote', 'Draft quote', () =>
            quoteView(sold, {
              fontCss,
              alternatives: alternatives.map(customerAlternative),
              delivery: deliveryOf(plan, number),
              ...(quoted === figures && { drawn: drawn() }),
            }),
          ),
        ]),
    document('yard', 'build-sheet', 'Build sheet', () =>
      buildSheetView(figures, {
        fontCss,
        variations,
        ...(planned && { planned: { asOf: overview.today, stages: planned.stages } }),
      }),
    ),
    ...(half
      ? [
          paper(asBuilt(half === 'yard' ? 'offer' : 'handover'), half, 'handover', pack, () =>
            handoverView(built, { fontCss, drawn: drawn() }),
          ),
        ]
      : []),
    ...(account && variations.length > 0
      ? [
          paper(asBuilt('offer'), 'customer', 'variations', 'Variations', () =>
            variationsView({
              quoted: sold,
              variations: variations.map(customerVariation),
              account,
            }),
          ),
        ]
      : []),
  ];
}

const DOCUMENT_TEMPLATES = {
  quote: 'letter',
  'build-sheet': 'build-sheet',
  handover: 'letter',
  variations: 'letter',
} as const;

/** A document of one order, in its half of the site. */
const documentOf =
  ({ build }: Figures) =>
  (
    half: 'yard' | 'customer',
    file: keyof typeof DOCUMENT_TEMPLATES,
    name: string,
    view: PlannedDocument['view'],
  ): PlannedDocument => {
    const { number, dates } = build.order;
    return {
      number,
      name,
      url: `${half}/${number}/${file}.html`,
      pdf: `${half}/${number}/${pdfName(file, number)}`,
      template: DOCUMENT_TEMPLATES[file],
      date: dates.quoted ?? dates.enquiry,
      view,
    };
  };

/** A paper for the customer: with open findings a page that is not to be sent, without a PDF. */
const paperOf =
  (document: ReturnType<typeof documentOf>) =>
  (
    open: readonly Finding[],
    half: 'yard' | 'customer',
    file: keyof typeof DOCUMENT_TEMPLATES,
    name: string,
    view: () => Letter,
  ): PlannedDocument => {
    if (open.length === 0) return document(half, file, name, view);
    const { pdf: _, ...page } = document(half, file, `${name}, not to be sent`, () =>
      notToBeSent(view(), open),
    );
    return page;
  };
