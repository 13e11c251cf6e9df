import { drawOnTrailer } from '../../draw/index.ts';
import type { Figures, TrailerFigures } from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import { type Formatter, formatterOf, known, metres, whyNot } from '../../units/index.ts';
import { brakeWords } from '../sections/brake-words.ts';
import { hullShape, outboardShape } from '../sections/drawing-input.ts';
import { type CaptionedPicture, pictureOf } from '../sections/picture.ts';
import { type Part, picture, section, sentences, smallPrint } from '../blocks/block.ts';
import { towingTables } from './towing-tables.ts';

const NO_VEHICLE =
  'The order does not name the towing vehicle, so no vehicle limits are checked. Ask the customer.';
const MAKERS =
  'Limits of vehicle, axles, {tyres} and roof are their makers’; look them up on the plates. Nothing here claims compliance.';

/** Ball load, winch post, brakes, running gear, width, and what vehicle and roof may carry. */
export function towingSection(figures: Figures, fontCss: string): Part {
  const { tow, build } = figures;
  const format = formatterOf(build.yard);
  const { trailer, roof } = tow;
  return section(
    'towing',
    'Towing',
    ...sentences([
      ...(trailer ? trailerWords(trailer, format) : ['No trailer is in this order.']),
      ...(trailer && !build.order.tow?.vehicle ? [NO_VEHICLE] : []),
      ...(roof ? ['On a roof: the boat completed, without outboard, fuel and loose gear.'] : []),
    ]),
    ...towingTables(figures, format),
    ...(trailer ? trailerPictures(figures, trailer, fontCss) : []).map(picture),
    ...smallPrint([
      ...(trailer ? trailerNotes(trailer) : []),
      ...(trailer || roof ? [MAKERS] : []),
    ]),
  );
}

function trailerWords(trailer: TrailerFigures, format: Formatter): readonly string[] {
  const { ball, winchPost, coupling, length } = trailer;
  return [
    'notComputed' in ball
      ? `Ball load: ${whyNot(ball)}.`
      : `On the ball: ${format.mass(ball.onBall)}, ${format.percent(ball.share, 1)} of ${format.mass(ball.total)}; verify by weighing the coupling.`,
    'notComputed' in winchPost
      ? `Winch post: ${whyNot(winchPost)}.`
      : `Winch post: ${format.length(winchPost.at)} aft of the ball; ${format.percent(trailer.usualShare, 0)}, the usual share, is on the ball at ${format.length(winchPost.usual)}.`,
    brakeWords(trailer),
    `Length when towed: ${known(length, format.length)}.`,
    ...(typeof coupling === 'number'
      ? [`Couplings must stand a D-value of ${format.couplingForce(coupling * 1000)}.`]
      : []),
  ];
}

function trailerPictures(
  { build }: Figures,
  { ball, winchPost, trailer }: TrailerFigures,
  fontCss: string,
): readonly CaptionedPicture[] {
  const { axle } = trailer;
  if (axle === undefined) return [];
  if ('notComputed' in ball || 'notComputed' in winchPost) return [];
  const format = formatterOf(build.yard);
  const hull = hullShape(build);
  const both = axle * (1 - ball.share);
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
      centre: `{centre} of boat and trailer ${format.length(metres(both))}`,
    },
    fontCss,
  });
  const caption =
    'The boat on its trailer, distances aft of the ball to scale; the trailer is a sketch. Estimated from moments; verify by weighing the coupling.';
  return [{ ...pictureOf(drawing), caption }];
}

function trailerNotes({ brakes }: TrailerFigures): readonly string[] {
  return [
    ...methodLines('ballLoad', 'roadRules'),
    ...('notComputed' in brakes ? [] : [`Brakes by mass thresholds: ${brakes.source}.`]),
  ];
}
