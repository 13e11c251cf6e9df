import type { CustomerAlternative, CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import { formatMoney } from '../../money/index.ts';
import { formatDate } from '../../units/index.ts';
import {
  bareTable,
  type Block,
  factList,
  part,
  picture,
  row,
  type Standing,
  under,
  words,
} from '../blocks/block.ts';
import { type Letter, letterHead } from '../blocks/letter.ts';
import { type BoatDrawing, drawBoat } from '../sections/boat-drawing.ts';
import { methodNotes } from '../sections/method-notes.ts';
import { shouldKnow } from '../sections/told.ts';
import { boatName, sentence } from '../sections/words.ts';
import { optionsToConsider } from './alternatives.ts';
import { type EarlierRevision, quoteChanges } from './changes.ts';
import { type DeliveryOffer, glanceFacts } from './glance.ts';
import { includedItems } from './items.ts';
import { besideMethods, keyFigures } from './key-figures.ts';
import { priceIncludes, priceSums, SUM_COLUMNS } from './price.ts';
import { quoteFacts, quoteStanding } from './standing.ts';

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

/** The customer’s quote: what they get, what it weighs and carries, and one price with nothing left to add. */
export function quoteView(figures: CustomerFigures, options: QuoteOptions): Letter {
  const { build } = figures;
  const { order, yard, hull } = build;
  const { revision, earlier, drawn = drawBoat(figures, options.fontCss) } = options;
  const standing = quoteStanding(build, revision);
  const rows = keyFigures(figures);
  const { marked, methods } = methodNotes(rows, hull.ratings.basis, besideMethods(figures));
  return {
    ...quoteHead(build, standing, revision),
    facts: quoteFacts(build, standing, revision),
    heading: `${titleWord(standing)}: ${boatName(build)}`,
    lead: sentence(hull.sentence),
    told: sentence(order.boat.use),
    parts: [
      ...part('page-one', '', ...pageOne(figures, standing, { ...options, drawn })),
      ...shouldKnow(figures.findings),
      ...part('drawing', '', ...drawn.pictures.map(picture)),
      ...part('included', 'What is included', ...includedItems(figures, drawn.numbers)),
      ...part('sums', 'How the price adds up', ...priceSums(figures)),
      ...part('payments', 'Payments', ...payments(figures)),
      ...part('figures', 'Key figures', ...marked(rows)),
      ...part(
        'alternatives',
        'Options to consider',
        ...optionsToConsider(options.alternatives ?? [], figures),
      ),
      ...(earlier ? quoteChanges(earlier, yard) : []),
      ...part('not-included', 'What is not included', ...words('list', ...notIncluded(build))),
      ...part(
        'terms',
        'Terms',
        ...words('steps', ...yard.terms.map(sentence)),
        ...signing(figures, standing),
      ),
      ...methods,
    ],
  };
}

/** The boat, the price, and what a customer asks first. */
function pageOne(
  figures: CustomerFigures,
  standing: Standing,
  { drawn, delivery }: QuoteOptions & { readonly drawn: BoatDrawing },
): readonly Block[] {
  return [
    picture(drawn.profile),
    {
      block: 'panel',
      heading: '{Final price}',
      value: formatMoney(figures.price.driveAway, figures.build.yard.locale),
      words: [priceIncludes(figures)],
      standing,
    },
    factList('glance', glanceFacts(figures, delivery)),
  ];
}

function quoteHead(
  build: CustomerBuild,
  standing: Standing,
  revision: number | undefined,
): ReturnType<typeof letterHead> {
  const { order, yard } = build;
  const issue = revision === undefined ? '' : `, revision ${revision}`;
  return letterHead(build, {
    pdf: 'quote',
    name: `${titleWord(standing)} ${order.number}${issue}`,
    subject: `What ${order.customer.name} would get, what it weighs and carries, and one {final price}`,
    day: formatDate(order.dates.quoted ?? order.dates.enquiry, yard.locale),
    revision,
  });
}

/** What the sheet calls itself: a draft says so wherever its name stands. */
function titleWord({ kind }: Standing): string {
  if (kind === 'draft') return 'Draft quote';
  return kind === 'closed' ? 'Closed quote' : 'Quote';
}

function payments({ price, build: { yard } }: CustomerFigures): readonly Block[] {
  return bareTable(SUM_COLUMNS, [
    ...price.payments.map(({ name, when, amount }) =>
      row('plain', { text: name, under: when }, formatMoney(amount, yard.locale)),
    ),
    row('whole', 'Total', formatMoney(price.driveAway, yard.locale)),
  ]);
}

function notIncluded({ yard, outboard, trailer }: CustomerBuild): readonly string[] {
  return [
    ...(outboard ? [] : ['An outboard']),
    ...(trailer ? [] : ['A trailer']),
    ...yard.notIncluded,
  ];
}

/** Who signs; nobody signs what is not an offer. */
function signing(
  { build: { order, yard } }: CustomerFigures,
  { kind }: Standing,
): readonly Block[] {
  if (kind !== 'offer') return [];
  const parties = [`For ${order.customer.name}`, `For ${yard.shop.name}`];
  return [under('signing', 'Agreed', { block: 'signatures', parties })];
}
