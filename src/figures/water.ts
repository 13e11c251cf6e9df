import type { Build } from '../resolve/index.ts';
import { FRESH_WATER, SEA_WATER, type Water } from '../performance/index.ts';

/** A water, by its name in the files. */
export interface NamedWater extends Water {
  readonly name: 'fresh' | 'sea';
}

const FRESH: NamedWater = { name: 'fresh', ...FRESH_WATER };
const SEA: NamedWater = { name: 'sea', ...SEA_WATER };
const BY_USE = { fresh: [FRESH], sea: [SEA], both: [FRESH, SEA] } as const;

/** The waters that the boat is used in: one, or fresh and sea. */
export const watersOf = ({ order }: Pick<Build, 'order'>): readonly [NamedWater, ...NamedWater[]] =>
  BY_USE[order.boat.water];

/**
 * What comes of it in the worse of the waters that the boat is used in.
 *
 * @param compute - called once for each water
 * @param badness - the greater, the worse; of two that are as bad the first
 */
export function inWorseWater<Result>(
  build: Pick<Build, 'order'>,
  compute: (water: NamedWater) => Result,
  badness: (result: Result) => number,
): Result {
  const [first, ...others] = watersOf(build);
  return others
    .map(compute)
    .reduce((worst, one) => (badness(one) > badness(worst) ? one : worst), compute(first));
}
