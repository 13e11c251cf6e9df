import {
  isNegative,
  type Money,
  moneyOf,
  roundToMinorUnit,
  shareOut,
  subtractMoney,
  sumMoney,
  zeroMoney,
} from '../money/index.ts';
import { ZERO } from '../units/index.ts';
import type { Payment } from './result-types.ts';
import type { PriceInput } from './types.ts';

/** The payments of an order and what has been received. */
export interface Payments {
  readonly payments: readonly Payment[];
  /** The part of the trade-in's value that pays for the boat. */
  readonly tradeIn: Money;
  readonly paid: Money;
  readonly toPay: Money;
}

/**
 * Payments that sum to the drive-away price: the trade-in, the fixed amounts in their sequence, and shares of what is
 * then left by the largest remainder. What has been received pays the stages from the first on.
 *
 * @param value - of the trade-in; what exceeds the price pays for nothing
 * @source Hamilton's method of apportionment (largest remainder)
 */
export function paymentsOf(driveAway: Money, value: Money, input: PriceInput): Payments {
  const { currency } = input.rules;
  const tradeIn = smaller(value, driveAway);
  const due = subtractMoney(driveAway, tradeIn);
  const amounts = amountsOf(due, input);
  const paid = roundToMinorUnit(
    sumMoney(
      (input.paid ?? []).map((amount) => moneyOf(amount, currency)),
      currency,
    ),
  );
  const settled = inSequence(paid, amounts);
  const none = zeroMoney(currency);
  const stages = input.payments.map(({ name, when, event }, index): Payment => ({
    kind: 'stage',
    name,
    when,
    ...(event !== undefined && { event }),
    amount: amounts[index] ?? none,
    paid: settled[index] ?? none,
  }));
  const traded: readonly Payment[] = input.tradeIn
    ? [
        {
          kind: 'trade-in',
          name: input.tradeIn.name,
          when: 'Taken in payment',
          amount: tradeIn,
          paid: none,
        },
      ]
    : [];
  return { payments: [...traded, ...stages], tradeIn, paid, toPay: subtractMoney(due, paid) };
}

/** One amount a stage; together they are what is due. */
function amountsOf(due: Money, { payments, rules: { currency } }: PriceInput): readonly Money[] {
  const asked = payments.map((stage) =>
    'amount' in stage ? roundToMinorUnit(moneyOf(stage.amount, currency)) : zeroMoney(currency),
  );
  const fixed = inSequence(due, asked);
  const left = subtractMoney(due, sumMoney(fixed, currency));
  const shares = shareOut(
    left,
    payments.map((stage) => ('share' in stage ? stage.share : ZERO)),
  );
  return fixed.map((amount, index) =>
    sumMoney([amount, shares[index] ?? zeroMoney(currency)], currency),
  );
}

/** Fills each of the amounts from the first on, until the money is used up. */
function inSequence(money: Money, amounts: readonly Money[]): readonly Money[] {
  let left = money;
  return amounts.map((amount) => {
    const filled = smaller(left, amount);
    left = subtractMoney(left, filled);
    return filled;
  });
}

const smaller = (a: Money, b: Money): Money => (isNegative(subtractMoney(a, b)) ? a : b);
