import { type Finding, finding } from '../../findings/index.ts';
import { formatterOf, metres } from '../../units/index.ts';
import { overlaps } from './spaces.ts';
import type { Figures } from '../types.ts';

/** What two boxes may share before anybody is told, m: sizes and places are rounded. Common practice, no source. */
const SLACK = metres(0.02);

/** Things that stand in one another by more than the slack, each two once, at the later one of the order. */
export function checkPlaces({ build }: Pick<Figures, 'build'>): readonly Finding[] {
  const format = formatterOf(build.yard);
  return overlaps(build)
    .filter(({ by }) => by > SLACK)
    .map(({ one, other, by }) =>
      finding('ITEMS_IN_ONE_PLACE', other.place, {
        received: `${other.name} stands ${format.dimension(by)} in ${one.name}`,
        expected: `at most ${format.dimension(SLACK)}, as sizes and places are rounded`,
      }),
    );
}
