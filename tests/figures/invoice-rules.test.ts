import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { loadWorkspace } from '../../src/cli/load.ts';
import { minorUnits, type Money } from '../../src/money/index.ts';

const { orders } = loadWorkspace(fileURLToPath(new URL('../../', import.meta.url)));
const sum = (amounts: readonly Money[]): bigint =>
  amounts.reduce((total, amount) => total + minorUnits(amount), 0n);

// EN 16931-1, BR-CO-10 to BR-CO-17, as the published UBL schematron words them; rounding a whole is a line of its own.
it.each(orders.map(({ order, figures }) => [order.value.number, figures?.price] as const))(
  'the sums of %s are those that an electronic invoice must have',
  (_, price) => {
    if (!price) throw new Error('no figures');
    const lines = sum(price.lines.map((line) => line.price)) + minorUnits(price.rounding.before);
    const allowances = minorUnits(price.discount);
    const charges = minorUnits(price.charges);
    const withoutTax = lines - allowances + charges;
    // One category is taxed, at 10 %; charges stand in another, without tax.
    const tax = ((lines - allowances) * 10n + 50n) / 100n;
    expect(minorUnits(price.tax)).toBe(tax);
    expect(minorUnits(price.driveAway)).toBe(withoutTax + tax);
    expect(minorUnits(price.toPay)).toBe(withoutTax + tax - sum([price.tradeIn, price.paid]));
    expect(sum(price.payments.map(({ amount }) => amount))).toBe(withoutTax + tax);
  },
);
