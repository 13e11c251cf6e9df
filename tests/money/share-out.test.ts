import { Decimal as Oracle } from 'decimal.js';
import { allocate } from 'dinero.js/bigint';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { currencyOf, minorUnits, moneyOf, shareOut } from '../../src/money/index.ts';
import { type Decimal, decimalToText } from '../../src/units/index.ts';

const AUD = currencyOf('AUD') ?? expect.fail('AUD is a currency');
const cents = (amount: bigint) => moneyOf({ amount, scale: 2n }, AUD);
const share = (amount: bigint, weights: readonly Decimal[]): readonly bigint[] =>
  shareOut(cents(amount), weights).map(minorUnits);
const whole = (...weights: readonly number[]): readonly Decimal[] =>
  weights.map((weight) => ({ amount: BigInt(weight), scale: 0n }));

const weights = fc.array(
  fc.record({
    amount: fc.bigInt({ min: 0n, max: 10n ** 9n }),
    scale: fc.bigInt({ min: 0n, max: 6n }),
  }),
  { minLength: 1, maxLength: 12 },
);
const amount = fc.bigInt({ min: -(10n ** 15n), max: 10n ** 15n });
const sum = (parts: readonly bigint[]): bigint => parts.reduce((total, part) => total + part, 0n);

describe('an amount shared out', () => {
  it('goes by the largest remainder, and to the earlier of two that are equal', () => {
    expect(share(10_000n, whole(1, 1, 1))).toEqual([3334n, 3333n, 3333n]);
    expect(share(101n, whole(5, 3, 2))).toEqual([51n, 30n, 20n]);
    expect(share(10_001n, whole(3333, 3333, 3334))).toEqual([3333n, 3333n, 3335n]);
    expect(share(7n, whole(1, 1, 1, 1, 1))).toEqual([2n, 2n, 1n, 1n, 1n]);
  });
  it('is the same below zero with the sign turned', () => {
    expect(share(-10_000n, whole(1, 1, 1))).toEqual([-3334n, -3333n, -3333n]);
    fc.assert(
      fc.property(amount, weights, (size, by) => {
        expect(share(-size, by)).toEqual(share(size, by).map((part) => -part));
      }),
    );
  });
  it('goes to the last when there is nothing to go by, and to nobody when nobody is there', () => {
    expect(share(5n, whole(0, 0, 0))).toEqual([0n, 0n, 5n]);
    expect(share(5n, [])).toEqual([]);
  });
  it('takes weights of different scales as the decimals that they are', () => {
    const by: readonly Decimal[] = [
      { amount: 4n, scale: 1n },
      { amount: 600n, scale: 3n },
    ];
    expect(share(1001n, by)).toEqual([400n, 601n]);
  });
  it('sums to the amount', () => {
    fc.assert(
      fc.property(amount, weights, (size, by) => {
        expect(sum(share(size, by))).toBe(size);
      }),
    );
  });
  it('keeps each share within one minor unit of its quota, and gives nothing to a weight of zero', () => {
    Oracle.set({ precision: 60 });
    fc.assert(
      fc.property(amount, weights, (size, by) => {
        const total = by.reduce((all, weight) => all.plus(decimalToText(weight)), new Oracle(0));
        fc.pre(!total.isZero());
        for (const [index, part] of share(size, by).entries()) {
          const weight = new Oracle(decimalToText(by[index] ?? { amount: 0n, scale: 0n }));
          const quota = weight.times(String(size)).div(total);
          expect(quota.minus(String(part)).abs().lessThan(1)).toBe(true);
          expect(weight.isZero() && part !== 0n).toBe(false);
        }
      }),
    );
  });
  it('is what a general-purpose library gives where the two rules agree: equal weights', () => {
    fc.assert(
      fc.property(amount, fc.integer({ min: 1, max: 12 }), (size, count) => {
        const positive = size < 0n ? -size : size;
        const ratios = Array.from({ length: count }, () => 1n);
        const theirs = allocate(cents(positive), ratios).map(minorUnits);
        expect(share(positive, whole(...ratios.map(Number)))).toEqual(theirs);
      }),
      { numRuns: 1000 },
    );
  });
});
