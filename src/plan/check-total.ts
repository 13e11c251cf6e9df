import type { FiguredOrder } from '../figures/index.ts';
import { type Finding, finding } from '../findings/index.ts';
import { formatMoney, minorUnits } from '../money/index.ts';

/** Fewer other orders of a hull say nothing about what one of them costs. */
const MIN_OTHERS = 3;
/**
 * How many spreads from the median are far, and what makes the median of the distances a standard deviation.
 *
 * @source Iglewicz and Hoaglin 1993, How to detect and handle outliers: modified z-scores above 3.5; from memory
 */
const FAR = { spreads: 3.5, normal: 1.4826 };
/** Orders that are nearly alike have a spread of this share of their median. Common practice, no source. */
const MIN_SPREAD = 0.15;

/** Findings, by number, for orders that cost far more or less than others of their hull. */
export function checkTotals(entries: readonly FiguredOrder[]): ReadonlyMap<string, Finding> {
  const priced = entries.flatMap(({ order, quoted }) =>
    quoted ? [{ order, quoted, cents: Number(minorUnits(quoted.price.driveAway)) }] : [],
  );
  return new Map(
    priced.flatMap(({ order, quoted, cents }) => {
      const { number, hull } = order.value;
      const others = priced
        .filter((one) => one.order.value.hull === hull && one.order !== order)
        .map((one) => one.cents);
      if (others.length < MIN_OTHERS) return [];
      const middle = median(others);
      const distances = median(others.map((one) => Math.abs(one - middle)));
      const reach = FAR.spreads * Math.max(distances * FAR.normal, MIN_SPREAD * middle);
      if (Math.abs(cents - middle) <= reach) return [];
      const print = (amount: number): string =>
        Math.round(amount / 100).toLocaleString(quoted.build.yard.locale);
      const found = finding('TOTAL_UNLIKE_OTHERS', order.place(['number']), {
        received: formatMoney(quoted.price.driveAway, quoted.build.yard.locale),
        expected: `about ${print(middle)}, give or take ${print(reach)}, by ${others.length} other orders of the ${quoted.build.hull.name}`,
      });
      return [[number, found] as const];
    }),
  );
}

/** The middle one, or the mean of the middle two; the list is not empty. */
function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  const [low = 0, high = low] = sorted.slice(Math.ceil(half) - 1, Math.floor(half) + 1);
  return (low + high) / 2;
}
