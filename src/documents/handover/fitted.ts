import type { CustomerBuild } from '../../figures/index.ts';
import { formatterOf } from '../../units/index.ts';
import { type Block, column, type Field, row, table } from '../blocks/block.ts';
import { groupItems, includesRow, itemCell } from '../quote/items.ts';

type CustomerItem = CustomerBuild['items'][number];
type Recorded = NonNullable<CustomerBuild['order']['record']>['serials'];

/**
 * What is in the boat, group by group, with its serial numbers or blanks for them.
 *
 * A recorded number that belongs to no item is listed by itself.
 *
 * @param numbers - the number of an item in the drawing, by its key
 */
export function fittedItems(
  build: CustomerBuild,
  numbers: ReadonlyMap<string, string>,
): readonly Block[] {
  const { hull, items, order } = build;
  const recorded = order.record?.serials ?? [];
  const others = recorded.filter((one) => ownerOf(one, items) === undefined);
  const rows = groupItems(items).flatMap((group) => [
    row('group', group.isHull ? hull.name : group.name),
    ...(group.isHull
      ? includesRow(hull.includes)
      : group.items.map((item) =>
          row('plain', numbers.get(item.key) ?? '', itemCell(item, build), {
            text: '',
            fields: serialsOf(item, recorded, build),
          }),
        )),
  ]);
  return table(COLUMNS, [
    ...rows,
    ...(others.length > 0 ? [row('group', 'Other serial numbers')] : []),
    ...others.map(({ item, serial }) => row('plain', '', item, serial)),
  ]);
}

const COLUMNS = [
  column('number', 'No.'),
  column('text', 'Item'),
  column('serial', 'Serial number'),
];

/** One field for each that is ordered of an item with serial numbers, and for every number on record. */
function serialsOf(
  item: CustomerItem,
  recorded: Recorded,
  { items, yard }: CustomerBuild,
): readonly Field[] {
  const own = recorded.filter((one) => ownerOf(one, items) === item).map(({ serial }) => serial);
  const count = Math.max(own.length, item.serial ? item.instances.length : 0);
  const format = formatterOf(yard);
  return Array.from({ length: count }, (_, index) => ({
    label: count === 1 ? 'Serial number' : `Serial number ${format.number(index + 1, 0)}`,
    value: own[index] ?? '',
  }));
}

/**
 * The item that a recorded number belongs to: the one whose whole name the record's begins with, the longest such
 * name; else the outboard or the trailer, of which a boat has one, when the record begins with that word.
 */
function ownerOf(
  { item: written }: Recorded[number],
  items: readonly CustomerItem[],
): CustomerItem | undefined {
  const text = written.trim().toLowerCase();
  const named = items
    .filter(({ name }) => beginsWith(text, name.toLowerCase()))
    .toSorted((a, b) => b.name.length - a.name.length);
  return (
    named[0] ??
    items.find(({ kind }) => (kind === 'outboard' || kind === 'trailer') && beginsWith(text, kind))
  );
}

/** True when a text is the words, or goes on after them with something else than a letter or a digit. */
function beginsWith(text: string, words: string): boolean {
  return text.startsWith(words) && !/^[\p{L}\p{N}]/u.test(text.slice(words.length));
}
