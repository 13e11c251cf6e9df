import { expect, it } from 'vitest';
import { zeroMoney } from '../../src/money/index.ts';
import { orderChecks } from '../../src/verify/index.ts';
import { orders } from '../demonstration/workspace.ts';

const failed = (given: Parameters<typeof orderChecks>[0]) =>
  orderChecks(given).filter(({ pass }) => !pass);

it('the sums of every demonstration order are those that an electronic invoice must have', () => {
  const checks = orderChecks(orders);
  expect(checks).toHaveLength(orders.length * 5 + 1);
  expect(checks.filter(({ pass }) => !pass)).toEqual([]);
  expect(new Set(checks.map(({ tier }) => tier))).toEqual(new Set(['own order added again']));
});

it('the check can fail: a price whose tax was forgotten breaks its rules', () => {
  const [one] = orders;
  if (!one?.figures) throw new Error('no figures');
  const { figures } = one;
  const price = { ...figures.price, tax: zeroMoney(figures.build.currency) };
  const told = failed([{ ...one, figures: { ...figures, price } }]);
  expect(told.map(({ source }) => source)).toEqual([expect.stringContaining('BR-CO-17')]);
});

it('an order that could not be computed does not vanish: its row fails', () => {
  const [one, other] = orders;
  if (!one || !other) throw new Error('no orders');
  const told = failed([{ order: one.order }, other]);
  expect(told.map(({ name }) => name)).toEqual([`${one.order.file}: its sums`]);
});

it('an order whose tax is rounded line by line has the sums that no tax is in', () => {
  const [one] = orders;
  if (!one?.figures) throw new Error('no figures');
  const { build } = one.figures;
  const tax = { ...build.yard.tax, rounding: 'line' as const };
  const figures = { ...one.figures, build: { ...build, yard: { ...build.yard, tax } } };
  expect(orderChecks([{ ...one, figures }])).toHaveLength(4);
  expect(failed([{ ...one, figures }])).toEqual([]);
});
