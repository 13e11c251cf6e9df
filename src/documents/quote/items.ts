import type { CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import { formatMoney, isZero, sumMoney } from '../../money/index.ts';
import { formatterOf } from '../../units/index.ts';
import type { QuoteGroup, QuoteItem } from './types.ts';

type CustomerItem = CustomerBuild['items'][number];

/**
 * What the customer gets, group by group in the order of the catalogue, priced as the yard shows prices.
 *
 * @param numbers - the number of an item in the drawing, by its key
 */
export function quoteGroups(
  figures: CustomerFigures,
  numbers: ReadonlyMap<string, string>,
): readonly QuoteGroup[] {
  const { build } = figures;
  const { yard, hull } = build;
  const withTax = yard.tax.pricesInclude;
  const lines = new Map(figures.price.lines.map((line) => [line.key, line]));
  const print = (items: readonly CustomerItem[]): string => {
    const priced = items.flatMap(({ key }) => lines.get(key) ?? []);
    const amounts = priced.map((line) => (withTax ? line.priceWithTax : line.price));
    const whole = sumMoney(amounts, build.currency);
    const free = isZero(whole) && priced.every(({ isFree }) => isFree);
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
  readonly items: readonly CustomerItem[];
}

/** Items by group, groups in the order in which they first appear. */
export function groupItems(items: readonly CustomerItem[]): readonly ItemGroup[] {
  const groups = new Map<string, { name: string; isHull: boolean; items: CustomerItem[] }>();
  for (const item of items) {
    const isHull = item.kind === 'shell' || item.kind === 'structure';
    const id = isHull ? 'hull' : `${item.kind}: ${item.group}`;
    const group = groups.get(id) ?? { name: item.group, isHull, items: [] };
    group.items.push(item);
    groups.set(id, group);
  }
  return [...groups.values()];
}

/** What an item is, in words for its buyer. */
export function describeItem(
  { kind, name, description, quantity }: CustomerItem,
  build: CustomerBuild,
): Pick<QuoteItem, 'name' | 'description' | 'quantity'> {
  const made = { outboard: outboardSentence, trailer: trailerSentence };
  const words = kind === 'outboard' || kind === 'trailer' ? made[kind](build) : description;
  return { name, description: words ?? '', quantity: quantity > 1 ? `${quantity} ×` : '' };
}

function outboardSentence({ outboard, yard }: CustomerBuild): string {
  if (!outboard) return '';
  const { power, steering, starting } = outboard.model;
  const rated = formatterOf(yard).power(power);
  const steered = steering === 'tiller' ? 'steered by tiller' : 'steered from the helm';
  const started = starting === 'hand' ? 'started by hand' : 'electric start';
  return `${rated}, ${steered}, ${started}.`;
}

function trailerSentence({ trailer, yard }: CustomerBuild): string {
  if (!trailer) return '';
  const format = formatterOf(yard);
  const brakes = trailer.brakes === 'none' ? 'unbraked' : `${trailer.brakes} brakes`;
  const axles = trailer.axles === 1 ? 'one axle' : `${format.number(trailer.axles, 0)} axles`;
  return (
    `Rated to ${format.mass(trailer.rating)} with its load, ${format.mass(trailer.tare)} empty; ` +
    `${axles}, ${brakes}; ${format.length(trailer.length)} long, ${format.length(trailer.width)} wide.`
  );
}
