import { Decimal as Oracle } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fractionOfMoney,
  minorUnits,
  moneyOf,
  moneyToDecimal,
  moneyToText,
  roundToUnits,
} from '../../src/money/index.ts';
import { ONE } from '../../src/units/index.ts';
import { AUD, decimal, money } from '../money-words.ts';

Oracle.set({ precision: 60 });
const MODES = {
  'half-up': Oracle.ROUND_HALF_UP,
  'half-down': Oracle.ROUND_HALF_DOWN,
  down: Oracle.ROUND_DOWN,
} as const;
const RULES = ['half-up', 'half-down', 'down'] as const;

describe('a fraction of an amount', () => {
  it('of exactly half a cent goes up, is dropped, or goes with every other fraction, by its rule', () => {
    const tax = (amount: string) =>
      RULES.map((rule) => moneyToText(fractionOfMoney(money(amount), decimal('0.1'), ONE, rule)));
    expect(tax('0.05')).toEqual(['0.01', '0.00', '0.00']);
    expect(tax('0.051')).toEqual(['0.01', '0.01', '0.00']);
    expect(tax('0.049')).toEqual(['0.00', '0.00', '0.00']);
    expect(tax('-0.05')).toEqual(['-0.01', '0.00', '0.00']);
    expect(tax('-0.15')).toEqual(['-0.02', '-0.01', '-0.01']);
  });

  it('is what another library’s decimals give, by every rule', () => {
    const cents = fc.integer({ min: -(10 ** 9), max: 10 ** 9 });
    fc.assert(
      fc.property(
        cents,
        fc.integer({ min: 1, max: 5000 }),
        fc.constantFrom(...RULES),
        (a, b, rule) => {
          const rate = { amount: BigInt(b), scale: 4n };
          const whole = { amount: 10_000n + BigInt(b), scale: 4n };
          const ours = fractionOfMoney(
            moneyOf({ amount: BigInt(a), scale: 2n }, AUD),
            rate,
            whole,
            rule,
          );
          const theirs = new Oracle(a)
            .times(b)
            .div(10_000 + b)
            .toDecimalPlaces(0, MODES[rule]);
          expect(Number(minorUnits(ours))).toBe(theirs.toNumber() + 0);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('an amount in whole units', () => {
  it('goes to the nearest multiple, half away from zero, or always up', () => {
    const to = (amount: string, units: bigint, way: 'nearest' | 'up') =>
      moneyToText(roundToUnits(money(amount), units, way));
    expect([to('12.49', 5n, 'nearest'), to('12.50', 5n, 'nearest')]).toEqual(['10.00', '15.00']);
    expect([to('10.00', 5n, 'up'), to('10.01', 5n, 'up')]).toEqual(['10.00', '15.00']);
    expect([to('-12.50', 5n, 'nearest'), to('-10.01', 5n, 'up')]).toEqual(['-15.00', '-15.00']);
    expect(to('1234.5678', 1n, 'nearest')).toBe('1235.00');
  });
  it('keeps its digits as a plain decimal', () => {
    expect(moneyToDecimal(money('12.3456'))).toEqual({ amount: 123_456n, scale: 4n });
  });
});
