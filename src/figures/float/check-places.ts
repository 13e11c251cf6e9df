import { type Finding, finding } from '../../findings/index.ts';
import { formatterOf, metres } from '../../units/index.ts';
import { standsOut } from '../../float/index.ts';
import { overlaps, roomOf } from './spaces.ts';
import type { Figures } from '../types.ts';

/** What two boxes may share before anybody is told, m: sizes and places are rounded. Common practice, no source. */
const SLACK = metres(0.02);

/** Things that stand in one another by more than the slack, each two once, at the later one of the order; and out of the hull. */
export function checkPlaces({
  build,
  float,
}: Pick<Figures, 'build' | 'float'>): readonly Finding[] {
  const format = formatterOf(build.yard);
  const form = float.afloat?.body.hull;
  const outside = build.items.flatMap((item) => {
    const room = form && roomOf(item);
    const by = room ? standsOut(form, room) : 0;
    if (by <= SLACK) return [];
    const far = by < Infinity ? `${format.dimension(metres(by))} outside` : 'past the end of';
    return [
      finding('BOX_OUTSIDE_HULL', item.place, {
        received: `${item.name} stands ${far} the ${build.hull.name}`,
        expected: `at most ${format.dimension(SLACK)} out of its skin, and of its sides carried up`,
      }),
    ];
  });
  const inOneAnother = overlaps(build)
    .filter(({ by }) => by > SLACK)
    .map(({ one, other, by }) =>
      finding('ITEMS_IN_ONE_PLACE', other.place, {
        received: `${other.name} stands ${format.dimension(by)} in ${one.name}`,
        expected: `at most ${format.dimension(SLACK)}, as sizes and places are rounded`,
      }),
    );
  return [...inOneAnother, ...outside];
}
