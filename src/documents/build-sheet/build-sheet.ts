import type { FiguredVariation, Figures } from '../../figures/index.ts';
import type { Build } from '../../resolve/index.ts';
import { formatterOf, formatDate, type IsoDate } from '../../units/index.ts';
import type { PlannedDays } from './days.ts';
import { targetMasses } from './masses.ts';
import { type Marks, PLACE_COLUMNS, placingList } from './placing.ts';
import { fitterFacts } from './performance.ts';
import { hoursByStage, stageParts } from './stages.ts';
import {
  type Block,
  type Field,
  part,
  type Part,
  picture,
  section,
  table,
  under,
  words,
} from '../blocks/block.ts';
import { type DocumentHead, pageHead, pdfName } from '../sections/head.ts';
import type { CaptionedPicture } from '../sections/picture.ts';
import { boatName, sentence, SEVERITY_WORDS } from '../sections/words.ts';
import { drawForWorkshop } from './workshop-drawing.ts';
import { type Finding, FINDING_CODES, seenBy } from '../../findings/index.ts';

export interface BuildSheetOptions {
  /** `@font-face` rules: a drawing is an image, and an image cannot use the fonts of its page. */
  readonly fontCss: string;
  /** Changes after acceptance: those that were agreed are in the figures. */
  readonly variations?: readonly FiguredVariation[];
  /** The days of each stage that is planned. */
  readonly planned?: PlannedDays;
}

/** What the shop floor's sheet says, as text. No money has a place in it. */
export interface BuildSheetView {
  readonly document: DocumentHead;
  readonly shop: string;
  readonly number: string;
  readonly boat: string;
  /** Why work must not begin from this sheet; empty when it may. */
  readonly halt: string;
  /** What the boat is for, in the customer's words. */
  readonly use: string;
  readonly facts: readonly Field[];
  /** What the office wrote for the shop; empty when it wrote nothing. */
  readonly note: string;
  readonly parts: readonly Part[];
}

/** The shop floor's sheet: what to build, in which order, with what, where it goes and what it must weigh. */
export function buildSheetView(
  figures: Figures,
  { fontCss, variations = [], planned }: BuildSheetOptions,
): BuildSheetView {
  const { build } = figures;
  const { order, yard } = build;
  const drawn = drawForWorkshop(figures, fontCss);
  const marks = { numbers: drawn.numbers, changes: changesByItem(variations) };
  return {
    document: documentHead(build),
    shop: yard.shop.name,
    number: order.number,
    boat: boatName(build),
    halt: halt(build),
    use: sentence(order.boat.use),
    facts: [...facts(build), ...fitterFacts(figures)],
    note: order.note === undefined ? '' : sentence(order.note),
    parts: [
      ...part('variations', 'Changed since the quote', ...agreedChanges(variations, yard.locale)),
      ...part('findings', 'Before you begin', ...shopFindings(figures.findings)),
      section('masses', 'Target weights', ...targetMasses(figures)),
      section('hours', 'Hours by stage', ...hoursByStage(figures, planned)),
      placingPart(build, drawn.pictures, marks),
      ...stageParts(figures, { planned, fontCss, marks }),
    ],
  };
}

/** Where things go: seen from above and from the side, listed; then the drawings that are seen once. */
function placingPart(build: Build, pictures: readonly CaptionedPicture[], marks: Marks): Part {
  const rows = placingList(build, marks, formatterOf(build.yard));
  return section(
    'placing',
    'Positions',
    ...words('plain', rows.length > 0 ? HOW_PLACED : 'Nothing is ordered besides the boat itself.'),
    ...pictures.slice(0, 2).map(picture),
    ...table(PLACE_COLUMNS, rows),
    under('further', '', ...pictures.slice(2).map(picture)),
  );
}

const HOW_PLACED =
  'To the middle of each item; of several, to the middle of them all. Forward of the transom at the keel, out from the {centreline} to port (P) or starboard (S), up from the baseline.';

/** "V1" by the name of each item that an agreed variation brought. */
function changesByItem(variations: readonly FiguredVariation[]): ReadonlyMap<string, string> {
  return new Map(
    variations.flatMap(({ variation, number, added }) =>
      variation.agreed ? added.map((name): [string, string] => [name, `V${number}`]) : [],
    ),
  );
}

function agreedChanges(variations: readonly FiguredVariation[], locale: string): readonly Block[] {
  const agreed = variations.flatMap(({ variation, number, added, removed }) => {
    if (!variation.agreed) return [];
    const signed = formatDate(variation.agreed.date, locale);
    const lists = [
      ...(added.length > 0 ? [`Added: ${added.join('; ')}.`] : []),
      ...(removed.length > 0 ? [`Removed: ${removed.join('; ')}.`] : []),
    ];
    const heading = `V${number}: ${variation.name}, signed ${signed}`;
    return [under('finding', heading, ...words('plain', ...lists))];
  });
  return agreed.length === 0 ? [] : [...words('plain', HOW_MARKED), ...agreed];
}

const HOW_MARKED = 'What a change brought carries its number, such as V1, in the lists below.';

function documentHead(build: Build): DocumentHead {
  const { order, yard } = build;
  const sheet = `Build sheet ${order.number}`;
  return {
    ...pageHead(
      yard,
      `${sheet}: ${boatName(build)}`,
      'What to build, in which order, with what, where it goes and what it must weigh',
    ),
    runningHead: `${order.number}  ${boatName(build)}`,
    reference: sheet,
    pdf: pdfName('build-sheet', order.number),
  };
}

function halt({ order }: Build): string {
  if (order.status === 'closed') return 'Closed: nothing more is done to this order.';
  return order.status === 'enquiry' || order.status === 'quoted'
    ? 'Not accepted yet: do not start work from this sheet.'
    : '';
}

function facts({ order, hull, yard, outboard, trailer }: Build): readonly Field[] {
  const { accepted, started, promised } = order.dates;
  const day = (label: string, date: IsoDate | undefined) =>
    date === undefined ? [] : [{ label, value: formatDate(date, yard.locale) }];
  const format = formatterOf(yard);
  const { length, beam } = hull.dimensions;
  return [
    { label: 'For', value: order.customer.name },
    { label: 'Hull', value: `${hull.name}, ${format.length(length)} × ${format.length(beam)}` },
    {
      label: 'Outboard',
      value: outboard ? `${outboard.model.name}, ${outboard.shaft} shaft` : 'none in this order',
    },
    { label: 'Trailer', value: trailer ? trailer.name : 'none in this order' },
    { label: 'People', value: format.number(order.boat.people, 0) },
    ...day('Accepted', accepted),
    ...day('Started', started),
    ...day('Promised', promised),
  ];
}

const ORDER = ['error', 'warning', 'note'] as const;

/** What the checks found that whoever builds must know, one entry a code, the gravest first. */
function shopFindings(findings: readonly Finding[]): readonly Block[] {
  const told = findings.filter((one) => seenBy(one, 'workshop'));
  const codes = [...new Set(told.map(({ code }) => code))];
  return ORDER.flatMap((severity) =>
    codes
      .filter((code) => FINDING_CODES[code].severity === severity)
      .map((code) => {
        const same = told.filter((one) => one.code === code);
        const remedies = [...new Set(same.map(({ remedy }) => `Fix: ${remedy}.`))];
        return under(
          'finding',
          `${SEVERITY_WORDS[severity]}. ${FINDING_CODES[code].means}.`,
          ...words('list', ...same.map(detail)),
          ...words('plain', ...remedies),
        );
      }),
  );
}

const detail = ({ received, expected }: Finding): string =>
  expected === undefined ? received : `${received}; expected: ${expected}`;
