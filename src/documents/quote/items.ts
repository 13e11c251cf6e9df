import type { Figures } from '../../figures/index.ts';
import { formatMoney, isZero, type Money, sumMoney } from '../../money/index.ts';
import type { DerivedItem } from '../../derive/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import { createFormatter } from '../../units/index.ts';
import type { QuoteGroup, QuoteItem } from './types.ts';

/**
 * What the customer gets, group by group in the order of the catalogue, priced as the yard shows prices.
 *
 * @param numbers - the number of an item in the drawing, by its key
 */
export function quoteGroups(
  figures: Figures,
  numbers: ReadonlyMap<string, string>,
): readonly QuoteGroup[] {
  const { build } = figures;
  const { yard, hull } = build;
  const prices = pricesByKey(figures);
  const print = (items: readonly BuildItem[]): string => {
    const amounts = items.flatMap(({ key }) => prices.get(key) ?? []);
    const whole = sumMoney(amounts, build.currency);
    const free = isZero(whole) && items.every((item) => item.free !== undefined);
    return free ? 'no charge' : formatMoney(whole, yard.locale);
  };
  const shown = yard.showPrices;
  return groupItems(build.items).map(({ name, items, isHull }) => ({
    name: isHull ? hull.name : name,
    // The hull is one thing to its buyer: its shell and structure have one price between them.
    price: shown === 'groups' || (shown === 'items' && isHull) ? print(items) : '',
    items: isHull
      ? []
      : items.map((item) => ({
          ...describeItem(item, build),
          number: numbers.get(item.key) ?? '',
          price: shown === 'items' ? print([item]) : '',
        })),
    includes: isHull ? hull.includes : [],
  }));
}

export interface ItemGroup {
  readonly name: string;
  readonly isHull: boolean;
  readonly items: readonly DerivedItem[];
}

/** Items by group, groups in the order in which they first appear. */
export function groupItems(items: readonly DerivedItem[]): readonly ItemGroup[] {
  const groups = new Map<string, { name: string; isHull: boolean; items: DerivedItem[] }>();
  for (const item of items) {
    const isHull = item.kind === 'shell' || item.kind === 'structure';
    const id = isHull ? 'hull' : `${item.kind}: ${item.group}`;
    const group = groups.get(id) ?? { name: item.group, isHull, items: [] };
    group.items.push(item);
    groups.set(id, group);
  }
  return [...groups.values()];
}

function pricesByKey({ price, build }: Figures): ReadonlyMap<string, Money> {
  const withTax = build.yard.tax.pricesInclude;
  return new Map(price.lines.map((line) => [line.key, withTax ? line.priceWithTax : line.price]));
}

/** What an item is, in words for its buyer. */
export function describeItem(
  { kind, name, description, quantity }: BuildItem,
  build: Build,
): Pick<QuoteItem, 'name' | 'description' | 'quantity'> {
  const made = { outboard: outboardSentence, trailer: trailerSentence };
  const words = kind === 'outboard' || kind === 'trailer' ? made[kind](build) : description;
  return { name, description: words ?? '', quantity: quantity > 1 ? `${quantity} ×` : '' };
}

function outboardSentence({ outboard, yard }: Build): string {
  if (!outboard) return '';
  const { power, steering, starting } = outboard.model;
  const rated = createFormatter(yard.locale, yard.units).power(power);
  const steered = steering === 'tiller' ? 'steered by tiller' : 'steered from the helm';
  const started = starting === 'hand' ? 'started by hand' : 'electric start';
  return `${rated}, ${steered}, ${started}.`;
}

function trailerSentence({ trailer, yard }: Build): string {
  if (!trailer) return '';
  const format = createFormatter(yard.locale, yard.units);
  const brakes = trailer.brakes === 'none' ? 'unbraked' : `${trailer.brakes} brakes`;
  const axles = trailer.axles === 1 ? 'one axle' : `${format.number(trailer.axles, 0)} axles`;
  return (
    `Rated to ${format.mass(trailer.rating)} with its load, ${format.mass(trailer.tare)} empty; ` +
    `${axles}, ${brakes}; ${format.length(trailer.length)} long, ${format.length(trailer.width)} wide.`
  );
}
