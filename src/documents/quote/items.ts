import type { CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import { formatMoney, isZero, sumMoney } from '../../money/index.ts';
import { formatterOf } from '../../units/index.ts';
import { type Block, type Cell, column, row, table } from '../blocks/block.ts';

type CustomerItem = CustomerBuild['items'][number];

/**
 * What the customer gets, group by group in the order of the catalogue, priced as the yard shows prices.
 *
 * @param numbers - the number of an item in the drawing, by its key
 */
export function includedItems(
  { build, price: { lines: all } }: CustomerFigures,
  numbers: ReadonlyMap<string, string>,
): readonly Block[] {
  const { yard, hull } = build;
  const { tax, showPrices: shown } = yard;
  const lines = new Map(all.map((line) => [line.key, line]));
  const print = (items: readonly CustomerItem[]): string => {
    const priced = items.flatMap(({ key }) => lines.get(key) ?? []);
    const amounts = priced.map((line) => (tax.pricesInclude ? line.priceWithTax : line.price));
    const whole = sumMoney(amounts, build.currency);
    const free = isZero(whole) && priced.every(({ isFree }) => isFree);
    return free ? 'no charge' : formatMoney(whole, yard.locale);
  };
  const priced = (isShown: boolean, items: readonly CustomerItem[]): readonly string[] => {
    if (shown === 'total') return [];
    return [isShown ? print(items) : ''];
  };
  const heading = tax.pricesInclude ? `Price with ${tax.name}` : `Price before ${tax.name}`;
  const columns = [
    column('number', 'No.'),
    column('text', 'Item'),
    ...(shown === 'total' ? [] : [column('num', heading)]),
  ];
  const rows = groupItems(build.items).flatMap(({ name, items, isHull }) => [
    // The hull is one thing to its buyer: its shell and structure have one price between them.
    row(
      'group',
      isHull ? hull.name : name,
      ...priced(shown === 'groups' || (shown === 'items' && isHull), items),
    ),
    ...(isHull
      ? includesRow(hull.includes)
      : items.map((item) =>
          row(
            'plain',
            numbers.get(item.key) ?? '',
            itemCell(item, build),
            ...priced(shown === 'items', [item]),
          ),
        )),
  ]);
  return table(columns, rows);
}

/** What comes without a line of its own. */
export const includesRow = (includes: readonly string[]) =>
  includes.length === 0 ? [] : [row('includes', '', { text: '', list: includes })];

interface ItemGroup {
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

/** What an item is, in words for its buyer: "2 × Bow seat", and what it is under it. */
export function itemCell(
  { kind, name, description, quantity }: CustomerItem,
  build: CustomerBuild,
): Cell {
  const made = { outboard: outboardSentence, trailer: trailerSentence };
  const under = kind === 'outboard' || kind === 'trailer' ? made[kind](build) : description;
  return { text: quantity > 1 ? `${quantity} × ${name}` : name, under: under ?? '' };
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
