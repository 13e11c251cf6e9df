import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planOrders } from '../../src/plan/index.ts';
import { asPlanInput } from '../../src/verify/cases-plan.ts';
import {
  GRAHAM_NINE,
  GRAHAM_SEVEN,
  type Instance,
  JOHNSON,
  TEN_ACTIVITIES,
} from '../../src/verify/instances-table.ts';
import { shortestByEnumeration } from './enumerate.ts';

const lengthOf = (instance: Instance, tries: number): number => {
  const input = asPlanInput(instance, tries);
  const plan = input && planOrders(input);
  return plan && 'orders' in plan ? Math.max(...plan.orders.map(({ end }) => end)) : Number.NaN;
};

describe('published instances', () => {
  it.each([
    ['ten activities', TEN_ACTIVITIES, 21],
    ['two machines', JOHNSON, 47],
    ['nine tasks', GRAHAM_NINE, 12],
    ['seven tasks', GRAHAM_SEVEN, 9],
  ] as const)('have, by trying every sequence, the length published: %s', (_, instance, length) => {
    expect(shortestByEnumeration(instance)).toBe(length);
  });

  it('show where the rule alone is not enough: longest first takes 11, the search finds 9', () => {
    expect(lengthOf(GRAHAM_SEVEN, 0)).toBe(11);
    expect(lengthOf(GRAHAM_SEVEN, 200)).toBe(9);
  });
});

describe('any small instance', () => {
  const instances = fc
    .record({
      activities: fc.array(
        fc.record({
          duration: fc.integer({ min: 1, max: 5 }),
          first: fc.integer({ min: 0, max: 3 }),
          second: fc.integer({ min: 0, max: 2 }),
        }),
        { minLength: 1, maxLength: 6 },
      ),
      pairs: fc.array(fc.tuple(fc.nat(5), fc.nat(5)), { maxLength: 6 }),
    })
    .map(({ activities, pairs }): Instance => ({
      durations: activities.map(({ duration }) => duration),
      needs: activities.map(({ first, second }) => [first, second]),
      capacities: [3, 2],
      precedences: pairs
        .filter(([a, b]) => a < b && b < activities.length)
        .map(([a, b]) => [a + 1, b + 1] as const),
    }));

  it('is never planned shorter than can be, and by the search nearly as short', () => {
    fc.assert(
      fc.property(instances, (instance) => {
        const shortest = shortestByEnumeration(instance);
        expect(lengthOf(instance, 0)).toBeGreaterThanOrEqual(shortest);
        const searched = lengthOf(instance, 400);
        expect(searched).toBeGreaterThanOrEqual(shortest);
        expect(searched).toBeLessThanOrEqual(shortest + 1);
      }),
      { numRuns: 60 },
    );
  });
});
