import { type Finding, finding } from '../../findings/index.ts';
import { formatterOf } from '../../units/index.ts';
import type { Afloat } from './types.ts';
import type { Figures } from '../types.ts';

/** Growth that the yard allows for against the first limit that growth brings her to; limits past without it are others' to find. */
export function checkGrowth(
  { build }: Pick<Figures, 'build'>,
  { growth: { allowed, first } }: Afloat,
): readonly Finding[] {
  if (!first || allowed <= first.growth) return [];
  const format = formatterOf(build.yard);
  return [
    finding('GROWTH_OVER_LIMIT', build.place(['hull']), {
      received: `${format.mass(allowed)} allowed for over the years`,
      expected: `at most ${format.mass(first.growth)}, where it reaches ${first.name}`,
    }),
  ];
}
