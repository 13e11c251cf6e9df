import type { CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import { formatDate, formatterOf } from '../../units/index.ts';
import {
  type Block,
  type Field,
  part,
  picture,
  type Standing,
  under,
  words,
} from '../blocks/block.ts';
import { type Letter, letterHead } from '../blocks/letter.ts';
import { besideMethods } from '../quote/key-figures.ts';
import type { QuoteOptions } from '../quote/quote.ts';
import { drawBoat } from '../sections/boat-drawing.ts';
import { handoverFloat } from '../sections/float-customer.ts';
import { methodNotes } from '../sections/method-notes.ts';
import { shouldKnow } from '../sections/told.ts';
import { boatName, sentence } from '../sections/words.ts';
import { handoverCautions } from './cautions.ts';
import { handoverEnergy } from './energy.ts';
import { fittedItems } from './fitted.ts';
import { carryFigures, handoverMasses, trialRuns } from './masses.ts';
import { plateBases, plateDrawing } from './plate-drawing.ts';

/** The customer’s handover pack: what the boat is, carries and weighs, what was tried, and how to look after it. */
export function handoverView(
  figures: CustomerFigures,
  { fontCss, drawn = drawBoat(figures, fontCss) }: QuoteOptions,
): Letter {
  const { build } = figures;
  const { order, yard, hull } = build;
  const standing = handoverStanding(build);
  const [carries, floats, energy] = [
    carryFigures(figures),
    handoverFloat(figures),
    handoverEnergy(figures),
  ];
  const rows = [...carries, ...(floats?.figures ?? []), ...(energy?.figures ?? [])];
  const { marked, methods } = methodNotes(rows, hull.ratings.basis, besideMethods(figures));
  return {
    ...packHead(build, standing),
    facts: identity(build),
    heading: `Handover pack: ${boatName(build)}`,
    lead: sentence(hull.sentence),
    told: sentence(order.boat.use),
    standing,
    parts: [
      ...part(
        'carries',
        'Limits of the boat',
        ...marked(carries),
        ...words(
          'small',
          'The shop’s ratings, to be confirmed by test under local rules. If the plate on the boat shows a lower figure, the plate applies.',
        ),
      ),
      ...shouldKnow(figures.findings),
      ...part(
        'plate',
        'Capacity plate',
        ...plateDrawing(figures, fontCss).map(picture),
        ...plateBases(figures),
      ),
      ...part(
        'floats',
        'Stability and freeboard',
        ...(floats ? floatBlocks(marked(floats.figures), floats.lines) : []),
      ),
      ...part('masses', 'Mass', ...handoverMasses(figures)),
      ...part('drawing', '', ...drawn.pictures.map(picture)),
      ...part('fitted', 'What is fitted', ...fittedItems(build, drawn.numbers)),
      ...part(
        'energy',
        'Battery use in a day',
        ...(energy ? energyBlocks(energy.use, marked(energy.figures)) : []),
      ),
      ...part('trials', 'Trial runs', ...trialRuns(figures)),
      ...part('cautions', 'Before you go out', ...handoverCautions(figures)),
      ...part('care', 'Looking after the boat', ...words('list', ...yard.care.map(sentence))),
      ...receipt(build),
      ...methods,
    ],
  };
}

const floatBlocks = (figures: readonly Block[], lines: readonly string[]): readonly Block[] => [
  ...figures,
  ...words('list', ...lines),
  ...words(
    'small',
    'In still water. Waves, wind and movement take freeboard away: leave more than these figures need.',
  ),
];

const energyBlocks = (use: readonly Block[], figures: readonly Block[]): readonly Block[] => [
  ...use,
  ...figures,
  ...words('small', 'The hours a day are assumed; your own use decides.'),
];

/** What is shown and handed over, and who signs for it. */
function receipt({ yard, order }: CustomerBuild): ReturnType<typeof part> {
  const signed = under('signing', 'Handed over and received', {
    block: 'signatures',
    parties: [`For ${yard.shop.name}`, `For ${order.customer.name}`],
  });
  const lines = yard.handoverChecks;
  return part(
    'checklist',
    'Shown and handed over',
    ...(lines.length > 0 ? [{ block: 'checks', lines } as const] : []),
    signed,
  );
}

function packHead(build: CustomerBuild, { kind }: Standing): ReturnType<typeof letterHead> {
  const { order } = build;
  const pack = kind === 'preview' ? 'Preview of handover pack' : 'Handover pack';
  return letterHead(build, {
    pdf: 'handover',
    name: `${pack} ${order.number}`,
    subject: `What ${order.customer.name} receives: what the boat is, weighs and carries, and how to look after it`,
  });
}

/** Handed over, or a preview with blanks to fill. */
function handoverStanding({ order: { status, dates }, yard }: CustomerBuild): Standing {
  const { handedOver } = dates;
  if (status !== 'handed-over') {
    return {
      kind: 'preview',
      word: 'Preview: filled in at handover',
      sentence: 'Blank fields are filled in on that day.',
    };
  }
  return {
    kind: 'handed-over',
    word: 'Handed over',
    sentence:
      handedOver === undefined
        ? 'The boat is with its owner.'
        : `On ${formatDate(handedOver, yard.locale)}.`,
  };
}

function identity({ order, hull, yard, outboard }: CustomerBuild): readonly Field[] {
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
