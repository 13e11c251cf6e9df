import {
  addMoney,
  divideToMinorUnit,
  isNegative,
  minorUnits,
  type Money,
  moneyOf,
  roundToMinorUnit,
  shareOut,
  subtractMoney,
  sumMoney,
  timesDecimal,
  zeroMoney,
} from '../money/index.ts';
import {
  addDecimals,
  compareDecimals,
  type Decimal,
  divideHalfAway,
  multiplyDecimals,
  ONE,
  subtractDecimals,
  ZERO,
} from '../units/index.ts';
import type { Price, PriceInput, PriceItem, PriceLine, PriceRules } from './types.ts';

type CostedLine = Omit<PriceLine, 'tax' | 'priceWithTax'>;

/**
 * Prices an order: cost, margin, discount, tax, charges, payments.
 *
 * Each of a line's materials, labour and overhead is rounded once to whole minor units, half away from zero;
 * the line's price is rounded once more. Every total is the sum of rounded lines, so the printed lines add up.
 *
 * @source derived: cost / (1 - margin) is the margin-on-sell identity; the tax of a whole document rounded once
 * is the total invoice rule, A New Tax System (Goods and Services Tax) Act 1999 s 9-90
 */
export function priceOrder({ items, rules, charges, discount, payments }: PriceInput): Price {
  const { currency } = rules;
  const costed = items.map((item) => costLine(item, rules));
  const cost = sumMoney(
    costed.map((line) => line.cost),
    currency,
  );
  const listPrice = sumMoney(
    costed.map((line) => line.price),
    currency,
  );
  const off = discountOf(listPrice, discount, rules);
  const taxable = subtractMoney(listPrice, off);
  const taxes = taxLines(
    costed.map((line) => line.price),
    off,
    rules,
  );
  const lines = costed.map((line, index) => {
    const tax = taxes.lines[index] ?? zeroMoney(currency);
    return { ...line, tax, priceWithTax: addMoney(line.price, tax) };
  });
  const boatWithTax = addMoney(taxable, taxes.total);
  const charged = sumMoney(
    charges.map((charge) => roundToMinorUnit(charge.amount)),
    currency,
  );
  const driveAway = addMoney(boatWithTax, charged);
  const margin = subtractMoney(taxable, cost);
  const marginShare = shareOfMoney(margin, taxable);
  const due = shareOut(
    driveAway,
    payments.map((payment) => payment.share),
  );
  return {
    lines,
    cost,
    listPrice,
    discount: off,
    discountTax: taxes.discount,
    discountWithTax: addMoney(off, taxes.discount),
    taxable,
    tax: taxes.total,
    boatWithTax,
    charges: charged,
    driveAway,
    margin,
    ...(marginShare && { marginShare }),
    belowFloor: marginShare === undefined || compareDecimals(marginShare, rules.marginFloor) < 0,
    payments: payments.map(({ name, when }, index) => ({
      name,
      when,
      amount: due[index] ?? zeroMoney(currency),
    })),
  };
}

function costLine(item: PriceItem, rules: PriceRules): CostedLine {
  const { currency } = rules;
  const bought = item.materials.map((material) =>
    timesDecimal(
      material.unitCost,
      multiplyDecimals(
        material.quantity,
        addDecimals(ONE, rules.wastage[material.materialClass] ?? ZERO),
      ),
    ),
  );
  const worked = item.hours.map((work) =>
    timesDecimal(moneyOf(rules.rates[work.stage] ?? ZERO, currency), work.hours),
  );
  const hours = item.hours.reduce((total, work) => addDecimals(total, work.hours), ZERO);
  const materials = roundToMinorUnit(sumMoney(bought, currency));
  const labour = roundToMinorUnit(sumMoney(worked, currency));
  const overhead = roundToMinorUnit(timesDecimal(moneyOf(rules.overhead, currency), hours));
  const other = roundToMinorUnit(item.otherCost ?? zeroMoney(currency));
  const cost = sumMoney([materials, labour, overhead, other], currency);
  const price = item.fixedPrice
    ? roundToMinorUnit(item.fixedPrice)
    : sellingPrice(cost, rules.margins[item.marginClass] ?? ZERO);
  return { key: item.key, hours, materials, labour, overhead, other, cost, price };
}

/**
 * The price at which a margin is earned on the selling price: cost / (1 - margin).
 *
 * @param margin - a fraction of the selling price, 0 to below 1
 * @returns whole minor units, half away from zero
 * @source derived: margin = (price - cost) / price
 */
export function sellingPrice(cost: Money, margin: Decimal): Money {
  return divideToMinorUnit(cost, subtractDecimals(ONE, margin));
}

function discountOf(
  listPrice: Money,
  discount: PriceInput['discount'],
  { currency }: PriceRules,
): Money {
  if (!discount) return zeroMoney(currency);
  if ('share' in discount) return roundToMinorUnit(timesDecimal(listPrice, discount.share));
  const amount = roundToMinorUnit(moneyOf(discount.amount, currency));
  return isNegative(subtractMoney(listPrice, amount)) ? listPrice : amount;
}

/**
 * Tax of every line, of the discount (positive: it is taken off) and of the whole. Rounded by document, the
 * total is rounded once and the lines receive shares of it that add up; rounded by line, the total is their sum.
 */
function taxLines(
  prices: readonly Money[],
  discount: Money,
  { currency, taxRate, taxRounding }: PriceRules,
): { lines: readonly Money[]; discount: Money; total: Money } {
  const taxOf = (money: Money): Money => roundToMinorUnit(timesDecimal(money, taxRate));
  if (taxRounding === 'line') {
    const lines = prices.map(taxOf);
    const off = taxOf(discount);
    return { lines, discount: off, total: subtractMoney(sumMoney(lines, currency), off) };
  }
  const listPrice = sumMoney(prices, currency);
  const total = taxOf(subtractMoney(listPrice, discount));
  const beforeDiscount = taxOf(listPrice);
  const weights = prices.map((price) => ({ amount: minorUnits(price), scale: 0n }));
  return {
    lines: shareOut(beforeDiscount, weights),
    discount: subtractMoney(beforeDiscount, total),
    total,
  };
}

/** part / whole to six places, half away from zero; undefined when the whole is zero. */
function shareOfMoney(part: Money, whole: Money): Decimal | undefined {
  const bottom = minorUnits(whole);
  if (bottom === 0n) return undefined;
  return { amount: divideHalfAway(minorUnits(part) * 1_000_000n, bottom), scale: 6n };
}
