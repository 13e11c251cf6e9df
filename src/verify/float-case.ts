import type { PublishedCase } from './types.ts';

/** A case of the area `float`; the tolerance is a share of the value unless `within` gives it in the unit. */
export function floatCase(
  name: string,
  source: string,
  published: number,
  unit: string,
  ours: () => number | undefined,
  { share = 1e-9, within = Math.abs(published) * share }: { share?: number; within?: number } = {},
): PublishedCase {
  return {
    area: 'float',
    name,
    source,
    published,
    unit,
    tolerance: within,
    ours: () => ours() ?? Number.NaN,
  };
}
