import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createCalendar,
  type PartNeed,
  type Plan,
  planOrders,
  purchaseList,
  type WorkCalendar,
} from '../../src/plan/index.ts';
import { decimalToNumber, parseDecimal, ZERO } from '../../src/units/index.ts';
import { CALENDAR, day, order, shop, stage } from './shop.ts';

const calendar = createCalendar(CALENDAR) as WorkCalendar;
const boats = ['2611', '2612'].map((number, index) =>
  order(number, [stage('laminate', 8), stage('engine', 4, { after: ['laminate'] })], {
    release: day(7 * index),
  }),
);
const plan = planOrders(shop(boats)) as Plan;

const need = (number: string, at: string, code: string, quantity: string): PartNeed => ({
  order: number,
  stage: at,
  supplier: code.startsWith('RE') ? 'redstart' : 'tern',
  code,
  quantity: parseDecimal(quantity) ?? ZERO,
});

describe('the purchase list', () => {
  const lists = purchaseList(
    plan,
    [
      need('2612', 'engine', 'RE-2101', '1'),
      need('2611', 'engine', 'RE-2101', '1'),
      need('2611', 'engine', 'RE-2404', '3'),
      need('2611', 'laminate', 'TC-0101', '20.3'),
      need('2611', 'laminate', 'TC-0101', '0.7'),
      need('2613', 'laminate', 'TC-0101', '99'),
    ],
    { redstart: 5, tern: 2 },
    calendar,
    day(0),
  );

  it('has one list a supplier, the most urgent part first', () => {
    expect(lists.map(({ supplier, lines }) => [supplier, lines.map(({ code }) => code)])).toEqual([
      ['redstart', ['RE-2101', 'RE-2404', 'RE-2101']],
      ['tern', ['TC-0101']],
    ]);
  });

  it('needs a part on the day its stage starts, and orders it the lead time before', () => {
    expect(lists[0]?.lines.map(({ needBy, orderBy, late }) => [needBy, orderBy, late])).toEqual([
      [day(1), day(-4), true],
      [day(1), day(-4), true],
      [day(8), day(3), false],
    ]);
  });

  it('adds up one part for one day, and leaves out what is not planned', () => {
    const [line] = lists[1]?.lines ?? [];
    expect(line && decimalToNumber(line.quantity)).toBe(21);
    expect(line?.orders).toEqual(['2611']);
  });

  it('buys as much as is needed, whatever the suppliers', () => {
    const needs = fc.array(
      fc.record({
        number: fc.constantFrom('2611', '2612'),
        at: fc.constantFrom('laminate', 'engine'),
        code: fc.constantFrom('RE-1', 'TC-1', 'TC-2'),
        quantity: fc.integer({ min: 0, max: 9999 }),
      }),
    );
    fc.assert(
      fc.property(needs, (list) => {
        const wanted = list.map(({ number, at, code, quantity }) =>
          need(number, at, code, String(quantity)),
        );
        const bought = purchaseList(plan, wanted, {}, calendar, day(0))
          .flatMap(({ lines }) => lines)
          .reduce((sum, { quantity }) => sum + decimalToNumber(quantity), 0);
        expect(bought).toBe(list.reduce((sum, { quantity }) => sum + quantity, 0));
      }),
    );
  });
});
