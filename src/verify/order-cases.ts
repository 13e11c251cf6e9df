import type { Figures } from '../figures/index.ts';
import { addMoney, minorUnits, type Money } from '../money/index.ts';
import { divideHalfAway } from '../units/index.ts';
import { checkOf, rowsOf } from './run-checks.ts';
import type { Check, PublishedCase } from './types.ts';

const RULES = 'EN 16931-1, as the published UBL schematron words its rules';

/** Of each order that these rules are for, and of one that others are for. */
const ROWS = { all: 5, withoutTax: 3 };

/**
 * The sums that an electronic invoice of each order must have, worked out in whole cents apart from the price room.
 *
 * An order whose tax is rounded line by line, or whose trade-in lowers the tax, has other rules for its tax: of that the
 * sums without it are checked. One that could not be computed has a row that fails.
 *
 * @source EN 16931-1, BR-CO-10 to BR-CO-17; rounding a whole counts as a line of its own
 */
export function orderChecks(orders: readonly Priced[]): readonly Check[] {
  const rows = orders.flatMap(({ order, figures }) =>
    figures ? casesOf(figures) : [missing(order.file)],
  );
  const wanted = orders.map(({ figures }) => {
    if (!figures) return 1;
    return isPlain(figures) ? ROWS.all : ROWS.withoutTax;
  });
  const all = wanted.reduce<number>((sum, count) => sum + count, 0);
  return [
    ...rows.map((one) => checkOf(one, 'own order added again')),
    checkOf(rowsOf('rows of the orders', all, rows.length), 'own order added again'),
  ];
}

interface Priced {
  readonly order: { readonly file: string };
  readonly figures?: Figures | undefined;
}

const missing = (file: string): PublishedCase => ({
  area: 'money',
  name: `${file}: its sums`,
  source: RULES,
  published: ROWS.all,
  unit: '',
  tolerance: 0,
  ours: () => Number.NaN,
});

const isPlain = ({ build: { yard }, price }: Figures): boolean =>
  yard.tax.rounding === 'document' &&
  yard.tax.fractions === 'half-up' &&
  minorUnits(price.tradeInTax) === 0n;

function casesOf(figures: Figures): readonly PublishedCase[] {
  const { build, price } = figures;
  const { order, yard } = build;
  const lines = sum(price.lines.map((line) => line.price)) + minorUnits(price.rounding.before);
  const allowances = minorUnits(price.discount);
  const charges = minorUnits(price.charges);
  const taxedCharges = sum(build.charges.flatMap(({ amount, taxed }) => (taxed ? [amount] : [])));
  const withoutTax = lines - allowances + charges;
  const { amount, scale } = order.zeroRated ? { amount: 0n, scale: 0n } : yard.tax.rate;
  const tax = divideHalfAway((lines - allowances + taxedCharges) * amount, 10n ** scale);
  const received = sum([price.tradeIn, price.paid]);
  const rule = (rules: string, name: string, wanted: bigint, ours: Money): PublishedCase => ({
    area: 'money',
    name: `${order.number}: ${name}`,
    source: `${RULES}: ${rules}`,
    published: inUnits(wanted),
    unit: yard.currency,
    tolerance: 0,
    ours: () => inUnits(minorUnits(ours)),
  });
  const sums = [
    rule(
      'BR-CO-10, BR-CO-11, BR-CO-13',
      'lines less allowances',
      lines - allowances,
      price.taxable,
    ),
    rule('BR-CO-12', 'charges', charges, price.charges),
    rule('BR-CO-16', 'still due', minorUnits(price.driveAway) - received, price.toPay),
  ];
  if (!isPlain(figures)) return sums;
  return [
    ...sums,
    rule(
      'BR-CO-14, BR-CO-17',
      'tax of the taxed category, rounded once',
      tax,
      addMoney(price.tax, price.chargesTax),
    ),
    rule('BR-CO-15', 'total with tax', withoutTax + tax, price.driveAway),
  ];
}

const sum = (amounts: readonly Money[]): bigint =>
  amounts.reduce((total, amount) => total + minorUnits(amount), 0n);

/** Cents as a number of units, for print: exact for every price that a boat can have. */
const inUnits = (cents: bigint): number => Number(cents) / 100;
