import {
  isDue,
  type Overview,
  type PurchaseLine,
  type ShopPlan,
  type SupplierList,
} from '../plan/index.ts';
import type { BuildPart } from '../resolve/index.ts';
import { addDecimals, type Decimal, ONE, ZERO } from '../units/index.ts';

/** One line as bought: the part's facts, and what it takes beyond that of the lines before it. */
export interface Bought {
  readonly line: PurchaseLine;
  readonly part: BuildPart | undefined;
  /** Whole pieces, else hundredths; none when what is bought before is enough. */
  readonly quantity: Decimal;
  readonly packs: bigint | undefined;
  readonly now: boolean;
}

/** Units of which only whole ones are sold. */
const WHOLE: ReadonlySet<string> = new Set(['each', 'set', 'sheet']);
const HUNDREDTH: Decimal = { amount: 1n, scale: 2n };

/** What all lines of a part buy together is what their sum takes, in pieces as in packs. */
export function boughtLines(
  { lines }: SupplierList,
  parts: ReadonlyMap<string, BuildPart>,
  plan: ShopPlan,
): readonly Bought[] {
  const sums = new Map<string, Decimal>();
  return lines.map((line) => {
    const part = parts.get(line.code);
    const before = sums.get(line.code) ?? ZERO;
    const after = addDecimals(before, line.quantity);
    sums.set(line.code, after);
    const step = part && WHOLE.has(part.unit) ? ONE : HUNDREDTH;
    const steps = timesIn(after, step) - timesIn(before, step);
    return {
      line,
      part,
      quantity: { amount: steps * step.amount, scale: step.scale },
      packs: part?.pack && timesIn(after, part.pack) - timesIn(before, part.pack),
      now: isDue(line, plan),
    };
  });
}

/** used / size, rounded up. */
function timesIn(used: Decimal, size: Decimal): bigint {
  const top = used.amount * 10n ** size.scale;
  const bottom = size.amount * 10n ** used.scale;
  return (top + bottom - 1n) / bottom;
}

/** What each part is, by its code. */
export function partsByCode({ orders }: Overview): ReadonlyMap<string, BuildPart> {
  return new Map(
    orders.flatMap(({ entry: { figures } }) =>
      (figures?.build.items ?? []).flatMap(({ parts }) =>
        parts.map((part): readonly [string, BuildPart] => [part.code, part]),
      ),
    ),
  );
}
