import { addMoney, type Money, subtractMoney, zeroMoney } from '../money/index.ts';
import { isDiscounted } from './discount.ts';
import type { ListedLine } from './list-lines.ts';
import { shareOfMoney } from './margin.ts';
import type { PriceLine } from './result-types.ts';
import { shareByKey } from './share-by-key.ts';
import type { Shown } from './shown.ts';
import type { Taxes } from './tax.ts';
import type { PriceInput } from './types.ts';

type BeforeDiscount = Omit<PriceLine, 'discount' | 'net' | 'margin' | 'marginShare'>;

/**
 * The lines of an order, each with its price before and with tax and its share of the discount.
 *
 * @source derived: price + tax = price with tax; shares of the discount by the largest remainder
 */
export function priceLines(
  listed: readonly ListedLine[],
  taxes: Taxes,
  discount: Money,
  input: PriceInput,
  terms: Shown,
): readonly PriceLine[] {
  const none = zeroMoney(input.rules.currency);
  const lines = listed.map((line) => ({
    line,
    priced: splitTax(line, taxes.lines.get(line.item.key) ?? none, terms),
  }));
  const shares = shareByKey(
    discount,
    lines
      .filter(({ line }) => isDiscounted(input.discount, line))
      .map(({ priced }) => ({ key: priced.key, weight: priced.price })),
  );
  return lines.map(({ priced }) => withDiscount(priced, shares.get(priced.key) ?? none));
}

function splitTax(
  { item, cost, calculated, saving, shown }: ListedLine,
  tax: Money,
  { withTax, taxOf }: Shown,
): BeforeDiscount {
  const price = withTax ? subtractMoney(shown, tax) : shown;
  const saved = withTax ? subtractMoney(saving, taxOf(saving)) : saving;
  return {
    ...cost,
    marginClass: item.marginClass,
    fixed: item.fixedPrice !== undefined,
    calculated,
    rounding: subtractMoney(addMoney(price, saved), calculated),
    saving: saved,
    price,
    tax,
    priceWithTax: addMoney(price, tax),
  };
}

function withDiscount(line: BeforeDiscount, discount: Money): PriceLine {
  const net = subtractMoney(line.price, discount);
  const margin = subtractMoney(net, line.cost);
  const marginShare = shareOfMoney(margin, net);
  return { ...line, discount, net, margin, ...(marginShare && { marginShare }) };
}
