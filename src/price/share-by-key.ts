import { type Money, moneyToDecimal, shareOut, sumMoney, zeroMoney } from '../money/index.ts';
import type { Currency } from '../money/index.ts';

/**
 * Shares an amount out over keyed weights by the largest remainder; equal remainders go by key, so that the
 * sequence of the entries changes nothing.
 *
 * @param weights - each zero or more
 * @source Hamilton's method of apportionment (largest remainder)
 */
export function shareByKey(
  money: Money,
  weights: readonly { readonly key: string; readonly weight: Money }[],
): ReadonlyMap<string, Money> {
  const sorted = weights.toSorted((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  const shares = shareOut(
    money,
    sorted.map(({ weight }) => moneyToDecimal(weight)),
  );
  return new Map(sorted.flatMap(({ key }, index) => entryOf(key, shares[index])));
}

const entryOf = (key: string, share: Money | undefined): readonly (readonly [string, Money])[] =>
  share ? [[key, share]] : [];

/**
 * The sum of what several maps hold for a key.
 *
 * @source derived: a sum
 */
export function sumOfKey(
  maps: readonly ReadonlyMap<string, Money>[],
  key: string,
  currency: Currency,
): Money {
  return sumMoney(
    maps.map((map) => map.get(key) ?? zeroMoney(currency)),
    currency,
  );
}
