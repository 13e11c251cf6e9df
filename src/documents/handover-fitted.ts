import type { Build, BuildItem } from '../resolve/index.ts';
import { createFormatter } from '../units/index.ts';
import type { FittedGroup, HandoverField, HandoverView } from './handover-types.ts';
import { describeItem, groupItems } from './quote-items.ts';

type Recorded = NonNullable<Build['order']['record']>['serials'];

/**
 * What is in the boat, group by group, with its serial numbers or blanks for them.
 *
 * A recorded number belongs to the item that is called the same, in small letters or capitals; what belongs to
 * no item is listed by itself.
 *
 * @param numbers - the number of an item in the drawing, by its key
 */
export function fittedItems(
  build: Build,
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
    .filter((one) => !items.some((item) => isOf(item, one)))
    .map(({ item, serial }) => ({ label: item, value: serial }));
  return { fitted, otherSerials };
}

/** One field for each that is ordered of an item with serial numbers, and for every number on record. */
function serialsOf(item: BuildItem, recorded: Recorded, { yard }: Build): readonly HandoverField[] {
  const own = recorded.filter((one) => isOf(item, one)).map(({ serial }) => serial);
  const count = Math.max(own.length, item.serial ? item.quantity : 0);
  const format = createFormatter(yard.locale, yard.units);
  return Array.from({ length: count }, (_, index) => ({
    label: count === 1 ? 'Serial number' : `Serial number ${format.number(index + 1, 0)}`,
    value: own[index] ?? '',
  }));
}

/** A record names an item as the order does; “outboard” and “trailer” are enough, for a boat has one of each. */
function isOf({ name, kind }: BuildItem, { item }: Recorded[number]): boolean {
  const written = item.trim().toLowerCase();
  return written === name.toLowerCase() || written === kind;
}
