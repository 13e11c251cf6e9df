import type { CustomerAlternative, CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import { formatterOf } from '../../units/index.ts';
import { type Block, factList, type Field, under, words } from '../blocks/block.ts';
import { changeCautions } from '../sections/told.ts';
import { changeText } from '../sections/fact-words.ts';

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
    ...alternatives.map((one) =>
      under(
        'alternative',
        one.name,
        ...(one.differences ? [factList('effects', differenceFacts(one.differences, build))] : []),
        ...words('known', ...changeCautions(one)),
      ),
    ),
  ];
}

function differenceFacts(
  {
    driveAway,
    massOnTrailer,
    people,
    speed,
    onBall,
  }: NonNullable<CustomerAlternative['differences']>,
  { yard, trailer }: CustomerBuild,
): readonly Field[] {
  const format = formatterOf(yard);
  const changes = {
    '{Final price}': driveAway,
    [trailer ? 'Mass to tow' : 'Mass, ready']: massOnTrailer,
    'People it may carry': people,
    'Full speed, loaded': speed,
    ...(onBall && { [onBall.now.label]: onBall }),
  };
  return Object.entries(changes).map(([label, change]) => ({
    label,
    value: changeText(change, format),
  }));
}
