import { addMoney, type Money, moneyOf, roundToMinorUnit, timesDecimal } from '../money/index.ts';
import { type Decimal, ZERO } from '../units/index.ts';
import type { PriceRules } from './types.ts';

/**
 * Overhead: so much an hour, and a share of materials and labour; a shop that uses one sets the other to zero.
 *
 * @returns whole minor units, half away from zero
 * @source common practice, no source
 */
export function overheadOf(
  hours: Decimal,
  materialsAndLabour: Money,
  { overhead, overheadShare, currency }: PriceRules,
): Money {
  return roundToMinorUnit(
    addMoney(
      timesDecimal(moneyOf(overhead, currency), hours),
      timesDecimal(materialsAndLabour, overheadShare ?? ZERO),
    ),
  );
}
