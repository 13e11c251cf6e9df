import type { Build } from '../resolve/index.ts';
import { formatterOf, metres, type Metres } from '../units/index.ts';

/** Freeboard to keep where the hull file does not say, m; common practice, no source. */
const LEAST_FREEBOARD = metres(0.25);

/** Height that the lowest opening must keep above the water, loaded. */
export const leastFreeboardOf = ({ hull }: Pick<Build, 'hull'>): Metres =>
  hull.performance.leastFreeboard ?? LEAST_FREEBOARD;

/** What stands in for facts of the hull that nobody gave, where people and water are concerned. */
export function crewDefaults({ hull }: Pick<Build, 'hull'>): readonly string[] {
  const { openings, seats, ratings, cockpit } = hull;
  return [
    ...(openings.length === 0 ? ['water comes in at the transom and the sheer alone'] : []),
    ...(seats.length < ratings.people
      ? ['seats along the middle, at the height of the sheer']
      : []),
    ...(cockpit ? [] : ['a cockpit as broad as the sheer']),
  ];
}

/** The same for all that a boat may carry rests on. */
export const defaultsUsed = ({ hull, yard }: Pick<Build, 'hull' | 'yard'>): readonly string[] => [
  ...(hull.performance.leastFreeboard === undefined
    ? [`least freeboard ${formatterOf(yard).dimension(LEAST_FREEBOARD)}`]
    : []),
  ...crewDefaults({ hull }),
];
