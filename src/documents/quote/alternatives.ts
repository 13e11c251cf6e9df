import type { CustomerAlternative, CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import { isZero, type Money } from '../../money/index.ts';
import { formatterOf, kilograms } from '../../units/index.ts';
import type { Fact, QuoteAlternative } from './types.ts';
import { changeCautions } from '../sections/told.ts';
import { NO_CHANGE, signedMoney, signedSize, speedChange } from '../sections/words.ts';

/** What each alternative changes, as the customer sees it: price, mass, people and what stands in its way. */
export function quoteAlternatives(
  alternatives: readonly CustomerAlternative[],
  { build }: CustomerFigures,
): readonly QuoteAlternative[] {
  return alternatives.map((one) => ({
    name: one.name,
    differences: one.differences ? differenceFacts(one.differences, build) : [],
    cautions: changeCautions(one),
  }));
}

function differenceFacts(
  differences: NonNullable<CustomerAlternative['differences']>,
  { yard, trailer }: CustomerBuild,
): readonly Fact[] {
  const { driveAway, massOnTrailer, people, onBall } = differences;
  const format = formatterOf(yard);
  const mass = format.mass(kilograms(Math.abs(massOnTrailer)));
  return [
    { label: 'Drive-away price', value: moneyChange(driveAway, yard.locale) },
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
