import {
  addMoney,
  type Money,
  moneyOf,
  roundToMinorUnit,
  sumMoney,
  timesDecimal,
  zeroMoney,
} from '../money/index.ts';
import { type Decimal, ZERO } from '../units/index.ts';
import { freightByItem } from './freight.ts';
import { labourOf } from './labour.ts';
import { usedMaterials } from './materials.ts';
import { buyParts } from './packs.ts';
import type { CostLine, OrderCost } from './result-types.ts';
import { sumOfKey } from './share-by-key.ts';
import type { PriceItem, PriceRules } from './types.ts';

/**
 * What an order costs the shop, line by line: materials with wastage, packs and freight; labour; overhead; other.
 *
 * Each of a line's parts is rounded once to whole minor units, half away from zero; a line's cost is their sum.
 *
 * @source common practice, no source
 */
export function costOrder(items: readonly PriceItem[], rules: PriceRules): OrderCost {
  const { currency } = rules;
  const byItem = new Map(
    items.map((item) => [item.key, usedMaterials(item.key, item.materials, rules)]),
  );
  const materials = [...byItem.values()].flat();
  const bought = buyParts(materials, rules);
  const leftOver = bought.map((one) => one.leftOver);
  const freight = freightByItem(materials, rules);
  const lines = items.map((item): CostLine => {
    const used = byItem.get(item.key) ?? [];
    const parts = {
      materials: roundToMinorUnit(
        sumMoney(
          used.map(({ value }) => value),
          currency,
        ),
      ),
      packs: sumOfKey(leftOver, item.key, currency),
      freight: sumOfKey(freight, item.key, currency),
      other: roundToMinorUnit(item.otherCost ?? zeroMoney(currency)),
    };
    const work = labourOf(item, rules);
    const base = sumMoney([parts.materials, parts.packs, work.labour], currency);
    const overhead = overheadOf(work.costedHours, base, rules);
    const cost = sumMoney([base, parts.freight, overhead, parts.other], currency);
    return { key: item.key, ...work, ...parts, overhead, cost };
  });
  return {
    lines,
    purchases: bought.map(({ purchase }) => purchase),
    cost: sumMoney(
      lines.map(({ cost }) => cost),
      currency,
    ),
  };
}

/**
 * Overhead, whole minor units: so much an hour, and a share of materials and labour; a shop that uses one sets the other
 * to zero.
 */
function overheadOf(
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
