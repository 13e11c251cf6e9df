import { expect, it } from 'vitest';
import { zeroMoney } from '../../src/money/index.ts';
import { orderChecks } from '../../src/verify/index.ts';
import { orders } from '../demonstration/workspace.ts';

const figures = orders.flatMap((entry) => entry.figures ?? []);

it('the sums of every demonstration order are those that an electronic invoice must have', () => {
  const checks = orderChecks(figures);
  expect(checks).toHaveLength(orders.length * 5);
  expect(checks.filter(({ pass }) => !pass)).toEqual([]);
});

it('the check can fail: a price whose tax was forgotten breaks its rules', () => {
  const [one] = figures;
  if (!one) throw new Error('no figures');
  const price = { ...one.price, tax: zeroMoney(one.build.currency) };
  const failed = orderChecks([{ ...one, price }]).filter(({ pass }) => !pass);
  expect(failed.map(({ source }) => source)).toEqual([expect.stringContaining('BR-CO-17')]);
});
