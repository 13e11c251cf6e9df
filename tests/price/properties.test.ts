import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minorUnits, moneyOf } from '../../src/money/index.ts';
import {
  type Price,
  type PriceRules,
  priceOrder,
  sellingPrice,
  sensitivity,
} from '../../src/price/index.ts';
import { decimalToText } from '../../src/units/index.ts';
import { AUD, decimal } from '../money-words.ts';
import { Ledger, whatDoesNotAddUp } from './adds-up.ts';
import { cents, orders } from './small-orders.ts';

/** Each property is tried on ten thousand orders, at a third of a millisecond each. */
const RUNS = { numRuns: 10_000 };
const LONGEST = 60_000;
const PLAIN: PriceRules = {
  currency: AUD,
  rates: {},
  overhead: decimal('0'),
  margins: {},
  marginFloor: decimal('0'),
  wastage: {},
  taxRate: decimal('0.10'),
  taxRounding: 'document',
};

describe('the price of any order', () => {
  it(
    'adds up from lines to totals and payments, with the tax of the law and the rounding of the shop',
    () => {
      fc.assert(
        fc.property(orders, (input) => {
          expect(whatDoesNotAddUp(input, priceOrder(input))).toEqual([]);
        }),
        RUNS,
      );
    },
    LONGEST,
  );

  it(
    'is the same whatever the sequence of its lines, down to each line',
    () => {
      const byKey = ({ lines, driveAway, margin }: Price) => ({
        ...Object.fromEntries(
          lines.map((line) => [line.key, cents([line.price, line.tax, line.cost])]),
        ),
        driveAway: minorUnits(driveAway),
        margin: minorUnits(margin),
      });
      fc.assert(
        fc.property(orders, (input) => {
          const turned = { ...input, items: input.items.toReversed() };
          expect(byKey(priceOrder(turned))).toEqual(byKey(priceOrder(input)));
        }),
        RUNS,
      );
    },
    LONGEST,
  );

  it(
    'keeps every cent of amounts that a float cannot hold',
    () => {
      fc.assert(
        fc.property(fc.bigInt({ min: 10n ** 16n, max: 10n ** 24n }), (amount) => {
          const fixedPrice = moneyOf({ amount, scale: 2n }, AUD);
          const item = { key: 'a', marginClass: 'hull', materials: [], hours: [], fixedPrice };
          const price = priceOrder({ items: [item], rules: PLAIN, charges: [], payments: [] });
          expect(minorUnits(price.taxable)).toBe(amount);
          expect(minorUnits(price.tax)).toBe((amount * 10n + 50n) / 100n);
        }),
        RUNS,
      );
    },
    LONGEST,
  );
});

describe('a margin on the selling price', () => {
  const margins = fc.nat(9_499).map((amount) => ({ amount: BigInt(amount), scale: 4n }));

  it(
    'is earned at the price that it makes, within half a cent',
    () => {
      fc.assert(
        fc.property(fc.nat(10 ** 9), margins, (amount, margin) => {
          const ledger = new Ledger();
          const cost = moneyOf({ amount: BigInt(amount), scale: 2n }, AUD);
          const price = minorUnits(sellingPrice(cost, margin));
          // |price x (1 - margin) - cost| is at most half a cent x (1 - margin); here in ten-thousandths of a cent.
          const left = 10_000n - margin.amount;
          ledger.within(price * left - BigInt(amount) * 10_000n, left / 2n + 1n, 'margin earned');
          expect(ledger.wrong).toEqual([]);
        }),
        RUNS,
      );
    },
    LONGEST,
  );
});

describe('what the margin becomes', () => {
  it(
    'is lower the more the hours overrun, and next to nothing at the break-even',
    () => {
      fc.assert(
        fc.property(orders, (input) => {
          const ledger = new Ledger();
          const price = priceOrder(input);
          const marginsAt = (...overruns: readonly string[]) =>
            sensitivity(input, price, {
              overruns: overruns.map(decimal),
              materials: {},
              exchange: decimal('0'),
            }).overruns.map(({ margin }) => minorUnits(margin));
          const [none = -1n, little = 1n, much = 1n] = marginsAt('0', '0.1', '0.2');
          ledger.same(none, minorUnits(price.margin), 'no overrun');
          if (little > none || much > little) ledger.wrong.push('the margin rose with the hours');
          const { breakEven } = sensitivity(input, price, WHAT_IF);
          if ('share' in breakEven && breakEven.share.amount < 10n ** 9n) {
            const [left = -1n] = marginsAt(decimalToText(breakEven.share));
            // Half a cent of rounding a line, which the overrun multiplies.
            const most = 5n + (3n * breakEven.share.amount) / 1_000_000n;
            ledger.within(left, most, 'left at the break-even');
          }
          expect(ledger.wrong).toEqual([]);
        }),
        RUNS,
      );
    },
    LONGEST,
  );
});

const WHAT_IF = { overruns: [], materials: {}, exchange: decimal('0.1') };
