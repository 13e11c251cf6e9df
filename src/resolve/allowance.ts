import type { Yard } from '../schema/index.ts';
import { type Decimal, ZERO } from '../units/index.ts';
import type { BuildPart } from './build.ts';

/** Units in which things are counted and not measured off. */
const PIECES: ReadonlySet<string> = new Set(['each', 'set']);

/**
 * What is fetched and bought beyond what the boat takes, as a share: the wastage of the part's class, of what is
 * measured off. Of pieces and sets as many are fetched as she takes: 5 % never makes two tanks of one. The price
 * carries the wastage of its class in either case.
 *
 * @source common practice, no source
 */
export function allowanceOf(
  { unit, materialClass }: Pick<BuildPart, 'unit' | 'materialClass'>,
  { wastage }: Pick<Yard, 'wastage'>,
): Decimal {
  return PIECES.has(unit) ? ZERO : (wastage[materialClass] ?? ZERO);
}
