/** Read by `tsc` only: each line below an expectation must not compile. */
import type { Money } from '../../src/money/index.ts';
import { addMoney } from '../../src/money/index.ts';
import { kilograms, type Kilograms, metres, type Metres } from '../../src/units/index.ts';

declare const money: Money;

export const length: Metres = metres(1);
// @ts-expect-error -- a mass is not a length
export const wrongKind: Metres = kilograms(1);
// @ts-expect-error -- a bare number has no kind
export const bare: Kilograms = 5;
// @ts-expect-error -- a number is not money
export const mixed = addMoney(money, 5);
// @ts-expect-error -- money is not a number
export const sum: number = money;
// @ts-expect-error -- a mass is not money
export const weighed = addMoney(money, kilograms(1));
