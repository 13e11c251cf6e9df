import { currencyCode, type Money, moneyOf, moneyToDecimal, timesDecimal } from '../money/index.ts';
import { addDecimals, type Decimal, multiplyDecimals, ONE, ZERO } from '../units/index.ts';
import type { PriceMaterial, PriceRules } from './types.ts';

/** A part as an item uses it, in the yard's currency; nothing is rounded yet. */
export interface UsedMaterial extends PriceMaterial {
  readonly key: string;
  /** quantity x (1 + wastage of its class). */
  readonly used: Decimal;
  /** Of one unit, in the yard's currency. */
  readonly homeCost: Money;
  /** used x homeCost. */
  readonly value: Money;
}

/**
 * Materials of one item with wastage, in the yard's currency.
 *
 * @source derived: quantity x (1 + wastage) x cost x rate x (1 + buffer)
 */
export function usedMaterials(
  key: string,
  materials: readonly PriceMaterial[],
  rules: PriceRules,
): readonly UsedMaterial[] {
  return materials.map((material) => {
    const wastage = rules.wastage[material.materialClass] ?? ZERO;
    const used = multiplyDecimals(material.quantity, addDecimals(ONE, wastage));
    const homeCost = inHomeCurrency(material.unitCost, rules);
    return { ...material, key, used, homeCost, value: timesDecimal(homeCost, used) };
  });
}

/**
 * An amount of another currency in the yard's, at the rate with its buffer; exact.
 *
 * @param rules - without a rate for the currency the amount stands as it is (reading the workspace refuses that)
 * @source derived: rate x (1 + buffer)
 */
function inHomeCurrency(
  cost: Money,
  { currency, exchange }: Pick<PriceRules, 'currency' | 'exchange'>,
): Money {
  const rate = exchange?.[currencyCode(cost)];
  if (currencyCode(cost) === currency.code || !rate) return cost;
  const home = multiplyDecimals(rate.rate, addDecimals(ONE, rate.buffer));
  return moneyOf(multiplyDecimals(moneyToDecimal(cost), home), currency);
}
