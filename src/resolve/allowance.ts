import type { Yard } from '../schema/index.ts';
import { addDecimals, type Decimal, multiplyDecimals, ONE, ZERO } from '../units/index.ts';
import type { BuildPart } from './build.ts';

/** Units in which things are counted and not measured off. */
const PIECES: ReadonlySet<string> = new Set(['each', 'set']);

/** True of a part of which only whole ones are sold: pieces, sets, and sheets that are then cut. */
export const isWhole = ({ unit }: Pick<BuildPart, 'unit'>): boolean =>
  PIECES.has(unit) || unit === 'sheet';

/**
 * What is fetched and bought beyond what the boat takes, as a share: the wastage of the part's class, of what is
 * measured off. Of pieces and sets as many are fetched as it takes: 5 % never makes two tanks of one. The price
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

/** What is fetched and bought of a part: what the boat takes, with its allowance. */
export const toFetch = (part: BuildPart, yard: Pick<Yard, 'wastage'>): Decimal =>
  multiplyDecimals(part.quantity, addDecimals(ONE, allowanceOf(part, yard)));
