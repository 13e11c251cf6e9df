import type { Figures, TrailerFigures } from '../figures/index.ts';
import { type EstimatePrinter, estimatePrinter, marginTable, textOf } from './estimate-words.ts';
import { type Section, section } from './section.ts';

/** The boat on the road: ball, winch post, brakes and every margin; undefined when she is not carried on any. */
export function towSection({ build, tow }: Figures): Section | undefined {
  const { trailer, roof = [] } = tow;
  if (!trailer && roof.length === 0) return undefined;
  const print = estimatePrinter(build);
  const known = (margins: TrailerFigures['gear']) => ('notComputed' in margins ? [] : margins);
  const margins = trailer
    ? [...known(trailer.share), ...known(trailer.gear), trailer.width, ...known(trailer.vehicle)]
    : [];
  return section('tow', 'Towing', {
    words: trailer ? [...ballWords(trailer, print), ...roadWords(trailer, print)] : [],
    tables: [
      ...(margins.length > 0 ? [marginTable('On the road, estimated', margins, print.format)] : []),
      ...(roof.length > 0 ? [marginTable('On the roof, estimated', roof, print.format)] : []),
    ],
    notes: [
      'Ball load: estimated to the moments about the axle on level ground; verify by weighing the coupling. Masses are computed; verify on a weighbridge, loaded for the road.',
      ...(trailer && !('notComputed' in trailer.brakes)
        ? [
            `Brakes: estimated to ${trailer.brakes.source}; verify with the authority.`,
            ...trailer.brakes.notes.map((note) => `Brakes: ${note}.`),
          ]
        : []),
      'Coupling: estimated to the D-value of UN Regulation 55; verify by the plate of the coupling.',
      'Limits of the vehicle are those that the order gives; verify by the maker’s handbook.',
    ],
  });
}

function ballWords(
  { ball, winchPost, usualShare }: TrailerFigures,
  { format }: EstimatePrinter,
): readonly string[] {
  const share = format.percent(usualShare, 0);
  const onBall = textOf(
    ball,
    (known) =>
      `${format.mass(known.onBall)}, ${format.percent(known.share, 1)} of ${format.mass(known.total)}`,
  );
  const post = textOf(
    winchPost,
    ({ at, usual, canBeUsual }) =>
      `${format.length(at)} aft of the ball; at ${format.length(usual)} the usual ${share} would be on it${canBeUsual ? '' : ', which the trailer does not allow'}`,
  );
  return [`On the ball: ${onBall}.`, `Winch post: ${post}.`];
}

function roadWords(
  { trailer, brakes, gear, vehicle, length, coupling, place }: TrailerFigures,
  { format }: EstimatePrinter,
): readonly string[] {
  const needed = textOf(brakes, ({ braked }) => braked);
  const lacks = { axle: lackOf(gear), vehicle: lackOf(vehicle) };
  return [
    `Brakes that the rules of ${place} ask for: ${needed}; the trailer has: ${trailer.brakes}.`,
    `Length on the road: ${textOf(length, format.length)}. D-value of the coupling: ${textOf(coupling, (known) => `at least ${format.number(known, 2)} kN`)}.`,
    ...(lacks.axle === '' ? [] : [`Axles and tyres: ${lacks.axle}.`]),
    ...(lacks.vehicle === '' ? [] : [`Towing vehicle: ${lacks.vehicle}.`]),
  ];
}

const lackOf = (margins: TrailerFigures['gear']): string =>
  'notComputed' in margins ? `not computed: ${margins.notComputed}` : '';
