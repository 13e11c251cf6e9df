import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createCalendar,
  type PartNeed,
  type Plan,
  planOrders,
  planWithShelf,
  takeFromShelf,
  type WorkCalendar,
} from '../../src/plan/index.ts';
import { decimalToNumber, parseDecimal, ZERO } from '../../src/units/index.ts';
import { needKey } from '../../src/plan/shelf.ts';
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

describe('the wait for a supplier', () => {
  const [first, second] = ['2611', '2612'] as const;
  /** Two boats in one mould, the first promised earlier; parts are ordered today and come on the tenth day. */
  const startsWith = (
    held: string,
    needs = [need(first, 'TC-1', '5'), need(second, 'TC-1', '8')],
  ) => {
    const inputFor = (onShelf: ReadonlySet<string>) =>
      shop(
        [first, second].map((number, index) =>
          order(
            number,
            [
              stage('laminate', 8, {
                mould: 'dunlin',
                parts: needs
                  .filter((one) => one.order === number && !onShelf.has(needKey(one)))
                  .map(({ supplier }) => ({ name: supplier, arrives: day(9) })),
              }),
            ],
            { promised: day(20 + index) },
          ),
        ),
      );
    const made = planWithShelf(inputFor, needs, new Map([['TC-1', decimal(held)]]), calendar);
    if ('notComputed' in made) throw new Error(made.notComputed);
    const starts = made.plan.orders.map(({ order: { number }, start }) => [
      number,
      calendar.dateOf(start + 1e-6),
    ]);
    return { starts: Object.fromEntries(starts) as Record<string, string>, ...made };
  };

  it('is spared when the shelf holds a part in full, and not when a little is missing', () => {
    expect(startsWith('5').starts).toEqual({ [first]: day(0), [second]: day(9) });
    expect(startsWith('4.99').starts[first]).toBe(day(9));
  });

  it('is spared to the next when the shelf still holds its whole need, and not just below it', () => {
    expect(startsWith('13').starts).toEqual({ [first]: day(0), [second]: day(1) });
    expect(startsWith('12.99').starts[second]).toBe(day(9));
  });

  it('is not spared for one of two items of a stage that the shelf holds, when it does not hold the other', () => {
    const both = [need(first, 'TC-1', '5'), need(first, 'TC-1', '1'), need(second, 'TC-2', '1')];
    expect(startsWith('5.5', both).starts[first]).toBe(day(9));
    expect(startsWith('6', both).starts[first]).toBe(day(0));
  });

  it('and what is bought go by one share of the shelf, dated by the plan that counts', () => {
    const { shelf } = startsWith('5');
    expect(shelf.needs.map((one) => [one.order, decimalToNumber(one.quantity)])).toEqual([
      [second, 8],
    ]);
    expect(shelf.taken).toMatchObject([{ code: 'TC-1', needBy: day(0), orders: [first] }]);
    expect(decimalToNumber(shelf.left.get('TC-1') ?? ZERO)).toBe(0);
  });
});
