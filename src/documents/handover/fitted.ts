import type { CustomerBuild } from '../../figures/index.ts';
import { formatterOf } from '../../units/index.ts';
import type { FittedGroup, HandoverField, HandoverView } from './types.ts';
import { describeItem, groupItems } from '../quote/items.ts';

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
): Pick<HandoverView, 'fitted' | 'otherSerials'> {
  const { hull, items, order } = build;
  const recorded = order.record?.serials ?? [];
  const fitted = groupItems(items).map((group): FittedGroup => ({
    name: group.isHull ? hull.name : group.name,
    includes: group.isHull ? hull.includes : [],
    items: group.isHull
      ? []
      : group.items.map((item) => ({
          ...describeItem(item, build),
          number: numbers.get(item.key) ?? '',
          serials: serialsOf(item, recorded, build),
        })),
  }));
  const otherSerials = recorded
    .filter((one) => ownerOf(one, items) === undefined)
    .map(({ item, serial }) => ({ label: item, value: serial }));
  return { fitted, otherSerials };
}

/** One field for each that is ordered of an item with serial numbers, and for every number on record. */
function serialsOf(
  item: CustomerItem,
  recorded: Recorded,
  { items, yard }: CustomerBuild,
): readonly HandoverField[] {
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
