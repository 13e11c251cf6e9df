import { dinero, toSnapshot } from 'dinero.js/bigint';
import type { Decimal } from '../units/index.ts';
import { minorUnits, type Money } from './money.ts';

/**
 * Shares an amount out over weights by the largest remainder: the shares sum to the amount, each within
 * one minor unit of its quota; equal remainders go to the earlier weight.
 *
 * @param weights - not negative; all zero gives the whole to the last (there is nothing to go by)
 * @returns one share a weight, in whole minor units; empty for no weights
 * @source Hamilton's method of apportionment (largest remainder)
 */
export function shareOut(money: Money, weights: readonly Decimal[]): readonly Money[] {
  const { currency } = toSnapshot(money);
  const shares = shareOutMinor(minorUnits(money), atOneScale(weights));
  return shares.map((amount) => dinero({ amount, currency }));
}

function atOneScale(weights: readonly Decimal[]): readonly bigint[] {
  const scale = weights.reduce((most, weight) => (weight.scale > most ? weight.scale : most), 0n);
  return weights.map((weight) => weight.amount * 10n ** (scale - weight.scale));
}

function shareOutMinor(amount: bigint, weights: readonly bigint[]): readonly bigint[] {
  if (weights.length === 0) return [];
  const total = weights.reduce((sum, weight) => sum + weight, 0n);
  if (total === 0n) return weights.map((_, index) => (index === weights.length - 1 ? amount : 0n));
  const sign = amount < 0n ? -1n : 1n;
  const size = amount * sign;
  const shares = weights.map((weight) => (size * weight) / total);
  let left = size - shares.reduce((sum, share) => sum + share, 0n);
  const byRemainder = weights
    .map((weight, index) => ({ index, remainder: (size * weight) % total }))
    .toSorted((a, b) =>
      a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1,
    );
  const extra = new Set<number>();
  for (const { index } of byRemainder) {
    if (left === 0n) break;
    extra.add(index);
    left -= 1n;
  }
  return shares.map((share, index) => sign * (share + (extra.has(index) ? 1n : 0n)));
}
