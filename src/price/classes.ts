import { subtractMoney, sumMoney } from '../money/index.ts';
import { compareDecimals, roundDecimal, ZERO } from '../units/index.ts';
import { shareOfMoney } from './margin.ts';
import type { ClassMargin, PriceLine } from './result-types.ts';
import type { PriceRules } from './types.ts';

/**
 * The margin of every class of the order against its target, to a tenth of a percent: rounding a price to whole units
 * misses no target. In the sequence of the yard's classes.
 *
 * @source derived: margin share = (net - cost) / net
 */
export function classMargins(
  lines: readonly PriceLine[],
  { margins, currency }: PriceRules,
): readonly ClassMargin[] {
  return Object.entries(margins).flatMap(([marginClass, target]) => {
    const inClass = lines.filter((line) => line.marginClass === marginClass);
    if (inClass.length === 0) return [];
    const cost = sumMoney(
      inClass.map((line) => line.cost),
      currency,
    );
    const net = sumMoney(
      inClass.map((line) => line.net),
      currency,
    );
    const margin = subtractMoney(net, cost);
    const marginShare = shareOfMoney(margin, net);
    const belowTarget = compareDecimals(roundDecimal(marginShare ?? ZERO, 3), target) < 0;
    return [
      { marginClass, cost, net, margin, ...(marginShare && { marginShare }), target, belowTarget },
    ];
  });
}
