import { type CustomerFigures, type CustomerTrailer, isNotComputed } from '../../figures/index.ts';
import { formatterOf, kilograms } from '../../units/index.ts';
import { brakeWords } from '../sections/brake-words.ts';
import { figureOf } from '../sections/fact-words.ts';
import { found, type FoundFigure } from '../sections/method-notes.ts';

/** What a customer who tows or carries the boat asks: mass on the ball, length, brakes, the roof. */
export function roadFigures(figures: CustomerFigures): readonly FoundFigure[] {
  return [...trailerFigures(figures), ...roofFigure(figures)];
}

function roofFigure({ build, tow }: CustomerFigures): readonly FoundFigure[] {
  const [onRoof] = tow.roof ?? [];
  if (!onRoof) return [];
  const format = formatterOf(build.yard);
  return [
    found(
      'On a roof',
      format.mass(kilograms(onRoof.value)),
      `The boat without outboard, fuel and loose gear, with the rack: ${onRoof.holds ? 'within' : 'more than'} the ${format.mass(kilograms(onRoof.limit))} that you told us the roof may carry. Weigh it first, and check the papers of vehicle and rack.`,
      'masses',
      'roadRules',
    ),
  ];
}

function trailerFigures({ build, facts, tow }: CustomerFigures): readonly FoundFigure[] {
  const { trailer } = tow;
  if (!trailer) return [];
  const format = formatterOf(build.yard);
  const { ball, widest } = trailer;
  const { onBall, length } = facts.tow;
  return [
    ...('notComputed' in ball || !onBall
      ? []
      : [
          figureOf(
            onBall,
            format,
            `${format.percent(ball.share, 0)} of the mass to tow, with fuel and loose gear aboard; weighed at handover. ${vehicleWords(trailer)}`,
          ),
        ]),
    ...(length && !isNotComputed(length.says)
      ? [
          figureOf(
            length,
            format,
            `From the tow ball to the very back; ${format.length(widest)} wide. ${brakeWords(trailer)}`,
          ),
        ]
      : []),
  ];
}

function vehicleWords({ vehicle }: CustomerTrailer): string {
  if ('notComputed' in vehicle || vehicle.length === 0)
    return 'Check what your vehicle’s tow ball may carry.';
  return vehicle.every(({ holds }) => holds)
    ? 'Within the limits you gave us; check the vehicle’s plate.'
    : 'More than the limits you gave us: check the vehicle’s plate.';
}
