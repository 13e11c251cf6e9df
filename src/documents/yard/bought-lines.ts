import {
  isDue,
  type Overview,
  type PurchaseLine,
  type ShopPlan,
  type SupplierList,
} from '../../plan/index.ts';
import { type BuildPart, isWhole } from '../../resolve/index.ts';
import { addDecimals, type Decimal, ONE, timesRoundedUp, ZERO } from '../../units/index.ts';

/** One line as bought: the part's facts, and what it takes beyond that of the lines before it. */
export interface Bought {
  readonly line: PurchaseLine;
  readonly part: BuildPart | undefined;
  /** Whole pieces, else hundredths; none when what is bought before is enough. */
  readonly quantity: Decimal;
  readonly packs: bigint | undefined;
  readonly now: boolean;
}

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
    const step = part && isWhole(part) ? ONE : HUNDREDTH;
    const steps = timesRoundedUp(after, step) - timesRoundedUp(before, step);
    return {
      line,
      part,
      quantity: { amount: steps * step.amount, scale: step.scale },
      packs: part?.pack && timesRoundedUp(after, part.pack) - timesRoundedUp(before, part.pack),
      now: isDue(line, plan),
    };
  });
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
