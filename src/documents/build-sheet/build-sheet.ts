import type { FiguredVariation, Figures } from '../../figures/index.ts';
import type { Build } from '../../resolve/index.ts';
import { formatterOf, formatDate, type IsoDate } from '../../units/index.ts';
import { daysNote, type PlannedDays } from './days.ts';
import { massMethod, targetMasses } from './masses.ts';
import { placingList } from './placing.ts';
import { performanceFacts } from './performance.ts';
import { hoursByStage, stageSheets, stagesLeftOut } from './stages.ts';
import type { BuildSheetView, ShopFinding } from './types.ts';
import { type DocumentHead, pageHead, pdfName } from '../sections/head.ts';
import { boatName, sentence } from '../sections/words.ts';
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

/** The shop floor's sheet: what to build, in which order, with what, where it goes and what it must weigh. */
export function buildSheetView(
  figures: Figures,
  { fontCss, variations = [], planned }: BuildSheetOptions,
): BuildSheetView {
  const { build } = figures;
  const { order, yard } = build;
  const drawn = drawForWorkshop(figures, fontCss);
  const changes = changesByItem(variations);
  const format = formatterOf(yard);
  return {
    document: documentHead(build),
    shop: yard.shop.name,
    number: order.number,
    boat: boatName(build),
    halt: halt(build),
    use: sentence(order.boat.use),
    facts: [...facts(build), ...performanceFacts(figures)],
    note: order.note === undefined ? '' : sentence(order.note),
    variations: agreedVariations(variations, yard.locale),
    findings: shopFindings(figures.findings),
    masses: targetMasses(figures),
    massMethod: massMethod(figures),
    ...hoursByStage(figures, planned),
    daysNote: daysNote(planned, yard.locale),
    notInOrder: stagesLeftOut(figures),
    pictures: drawn.pictures.slice(0, 2),
    furtherPictures: drawn.pictures.slice(2),
    placing: placingList(build, drawn.numbers, changes, format),
    stages: stageSheets(figures, drawn.numbers, {
      fontCss,
      changes,
      ...(planned && { planned }),
    }),
  };
}

/** "V1" by the name of each item that an agreed variation brought. */
function changesByItem(variations: readonly FiguredVariation[]): ReadonlyMap<string, string> {
  return new Map(
    variations.flatMap(({ variation, number, added }) =>
      variation.agreed ? added.map((name): [string, string] => [name, `V${number}`]) : [],
    ),
  );
}

function agreedVariations(
  variations: readonly FiguredVariation[],
  locale: string,
): BuildSheetView['variations'] {
  return variations.flatMap(({ variation, number, added, removed }) =>
    variation.agreed
      ? [
          {
            name: `V${number}: ${variation.name}`,
            signed: `signed ${formatDate(variation.agreed.date, locale)}`,
            added,
            removed,
          },
        ]
      : [],
  );
}

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

function facts({ order, hull, yard, outboard, trailer }: Build): BuildSheetView['facts'] {
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

const WORDS = { error: 'Error', warning: 'Warning', note: 'Note' } as const;
const ORDER = ['error', 'warning', 'note'] as const;

/** What the checks found that whoever builds must know, one entry a code, the gravest first. */
function shopFindings(findings: readonly Finding[]): readonly ShopFinding[] {
  const told = findings.filter((one) => seenBy(one, 'workshop'));
  const codes = [...new Set(told.map(({ code }) => code))];
  return ORDER.flatMap((severity) =>
    codes
      .filter((code) => FINDING_CODES[code].severity === severity)
      .map((code) => {
        const same = told.filter((one) => one.code === code);
        return {
          word: WORDS[severity],
          means: FINDING_CODES[code].means,
          details: same.map(detail),
          remedies: [...new Set(same.map(({ remedy }) => remedy))],
        };
      }),
  );
}

const detail = ({ received, expected }: Finding): string =>
  expected === undefined ? received : `${received}; wanted: ${expected}`;
