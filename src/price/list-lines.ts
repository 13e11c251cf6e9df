import {
  addMoney,
  type Money,
  moneyOf,
  roundToMinorUnit,
  roundToUnits,
  subtractMoney,
  sumMoney,
  timesDecimal,
  zeroMoney,
} from '../money/index.ts';
import { subtractDecimals, ONE, ZERO } from '../units/index.ts';
import { sellingPrice } from './margin.ts';
import type { CostLine } from './result-types.ts';
import { shareByKey } from './share-by-key.ts';
import { atLeastNothing, type Shown } from './shown.ts';
import type { PackageOffer, PriceInput, PriceItem, PriceRules } from './types.ts';

/** A line with the price that the customer is shown, in that price's own terms: with or without tax. */
export interface ListedLine {
  readonly item: PriceItem;
  readonly cost: CostLine;
  /** Before tax, before rounding and packages. */
  readonly calculated: Money;
  /** Off by packages, as shown. */
  readonly saving: Money;
  /** As shown: rounded, with the saving off. */
  readonly shown: Money;
}

/**
 * Prices of the lines as the customer is shown them: worked out or fixed, rounded by the shop's policy (a fixed
 * price is its own policy), then with the savings of package offers.
 *
 * @source common practice, no source
 */
export function listLines(
  { items, rules, packages = [] }: PriceInput,
  costs: readonly CostLine[],
  terms: Shown,
): readonly ListedLine[] {
  const lines = items.flatMap((item, index): ListedLine[] => {
    const cost = costs[index];
    if (!cost) return [];
    const calculated = item.fixedPrice
      ? roundToMinorUnit(item.fixedPrice)
      : sellingPrice(cost.cost, rules.margins[item.marginClass] ?? ZERO);
    const shown = roundLine(terms.of(calculated), item, rules);
    return [{ item, cost, calculated, saving: zeroMoney(rules.currency), shown }];
  });
  return packages.reduce<readonly ListedLine[]>(
    (left, offer) => withPackage(left, offer, rules, terms),
    lines,
  );
}

function roundLine(shown: Money, item: PriceItem, { rounding }: PriceRules): Money {
  if (item.fixedPrice || rounding?.on !== 'line') return shown;
  return roundToUnits(shown, rounding.to, rounding.way);
}

/** The saving of one package, shared over its lines by their prices; an offer above the list saves nothing. */
function withPackage(
  lines: readonly ListedLine[],
  offer: PackageOffer,
  { currency }: PriceRules,
  terms: Shown,
): readonly ListedLine[] {
  const inOffer = lines.filter(({ item }) => offer.keys.includes(item.key));
  const list = sumMoney(
    inOffer.map(({ shown }) => shown),
    currency,
  );
  const wanted =
    'price' in offer
      ? terms.of(moneyOf(offer.price, currency))
      : roundToMinorUnit(timesDecimal(list, subtractDecimals(ONE, offer.share)));
  const savings = shareByKey(
    atLeastNothing(subtractMoney(list, wanted), currency),
    inOffer.map(({ item, shown }) => ({ key: item.key, weight: shown })),
  );
  return lines.map((line) => {
    const saving = savings.get(line.item.key);
    if (!saving) return line;
    return {
      ...line,
      saving: addMoney(line.saving, saving),
      shown: subtractMoney(line.shown, saving),
    };
  });
}
