import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createCalendar,
  type PartNeed,
  type Plan,
  planOrders,
  takeFromShelf,
  type WorkCalendar,
} from '../../src/plan/index.ts';
import { decimalToNumber, parseDecimal, ZERO } from '../../src/units/index.ts';
import { CALENDAR, day, order, shop, stage } from './shop.ts';

const calendar = createCalendar(CALENDAR) as WorkCalendar;
const boats = ['2611', '2612'].map((number, index) =>
  order(number, [stage('laminate', 8)], { release: day(7 * index) }),
);
const plan = planOrders(shop(boats)) as Plan;
const decimal = (text: string) => parseDecimal(text) ?? ZERO;
const need = (number: string, code: string, quantity: string): PartNeed => ({
  order: number,
  stage: 'laminate',
  supplier: 'tern',
  code,
  quantity: decimal(quantity),
});

describe('the shelf', () => {
  it('serves the stage that starts first, and is used once', () => {
    const { needs, taken } = takeFromShelf(
      plan,
      [need('2612', 'TC-1', '8'), need('2611', 'TC-1', '5'), need('2613', 'TC-1', '99')],
      new Map([['TC-1', decimal('7.5')]]),
      calendar,
    );
    expect(needs.map((one) => [one.order, decimalToNumber(one.quantity)])).toEqual([['2612', 5.5]]);
    expect(taken.map((one) => [one.code, decimalToNumber(one.quantity), one.orders])).toEqual([
      ['TC-1', 7.5, ['2611', '2612']],
    ]);
  });

  it('and what is bought are together what is needed, and it gives no more than it holds', () => {
    const quantities = fc.array(
      fc.record({
        number: fc.constantFrom('2611', '2612'),
        code: fc.constantFrom('TC-1', 'TC-2'),
        quantity: fc.integer({ min: 0, max: 999 }),
      }),
    );
    fc.assert(
      fc.property(quantities, fc.integer({ min: 0, max: 2000 }), (list, held) => {
        const wanted = list.map(({ number, code, quantity }) =>
          need(number, code, String(quantity)),
        );
        const shelf = new Map([['TC-1', decimal(String(held))]]);
        const { needs, taken } = takeFromShelf(plan, wanted, shelf, calendar);
        const sum = (all: readonly Pick<PartNeed, 'quantity'>[]): number =>
          all.reduce((total, { quantity }) => total + decimalToNumber(quantity), 0);
        expect(sum(needs) + sum(taken)).toBe(sum(wanted));
        expect(sum(taken)).toBeLessThanOrEqual(held);
        const first = wanted.filter(({ code }) => code === 'TC-1');
        expect(sum(taken)).toBe(Math.min(held, sum(first)));
      }),
    );
  });
});
