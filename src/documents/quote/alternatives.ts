import type { CustomerAlternative, CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import { isZero, type Money } from '../../money/index.ts';
import { formatterOf, kilograms } from '../../units/index.ts';
import { type Block, type Field, words } from '../blocks/block.ts';
import { changeCautions } from '../sections/told.ts';
import { NO_CHANGE, signedMoney, signedSize, speedChange } from '../sections/words.ts';

/** What each alternative changes, as the customer sees it: price, mass, people and what stands in its way. */
export function optionsToConsider(
  alternatives: readonly CustomerAlternative[],
  { build }: CustomerFigures,
): readonly Block[] {
  if (alternatives.length === 0) return [];
  return [
    ...words(
      'plain',
      'Each is this boat with one change, computed in the same way. Ask us to quote it. People: as many as the rated load takes. Speeds: estimated with everyone aboard; a trial confirms them.',
    ),
    ...alternatives.map((one): Block => ({
      block: 'under',
      style: 'alternative',
      heading: one.name,
      blocks: [
        ...(one.differences
          ? [
              {
                block: 'facts',
                style: 'effects',
                facts: differenceFacts(one.differences, build),
              } as const,
            ]
          : []),
        ...words('known', ...changeCautions(one)),
      ],
    })),
  ];
}

function differenceFacts(
  differences: NonNullable<CustomerAlternative['differences']>,
  { yard, trailer }: CustomerBuild,
): readonly Field[] {
  const { driveAway, massOnTrailer, people, onBall } = differences;
  const format = formatterOf(yard);
  const mass = format.mass(kilograms(Math.abs(massOnTrailer)));
  return [
    { label: '{Final price}', value: moneyChange(driveAway, yard.locale) },
    {
      label: trailer ? 'Mass to tow' : 'Mass, ready',
      value: numberChange(massOnTrailer, mass, 0.5),
    },
    {
      label: 'People it may carry',
      value: numberChange(people, format.number(Math.abs(people), 0), 0.5),
    },
    { label: 'Full speed, loaded', value: speedChange(differences, format) },
    ...(onBall === undefined
      ? []
      : [
          {
            label: 'Mass on the tow ball',
            value: numberChange(onBall, format.mass(kilograms(Math.abs(onBall))), 0.5),
          },
        ]),
  ];
}

function moneyChange(change: Money, locale: string): string {
  return isZero(change) ? NO_CHANGE : signedMoney(change, locale);
}

/** "+12 kg", "−12 kg"; "no change" below what is printed. */
function numberChange(change: number, size: string, least: number): string {
  if (Math.abs(change) < least) return NO_CHANGE;
  return signedSize(change, size);
}
