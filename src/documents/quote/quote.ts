import type { CustomerAlternative, CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import { formatMoney } from '../../money/index.ts';
import { formatDate } from '../../units/index.ts';
import { type DocumentHead, pdfName } from '../sections/head.ts';
import { type BoatDrawing, drawBoat } from '../sections/boat-drawing.ts';
import { type DeliveryOffer, glanceFacts } from './glance.ts';
import { besideMethods, keyFigures } from './key-figures.ts';
import { quoteGroups } from './items.ts';
import { quotePrice } from './price.ts';
import { quoteAlternatives } from './alternatives.ts';
import { type EarlierRevision, quoteChanges } from './changes.ts';
import { quoteFacts, quoteStanding, type Standing } from './standing.ts';
import type { QuoteView } from './types.ts';
import { methodNotes } from '../sections/method-notes.ts';
import { shopHead } from '../sections/shop-head.ts';
import { shouldKnow } from '../sections/told.ts';
import { boatName, customerLines, sentence } from '../sections/words.ts';

/** What the drawing of a quote is made with. */
export interface QuoteOptions {
  /** `@font-face` rules: a drawing is an image, and an image cannot use the fonts of its page. */
  readonly fontCss: string;
  /** The boat as another document of the same figures has drawn it already. */
  readonly drawn?: BoatDrawing;
  /** Given when the quote is issued: it is what the sheet is called from then on. */
  readonly revision?: number;
  /** What the plan could promise; left out where nothing is planned. */
  readonly delivery?: DeliveryOffer | undefined;
  /** The same boat otherwise. */
  readonly alternatives?: readonly CustomerAlternative[];
  /** Given when it takes the place of an earlier one. */
  readonly earlier?: EarlierRevision;
}

/** The customer's quote: what they get, what it weighs and carries, and one price with nothing left to add. */
export function quoteView(
  figures: CustomerFigures,
  {
    fontCss,
    drawn = drawBoat(figures, fontCss),
    revision,
    alternatives = [],
    delivery,
    earlier,
  }: QuoteOptions,
): QuoteView {
  const { build, price } = figures;
  const { order, yard, hull } = build;
  const standing = quoteStanding(build, revision);
  const rows = keyFigures(figures);
  const { marked, methods } = methodNotes(rows, besideMethods(figures));
  return {
    document: documentHead(build, standing, revision),
    shop: shopHead(yard),
    form: 'page one',
    heading: `${titleWord(standing)}: ${boatName(build)}`,
    facts: quoteFacts(build, standing, revision),
    customer: customerLines(build),
    standing,
    lead: sentence(hull.sentence),
    told: sentence(order.boat.use),
    glance: glanceFacts(figures, delivery),
    profile: drawn.profile,
    pictures: drawn.pictures,
    price: quotePrice(figures),
    shouldKnow: shouldKnow(figures.findings),
    groups: quoteGroups(figures, drawn.numbers),
    payments: price.payments.map(({ name, when, amount }) => ({
      name,
      when,
      amount: formatMoney(amount, yard.locale),
    })),
    alternatives: quoteAlternatives(alternatives, figures),
    figures: marked(rows),
    methods,
    basis: sentence(hull.ratings.basis),
    notIncluded: notIncluded(build),
    terms: yard.terms.map(sentence),
    ...(earlier && { changes: quoteChanges(earlier, yard) }),
    signatures:
      standing.kind === 'offer' ? [`For ${order.customer.name}`, `For ${yard.shop.name}`] : [],
  };
}

function documentHead(
  build: CustomerBuild,
  standing: Standing,
  revision: number | undefined,
): DocumentHead {
  const { order, yard } = build;
  const issue = revision === undefined ? '' : `, revision ${revision}`;
  const quote = `${titleWord(standing)} ${order.number}${issue}`;
  const day = order.dates.quoted ?? order.dates.enquiry;
  return {
    title: `${quote}: ${boatName(build)}`,
    lang: yard.locale,
    subject: `What ${order.customer.name} would get, what it weighs and carries, and one drive-away price`,
    author: yard.shop.name,
    runningHead: `${quote}, ${boatName(build)}`,
    reference: `${quote}, ${formatDate(day, yard.locale)}`,
    pdf: pdfName('quote', order.number, revision),
  };
}

/** What the sheet calls itself: a draft says so wherever its name stands. */
function titleWord({ kind }: Standing): string {
  if (kind === 'draft') return 'Draft quote';
  return kind === 'closed' ? 'Closed quote' : 'Quote';
}

function notIncluded({ yard, outboard, trailer }: CustomerBuild): readonly string[] {
  return [
    ...(outboard ? [] : ['An outboard']),
    ...(trailer ? [] : ['A trailer']),
    ...yard.notIncluded,
  ];
}
