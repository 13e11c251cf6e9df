import { type Finding, finding } from '../findings/index.ts';
import type { Catalogue } from '../schema/index.ts';
import { daysBetween, type IsoDate } from '../units/index.ts';
import type { BuildItem } from './build.ts';

/** A warning for every part of an order whose price was too old on the day that the order is priced for. */
export function checkPriceAges(
  items: readonly BuildItem[],
  pricedOn: IsoDate,
  catalogue: Catalogue,
): readonly Finding[] {
  const limit = catalogue.yard.value.priceAge;
  const codes = new Set(items.flatMap((item) => item.parts.map((part) => part.code)));
  return [...codes].flatMap((code) => {
    const part = catalogue.parts.get(code);
    if (!part) return [];
    const age = daysBetween(part.value.price_date, pricedOn);
    if (age <= limit) return [];
    return [
      finding('PART_PRICE_OLD', part.place(['price_date']), {
        received: `${code} ${part.value.description}: ${age} days old on ${pricedOn}`,
        expected: `at most ${limit} days`,
      }),
    ];
  });
}
