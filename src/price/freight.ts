import { type Money, moneyOf, roundToMinorUnit, sumMoney, timesDecimal } from '../money/index.ts';
import type { UsedMaterial } from './materials.ts';
import { shareByKey } from './share-by-key.ts';
import type { PriceRules } from './types.ts';

/**
 * Freight of each supplier by item: a share of the value bought, or so much an order, shared by that value.
 * A supplier that nothing is bought from sends nothing.
 *
 * @returns a map of item to whole minor units for each supplier
 * @source common practice, no source
 */
export function freightByItem(
  materials: readonly UsedMaterial[],
  { freight = {}, currency }: PriceRules,
): readonly ReadonlyMap<string, Money>[] {
  return Object.entries(freight).flatMap(([supplier, rule]) => {
    const sent = materials.filter((one) => one.supplier === supplier && one.used.amount > 0n);
    if (sent.length === 0) return [];
    const byKey = [...new Set(sent.map(({ key }) => key))].map((key) => ({
      key,
      weight: sumMoney(
        sent.filter((one) => one.key === key).map(({ value }) => value),
        currency,
      ),
    }));
    if ('perOrder' in rule) {
      return [shareByKey(roundToMinorUnit(moneyOf(rule.perOrder, currency)), byKey)];
    }
    const shares = byKey.map(
      ({ key, weight }) => [key, roundToMinorUnit(timesDecimal(weight, rule.share))] as const,
    );
    return [new Map(shares)];
  });
}
