import type { CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import { formatDate, formatterOf } from '../../units/index.ts';
import { handoverFloat } from '../sections/float-customer.ts';
import { handoverCautions } from './cautions.ts';
import { handoverEnergy } from './energy.ts';
import { fittedItems } from './fitted.ts';
import { carryFigures, handoverMasses, trialRuns } from './masses.ts';
import type { HandoverField, HandoverView } from './types.ts';
import { type DocumentHead, pdfName } from '../sections/head.ts';
import { plateDrawing } from './plate-drawing.ts';
import { drawBoat } from '../sections/boat-drawing.ts';
import type { QuoteOptions } from '../quote/quote.ts';
import { methodNotes } from '../sections/method-notes.ts';
import { besideMethods } from '../quote/key-figures.ts';
import { shopHead } from '../sections/shop-head.ts';
import { shouldKnow } from '../sections/told.ts';
import { boatName, customerLines, sentence } from '../sections/words.ts';

/** The customer's handover pack: what the boat is, carries and weighs, what was tried, and how to look after it. */
export function handoverView(
  figures: CustomerFigures,
  { fontCss, drawn = drawBoat(figures, fontCss) }: QuoteOptions,
): HandoverView {
  const { build } = figures;
  const { order, yard, hull } = build;
  const standing = handoverStanding(build);
  const carries = carryFigures(figures);
  const floats = handoverFloat(figures);
  const energy = handoverEnergy(figures);
  const rows = [...carries, ...(floats?.figures ?? []), ...(energy?.figures ?? [])];
  const { marked, methods } = methodNotes(rows, besideMethods(figures));
  return {
    document: documentHead(build, standing),
    shop: shopHead(yard),
    heading: 'Handover pack',
    boat: boatName(build),
    lead: sentence(hull.sentence),
    told: sentence(order.boat.use),
    customer: customerLines(build),
    standing,
    identity: identity(build),
    pictures: drawn.pictures,
    plate: plateDrawing(figures, fontCss),
    ...fittedItems(build, drawn.numbers),
    masses: handoverMasses(figures),
    carries: marked(carries),
    shouldKnow: shouldKnow(figures.findings),
    basis: sentence(hull.ratings.basis),
    floats: floats && { ...floats, figures: marked(floats.figures) },
    energy: energy && { ...energy, figures: marked(energy.figures) },
    methods,
    trials: trialRuns(figures),
    checklist: yard.handoverChecks,
    care: yard.care.map(sentence),
    cautions: handoverCautions(figures),
    signatures: [`For ${yard.shop.name}`, `For ${order.customer.name}`],
  };
}

function documentHead(build: CustomerBuild, { kind }: HandoverView['standing']): DocumentHead {
  const { order, yard } = build;
  const pack = `${kind === 'preview' ? 'Preview of handover pack' : 'Handover pack'} ${order.number}`;
  return {
    title: `${pack}: ${boatName(build)}`,
    lang: yard.locale,
    subject: `What ${order.customer.name} receives: what the boat is, weighs and carries, and how to look after it`,
    author: yard.shop.name,
    runningHead: `${pack}, ${boatName(build)}`,
    reference: pack,
    pdf: pdfName('handover', order.number),
  };
}

/** Handed over, or a preview with blanks to fill. */
function handoverStanding({
  order: { status, dates },
  yard,
}: CustomerBuild): HandoverView['standing'] {
  const { handedOver } = dates;
  if (status === 'handed-over') {
    return {
      kind: 'handed-over',
      word: 'Handed over',
      sentence:
        handedOver === undefined
          ? 'The boat is with its owner.'
          : `On ${formatDate(handedOver, yard.locale)}.`,
    };
  }
  return {
    kind: 'preview',
    word: 'Preview: filled in at handover',
    sentence: 'Blank fields are filled in on that day.',
  };
}

function identity({ order, hull, yard, outboard }: CustomerBuild): readonly HandoverField[] {
  const { handedOver } = order.dates;
  const format = formatterOf(yard);
  const { length, beam } = hull.dimensions;
  return [
    { label: 'Hull identification number', value: order.record?.hullNumber ?? '' },
    { label: 'Model', value: hull.name },
    ...(order.boat.name === undefined ? [] : [{ label: 'Name', value: order.boat.name }]),
    { label: 'Order', value: order.number },
    { label: 'Built by', value: yard.shop.name },
    { label: 'Length of the hull', value: format.length(length) },
    { label: 'Beam', value: format.length(beam) },
    ...(outboard
      ? [{ label: 'Outboard', value: `${outboard.model.name}, ${outboard.shaft} shaft` }]
      : []),
    {
      label: 'Handed over on',
      value: handedOver === undefined ? '' : formatDate(handedOver, yard.locale),
    },
  ];
}
