import { dinero, toSnapshot } from 'dinero.js/bigint';
import { type Decimal, divideHalfAway } from '../units/index.ts';
import type { Money } from './money.ts';

/**
 * What becomes of less than one minor unit. `half-up`: half and more goes away from zero; `half-down`: half is
 * dropped, more than half goes away from zero; `down`: any fraction is dropped.
 */
export type RoundingRule = 'half-up' | 'half-down' | 'down';

/**
 * money x top / bottom in whole minor units, rounded once by a rule.
 *
 * @param bottom - not zero
 */
export function fractionOfMoney(
  money: Money,
  top: Decimal,
  bottom: Decimal,
  rule: RoundingRule,
): Money {
  const { amount, scale, currency } = toSnapshot(money);
  const dividend = amount * top.amount * 10n ** (bottom.scale + currency.exponent);
  const divisor = bottom.amount * 10n ** (scale + top.scale);
  return dinero({ amount: divideBy(rule, dividend, divisor), currency });
}

/** The money as the exact decimal that it is, without its currency. */
export function moneyToDecimal(money: Money): Decimal {
  const { amount, scale } = toSnapshot(money);
  return { amount, scale };
}

/**
 * To a multiple of so many whole units of the currency, as a shop rounds the prices that it prints.
 *
 * @param units - 1, 5, 10: above 0
 * @param way - nearest: half a multiple goes away from zero; up: any rest goes away from zero
 */
export function roundToUnits(money: Money, units: bigint, way: 'nearest' | 'up'): Money {
  const { amount, scale, currency } = toSnapshot(money);
  const step = units * 10n ** scale;
  const count = way === 'nearest' ? divideHalfAway(amount, step) : divideAway(amount, step);
  return dinero({ amount: count * units * 10n ** currency.exponent, currency });
}

function divideBy(rule: RoundingRule, dividend: bigint, divisor: bigint): bigint {
  if (rule === 'half-up') return divideHalfAway(dividend, divisor);
  const whole = dividend / divisor;
  if (rule === 'down') return whole;
  const rest = absolute(dividend % divisor) * 2n;
  return rest > absolute(divisor) ? whole + signOf(dividend, divisor) : whole;
}

function divideAway(dividend: bigint, divisor: bigint): bigint {
  const whole = dividend / divisor;
  return dividend % divisor === 0n ? whole : whole + signOf(dividend, divisor);
}

const absolute = (value: bigint): bigint => (value < 0n ? -value : value);
const signOf = (a: bigint, b: bigint): bigint => (a < 0n !== b < 0n ? -1n : 1n);
