import {
  type Money,
  moneyOf,
  roundToMinorUnit,
  subtractMoney,
  sumMoney,
  zeroMoney,
} from '../money/index.ts';
import type { ListedLine } from './list-lines.ts';
import { shareByKey } from './share-by-key.ts';
import { atLeastNothing, type Shown } from './shown.ts';
import type { PriceInput, PriceRules } from './types.ts';

export interface Taxes {
  readonly lines: ReadonlyMap<string, Money>;
  /** Of the discount: positive, it is taken off. */
  readonly discount: Money;
}

/**
 * Tax of every line and of the discount. Rounded by document, the tax of the whole is rounded once and the lines
 * receive shares of it that add up; rounded by line, each line's tax is rounded and the whole is their sum.
 *
 * @source A New Tax System (Goods and Services Tax) Act 1999 (Australia) s 9-90: total invoice rule, taxable supply rule
 */
export function taxesOf(
  lines: readonly ListedLine[],
  discount: Money,
  { currency, taxRounding }: PriceRules,
  { taxOf }: Shown,
): Taxes {
  if (taxRounding === 'line') {
    const taxes = lines.map(({ item, shown }) => [item.key, taxOf(shown)] as const);
    return { lines: new Map(taxes), discount: taxOf(discount) };
  }
  const list = sumMoney(
    lines.map(({ shown }) => shown),
    currency,
  );
  const before = taxOf(list);
  return {
    lines: shareByKey(
      before,
      lines.map(({ item, shown }) => ({ key: item.key, weight: shown })),
    ),
    discount: subtractMoney(before, taxOf(subtractMoney(list, discount))),
  };
}

/**
 * Tax that is not due because the law takes a trade-in off the price that is taxed; elsewhere zero.
 *
 * @param whole - as shown, after discount
 * @source the law that the yard names; of several states of the USA (Florida Statutes s 212.09, from memory)
 */
export function tradeInRelief(
  whole: Money,
  tradeIn: Money,
  { tradeInReducesTax, currency }: PriceRules,
  { taxOf }: Shown,
): Money {
  if (!tradeInReducesTax) return zeroMoney(currency);
  const left = atLeastNothing(subtractMoney(whole, tradeIn), currency);
  return subtractMoney(taxOf(whole), taxOf(left));
}

/**
 * The trade-in's value in whole minor units; zero when there is none.
 *
 * @source derived: the value, rounded
 */
export function tradeInOf({ tradeIn, rules: { currency } }: PriceInput): Money {
  return tradeIn ? roundToMinorUnit(moneyOf(tradeIn.value, currency)) : zeroMoney(currency);
}
