import type { CustomerFigures, CustomerTrailer } from '../../figures/index.ts';
import { formatterOf, kilograms, metres } from '../../units/index.ts';
import type { KeyFigure } from './types.ts';
import { brakeWords } from '../sections/brake-words.ts';

/** What a customer who tows or carries her asks: mass on the ball, length, brakes, the roof. */
export function roadFigures(figures: CustomerFigures): readonly KeyFigure[] {
  return [...trailerFigures(figures), ...roofFigure(figures)];
}

function roofFigure({ build, tow }: CustomerFigures): readonly KeyFigure[] {
  const [onRoof] = tow.roof ?? [];
  if (!onRoof) return [];
  const format = formatterOf(build.yard);
  return [
    {
      label: 'On a roof',
      value: format.mass(kilograms(onRoof.value)),
      method: `The boat without outboard, fuel and loose gear, and the rack, computed; ${onRoof.holds ? 'within' : 'more than'} the ${format.mass(kilograms(onRoof.limit))} that you told us the roof may carry. Weigh her first; the vehicle’s and the rack’s papers decide.`,
    },
  ];
}

function trailerFigures({ build, tow }: CustomerFigures): readonly KeyFigure[] {
  const { trailer } = tow;
  if (!trailer) return [];
  const format = formatterOf(build.yard);
  const { ball, length, width } = trailer;
  return [
    ...('notComputed' in ball
      ? []
      : [
          {
            label: 'Mass on the tow ball',
            value: format.mass(ball.onBall),
            method: `${format.percent(ball.share, 0)} of the whole, estimated from where everything sits, with fuel and loose gear aboard; weighed at handover. ${vehicleWords(trailer)}`,
          },
        ]),
    ...(typeof length === 'number'
      ? [
          {
            label: 'Length on the road',
            value: format.length(length),
            method: `From the ball to the last thing behind it; ${format.length(metres(width.value))} wide. ${brakeWords(trailer)} Estimated; confirm with the authority.`,
          },
        ]
      : []),
  ];
}

function vehicleWords({ vehicle }: CustomerTrailer): string {
  if ('notComputed' in vehicle || vehicle.length === 0)
    return 'Check what your vehicle’s tow ball may carry.';
  return vehicle.every(({ holds }) => holds)
    ? 'Within what you told us that your vehicle may tow; its plate decides.'
    : 'More than what you told us that your vehicle may tow: its plate decides.';
}
