import {
  addMoney,
  type Money,
  subtractMoney,
  sumMoney,
  roundToUnits,
  zeroMoney,
} from '../money/index.ts';
import { compareDecimals, roundDecimal, ZERO } from '../units/index.ts';
import { chargesOf } from './charges.ts';
import { costOrder } from './cost-order.ts';
import { discountOf } from './discount.ts';
import { rateOf } from './labour.ts';
import { listLines } from './list-lines.ts';
import { shareOfMoney } from './margin.ts';
import { paymentsOf } from './payments.ts';
import { priceLines } from './price-lines.ts';
import type { Price, PriceLine, TaxedAmount, ClassMargin } from './result-types.ts';
import { shownTerms, type Shown } from './shown.ts';
import { taxesOf, tradeInOf, tradeInRelief } from './tax.ts';
import type { PriceInput, PriceItem, PriceRules } from './types.ts';

/**
 * Prices an order: cost, margin, rounding, packages, discount, tax, charges, payments.
 *
 * Every amount is rounded once, at the line or total where it is made; every total is the sum of rounded lines, so the
 * printed lines add up. The sequence of the items changes no line and no total.
 *
 * @source derived: cost / (1 - margin) is the margin-on-sell identity; the tax of a whole document rounded once
 * is the total invoice rule, A New Tax System (Goods and Services Tax) Act 1999 s 9-90
 */
export function priceOrder(input: PriceInput): Price {
  const { items, rules } = input;
  const { currency } = rules;
  const total = (amounts: readonly Money[]): Money => sumMoney(amounts, currency);
  const terms = shownTerms(rules);
  const { lines: costs, purchases, cost } = costOrder(items, rules);
  const listed = listLines(input, costs, terms);
  const off = discountOf(listed, input, terms);
  const taxes = taxesOf(listed, off, rules, terms);
  const discount = terms.withTax ? subtractMoney(off, taxes.discount) : off;
  const lines = priceLines(listed, taxes, discount, input, terms);
  const whole = subtractMoney(total(listed.map(({ shown }) => shown)), off);
  const tradedIn = tradeInOf(input);
  const tradeInTax = tradeInRelief(whole, tradedIn, rules, terms);
  const passedOn = (before: Money) => {
    const charged = chargesOf(before, input, terms);
    return { charged, sum: addMoney(charged.charges, charged.chargesTax) };
  };
  const beside = subtractMoney(passedOn(whole).sum, tradeInTax);
  const rounding = roundTotal(whole, beside, rules, terms);
  const sumOf = (amount: (line: PriceLine) => Money): Money => total(lines.map(amount));
  const listPrice = sumOf((line) => line.price);
  const taxable = addMoney(subtractMoney(listPrice, discount), rounding.before);
  const taxed = subtractMoney(
    sumOf((line) => line.tax),
    taxes.discount,
  );
  const tax = subtractMoney(addMoney(taxed, rounding.tax), tradeInTax);
  const boatWithTax = addMoney(taxable, tax);
  const { charged, sum } = passedOn(taxable);
  const driveAway = addMoney(boatWithTax, sum);
  const margin = subtractMoney(taxable, cost);
  const marginShare = shareOfMoney(margin, taxable);
  return {
    lines,
    purchases,
    rates: ratesOf(items, input),
    classes: classMargins(lines, rules),
    cost,
    listPrice,
    lineRounding: sumOf((line) => line.rounding),
    savings: sumOf((line) => line.saving),
    discount,
    discountTax: taxes.discount,
    discountWithTax: addMoney(discount, taxes.discount),
    rounding,
    taxable,
    tradeInTax,
    tax,
    boatWithTax,
    ...charged,
    driveAway,
    margin,
    ...(marginShare && { marginShare }),
    belowFloor: marginShare === undefined || compareDecimals(marginShare, rules.marginFloor) < 0,
    ...paymentsOf(driveAway, tradedIn, input),
  };
}

function ratesOf(items: readonly PriceItem[], { rules }: PriceInput): Price['rates'] {
  const worked = new Set(items.flatMap(({ hours }) => hours.map(({ stage }) => stage)));
  return Object.keys(rules.rates)
    .filter((stage) => worked.has(stage))
    .map((stage) => ({ stage, rate: rateOf(stage, rules) }));
}

/**
 * What rounding the whole adds or takes off: the taxable price before tax, or the drive-away price after it, whose
 * charges cannot change.
 *
 * @param whole - as shown, after discount
 * @param beside - what the drive-away price holds beside it: charges less tax that is not due
 * @source common practice, no source
 */
function roundTotal(
  whole: Money,
  beside: Money,
  { rounding, taxRounding, currency }: PriceRules,
  { withTax, taxOf }: Shown,
): TaxedAmount {
  const none = zeroMoney(currency);
  if (rounding?.on !== 'total') return { before: none, tax: none, withTax: none };
  const rounded = withTax ? addMoney(whole, beside) : whole;
  const off = subtractMoney(roundToUnits(rounded, rounding.to, rounding.way), rounded);
  const tax =
    taxRounding === 'line' ? taxOf(off) : subtractMoney(taxOf(addMoney(whole, off)), taxOf(whole));
  return withTax
    ? { before: subtractMoney(off, tax), tax, withTax: off }
    : { before: off, tax, withTax: addMoney(off, tax) };
}

/**
 * The margin of every class of the order against its target, to a tenth of a percent: rounding a price to whole units
 * misses no target. In the sequence of the yard's classes.
 *
 * @source derived: margin share = (net - cost) / net
 */
function classMargins(
  lines: readonly PriceLine[],
  { margins, currency }: PriceRules,
): readonly ClassMargin[] {
  return Object.entries(margins).flatMap(([marginClass, target]) => {
    const inClass = lines.filter((line) => line.marginClass === marginClass);
    if (inClass.length === 0) return [];
    const cost = sumMoney(
      inClass.map((line) => line.cost),
      currency,
    );
    const net = sumMoney(
      inClass.map((line) => line.net),
      currency,
    );
    const margin = subtractMoney(net, cost);
    const marginShare = shareOfMoney(margin, net);
    const belowTarget = compareDecimals(roundDecimal(marginShare ?? ZERO, 3), target) < 0;
    return [
      { marginClass, cost, net, margin, ...(marginShare && { marginShare }), target, belowTarget },
    ];
  });
}
