/** Read by `tsc` only: no amount and no decimal of the costing may be a float. */
import type { Money } from '../../src/money/index.ts';
import { addMoney, subtractMoney, sumMoney, timesDecimal } from '../../src/money/index.ts';
import type { Price, PriceInput, PriceItem, Sensitivity } from '../../src/price/index.ts';
import type { Decimal } from '../../src/units/index.ts';
import { AUD } from '../money-words.ts';

type Leaf = Money | bigint | string | boolean | undefined;
/** The paths at which a type holds a number. */
type Floats<T, Path extends string = ''> = T extends Leaf
  ? never
  : T extends number
    ? Path
    : T extends readonly (infer Item)[]
      ? Floats<Item, `${Path}[]`>
      : { [Key in keyof T & string]: Floats<T[Key], `${Path}.${Key}`> }[keyof T & string];
type Never<T> = [T] extends [never] ? true : false;

export const noFloatInPrice: Never<Floats<Price>> = true;
export const noFloatInInput: Never<Floats<PriceInput>> = true;
export const noFloatInSensitivity: Never<Floats<Sensitivity>> = true;
// The test itself sees a float that is planted.
export const seenInPlanted: Floats<{ readonly lines: readonly { readonly cost: number }[] }> =
  '.lines[].cost';

declare const money: Money;
declare const decimal: Decimal;

// @ts-expect-error -- a number is not money
export const added = addMoney(money, 5);
// @ts-expect-error -- a number is not money
export const taken = subtractMoney(5, money);
// @ts-expect-error -- a number is not money
export const summed = sumMoney([money, 5], AUD);
// @ts-expect-error -- a float is not a decimal
export const scaled = timesDecimal(money, 1.1);
// @ts-expect-error -- a cost is money
export const cost: PriceItem['otherCost'] = 12.5;
// @ts-expect-error -- a rate is an exact decimal
export const rate: PriceInput['rules']['taxRate'] = 0.1;
export const exact: PriceInput['rules']['taxRate'] = decimal;
