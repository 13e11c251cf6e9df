import {
  addMoney,
  fractionOfMoney,
  type Money,
  moneyToDecimal,
  roundToMinorUnit,
  shareOut,
  subtractMoney,
  sumMoney,
  zeroMoney,
} from '../money/index.ts';
import { ONE, ZERO } from '../units/index.ts';
import type { Price } from './result-types.ts';
import type { Shown } from './shown.ts';
import type { PriceInput } from './types.ts';

/**
 * Charges, and the tax of those that are taxed. Where the tax of a whole document is rounded once, it is what they add
 * to that; else it is rounded by itself. Each has its share of it by the largest remainder.
 *
 * @param taxable - what else is taxed, before tax
 * @source A New Tax System (Goods and Services Tax) Act 1999 (Australia) s 9-90; a thing bought in the shop's own name
 * and passed on is part of its supply (GSTR 2000/37 on disbursements, from memory)
 */
export function chargesOf(
  taxable: Money,
  { charges, rules }: PriceInput,
  { withTax }: Shown,
): Pick<Price, 'chargeLines' | 'charges' | 'chargesTax'> {
  const { currency, taxRate, taxRule = 'half-up', taxRounding } = rules;
  const rounded = charges.map((one) => ({ ...one, amount: roundToMinorUnit(one.amount) }));
  const sum = (list: typeof rounded): Money =>
    sumMoney(
      list.map(({ amount }) => amount),
      currency,
    );
  const taxed = sum(rounded.filter((one) => one.taxed));
  const taxOf = (amount: Money): Money => fractionOfMoney(amount, taxRate, ONE, taxRule);
  const apart = withTax || taxRounding === 'line';
  const tax = apart ? taxOf(taxed) : subtractMoney(taxOf(addMoney(taxable, taxed)), taxOf(taxable));
  const shares = shareOut(
    tax,
    rounded.map((one) => (one.taxed ? moneyToDecimal(one.amount) : ZERO)),
  );
  const chargeLines = rounded.map(({ name, amount }, index) => {
    const own = shares[index] ?? zeroMoney(currency);
    return { name, tax: own, withTax: addMoney(amount, own) };
  });
  return { chargeLines, charges: sum(rounded), chargesTax: tax };
}
