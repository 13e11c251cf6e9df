import { type Money, roundToMinorUnit, sumMoney, timesDecimal } from '../money/index.ts';
import { multiplyDecimals, subtractDecimals, sumDecimals, timesRoundedUp } from '../units/index.ts';
import type { UsedMaterial } from './materials.ts';
import type { Purchase } from './result-types.ts';
import { shareByKey } from './share-by-key.ts';
import type { PriceRules } from './types.ts';

/** What is bought of one part, and what each item pays for the rest of the last pack. */
interface Bought {
  readonly purchase: Purchase;
  readonly leftOver: ReadonlyMap<string, Money>;
}

/**
 * Buys every part of an order once. Where packs are bought whole, the rest of the last one is charged to the items
 * that use the part, by how much they use.
 *
 * @source derived: packs = used / size, rounded up; rest = packs x size - used
 */
export function buyParts(materials: readonly UsedMaterial[], rules: PriceRules): readonly Bought[] {
  const codes = [...new Set(materials.map(({ code }) => code))].toSorted();
  return codes.flatMap((code) => {
    const uses = materials.filter((one) => one.code === code);
    const [first] = uses;
    return first ? [buyPart(first, uses, rules)] : [];
  });
}

function buyPart(
  { code, supplier, homeCost, pack, buy }: UsedMaterial,
  uses: readonly UsedMaterial[],
  { currency }: PriceRules,
): Bought {
  const used = sumDecimals(uses.map((one) => one.used));
  const packs =
    buy === 'whole' && pack && pack.amount > 0n ? timesRoundedUp(used, pack) : undefined;
  const bought =
    packs === undefined || !pack ? used : multiplyDecimals({ amount: packs, scale: 0n }, pack);
  const rest = roundToMinorUnit(timesDecimal(homeCost, subtractDecimals(bought, used)));
  const byKey = [...new Set(uses.map(({ key }) => key))].map((key) => ({
    key,
    weight: sumMoney(
      uses.filter((one) => one.key === key).map(({ value }) => value),
      currency,
    ),
  }));
  return {
    purchase: {
      code,
      supplier,
      used,
      bought,
      ...(packs !== undefined && { packs }),
      cost: roundToMinorUnit(timesDecimal(homeCost, bought)),
    },
    leftOver: shareByKey(rest, byKey),
  };
}
