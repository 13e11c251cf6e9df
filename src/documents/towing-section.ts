import { drawOnTrailer } from '../draw/index.ts';
import type { Figures, TrailerFigures } from '../figures/index.ts';
import { type Formatter, kilograms, metres } from '../units/index.ts';
import { hullShape, outboardShape } from './drawing-input.ts';
import { notComputed, performancePrinter } from './performance-words.ts';
import { pictureOf } from './picture.ts';
import {
  figureColumn,
  flagRow,
  plainRow,
  type Section,
  section,
  type SectionRow,
  textColumn,
} from './section.ts';
import { capital, sentence } from './words.ts';

/** Rules that a place has, in words. */
const PLACES = {
  AU: 'Australia',
  NZ: 'New Zealand',
  'UK-EU': 'the United Kingdom and the European Union',
  US: 'the United States',
} as const;

type Margins = readonly {
  readonly name: string;
  readonly value: number;
  readonly limit: number;
  readonly left: number;
  readonly unit: string;
  readonly holds: boolean;
}[];

/** Ball load, winch post, brakes, running gear, width, and what vehicle and roof may carry. */
export function towingSection(figures: Figures, fontCss: string): Section {
  const { tow, build } = figures;
  const { format } = performancePrinter(build);
  const { trailer, roof = [] } = tow;
  const rows = [...(trailer ? trailerRows(figures, trailer, format) : []), ...rowsOf(roof, format)];
  return section('towing', 'Towing', {
    words: trailer ? trailerWords(trailer, format) : ['No trailer is in this order.'],
    tables:
      rows.length === 0
        ? []
        : [
            {
              caption: 'What is left of every limit on the road',
              columns: [textColumn('What'), ...['Value', 'Limit', 'Left'].map(figureColumn)],
              rows,
            },
          ],
    pictures: trailer ? trailerPictures(figures, trailer, fontCss) : [],
    notes: trailer ? trailerNotes(trailer) : [],
  });
}

function trailerWords(trailer: TrailerFigures, format: Formatter): readonly string[] {
  const { ball, winchPost, brakes, coupling, length } = trailer;
  return [
    'notComputed' in ball
      ? `Ball load: ${notComputed(ball)}.`
      : `On the ball: ${format.mass(ball.onBall)}, ${format.percent(ball.share, 1)} of ${format.mass(ball.total)}; verify by weighing the coupling.`,
    'notComputed' in winchPost
      ? `Winch post: ${notComputed(winchPost)}.`
      : `Winch post: ${format.length(winchPost.at)} aft of the ball; ${format.percent(trailer.usualShare, 0)}, the usual share, is on the ball at ${format.length(winchPost.usual)}.`,
    brakeWords(trailer, brakes),
    typeof length === 'number'
      ? `Length behind the ball: ${format.length(length)}.`
      : `Length behind the ball: ${notComputed(length)}.`,
    ...(typeof coupling === 'number'
      ? [`Couplings must stand a D-value of ${format.number(coupling, 1)} kN.`]
      : []),
  ];
}

function brakeWords({ place, trailer }: TrailerFigures, brakes: TrailerFigures['brakes']): string {
  const where = PLACES[place];
  if ('notComputed' in brakes) return `Brakes in ${where}: ${notComputed(brakes)}.`;
  const need =
    brakes.braked === 'none' ? 'the rules ask for none' : `brakes on ${brakes.braked} are needed`;
  const has = trailer.brakes === 'none' ? 'it has none' : `it has ${trailer.brakes} brakes`;
  const besides = brakes.notes.map((note) => ` ${sentence(capital(note))}`).join('');
  return `Brakes in ${where}: ${need}; ${has}.${besides}`;
}

function trailerRows(
  { trailerLoad }: Figures,
  { trailer, gear, vehicle, width, share }: TrailerFigures,
  format: Formatter,
): readonly SectionRow[] {
  const whole: Margins = trailerLoad
    ? [
        {
          name: 'boat and trailer together',
          value: trailerLoad.total,
          limit: trailer.rating,
          left: trailerLoad.left,
          unit: 'kg',
          holds: trailerLoad.left >= 0,
        },
      ]
    : [];
  const lacks = (what: string, margins: typeof gear): readonly SectionRow[] =>
    'notComputed' in margins
      ? [plainRow(what, notComputed(margins), '', '')]
      : rowsOf(margins, format);
  return [
    ...rowsOf(whole, format),
    ...lacks('load of axles and tyres', gear),
    ...('notComputed' in share ? [] : rowsOf(share, format)),
    ...rowsOf([width], format),
    ...lacks('towing vehicle', vehicle),
  ];
}

function rowsOf(margins: Margins, format: Formatter): readonly SectionRow[] {
  return margins.map(({ name, value, limit, left, unit, holds }) => {
    const print = (number: number): string => {
      if (unit === 'kg') return format.mass(kilograms(number));
      return unit === 'm' ? format.length(metres(number)) : format.percent(number, 1);
    };
    return (holds ? plainRow : flagRow)(name, print(value), print(limit), print(left));
  });
}

function trailerPictures(
  { build, mass }: Figures,
  { ball, winchPost, trailer }: TrailerFigures,
  fontCss: string,
): Section['pictures'] {
  const { axle, centre } = trailer;
  if (axle === undefined || centre === undefined) return [];
  if ('notComputed' in ball || 'notComputed' in winchPost) return [];
  const { format } = performancePrinter(build);
  const hull = hullShape(build);
  const boatAt = winchPost.at + hull.length - mass.ready.centre.x;
  const both = (trailer.tare * centre + mass.towedBoat * boatAt) / ball.total;
  const drawing = drawOnTrailer({
    hull,
    ...outboardShape(build),
    winchPost: winchPost.at,
    axle,
    axles: trailer.axles,
    trailerLength: trailer.length,
    centre: both,
    texts: {
      ball: `${format.mass(ball.onBall)} on the ball`,
      axles: `${format.mass(ball.onAxles)} on the wheels`,
      winchPost: `winch post ${format.length(winchPost.at)}`,
      axle: `axle ${format.length(axle)}`,
      centre: `centre of boat and trailer ${format.length(metres(both))}`,
    },
    fontCss,
  });
  const caption =
    'The boat on her trailer, distances aft of the ball to scale; the trailer is a sketch. Estimated from moments; verify by weighing the coupling.';
  return [{ ...pictureOf(drawing), caption }];
}

function trailerNotes({ brakes }: TrailerFigures): readonly string[] {
  return [
    'Ball load from moments about the axle, level ground, with the boat’s computed centre of mass, fuel and loose gear aboard. Shares of the total: common practice, no source. Verify on a weighbridge.',
    ...('notComputed' in brakes
      ? []
      : [`Brakes by mass thresholds: ${brakes.source}. Estimated; confirm with the authority.`]),
    'Limits of vehicle, axles, tyres and roof are their makers’; look them up on the plates. Nothing here claims compliance.',
  ];
}
