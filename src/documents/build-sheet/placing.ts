import type { Build, BuildItem } from '../../resolve/index.ts';
import type { Formatter, Metres } from '../../units/index.ts';
import { metres } from '../../units/index.ts';
import type { PlacedItem } from './types.ts';
import { countOf } from '../sections/words.ts';
import { NO_BREAK } from '../../units/index.ts';

/** Nearer to the centreline than this is on it: half a millimetre. */
const ON_CENTRE = 0.0005;

/**
 * Where every item goes that has a place in the boat, in the order of the Build.
 *
 * @param numbers - the number of an item in the drawing, by its key
 * @param changes - the variation that an item came with, by its name
 */
export function placingList(
  { items }: Build,
  numbers: ReadonlyMap<string, string>,
  changes: ReadonlyMap<string, string>,
  format: Formatter,
): readonly PlacedItem[] {
  return items
    .filter(({ kind }) => kind !== 'shell' && kind !== 'structure' && kind !== 'trailer')
    .map((item) => placedItem(item, numbers, changes, format));
}

/** One item with its place in workshop dimensions, from transom, centreline and baseline. */
export function placedItem(
  item: BuildItem,
  numbers: ReadonlyMap<string, string>,
  changes: ReadonlyMap<string, string>,
  format: Formatter,
): PlacedItem {
  const { x, y, z } = item.at;
  const instead = insteadOfPlace(item);
  const told = (text: string): string => (instead === '' ? text : '');
  return {
    number: numbers.get(item.key) ?? '',
    quantity: countOf(item.quantity, format),
    name: item.name,
    change: changes.get(item.name) ?? '',
    forward: told(
      x < 0 ? `${format.dimension(metres(Math.abs(x)))}${NO_BREAK}behind` : format.dimension(x),
    ),
    across: told(acrossText(y, format)),
    up: told(format.dimension(z)),
    instead,
  };
}

function acrossText(y: Metres, format: Formatter): string {
  if (Math.abs(y) < ON_CENTRE) return '{centre}';
  return `${format.dimension(metres(Math.abs(y)))}${NO_BREAK}${y < 0 ? 'P' : 'S'}`;
}

function insteadOfPlace({ kind, placed }: BuildItem): string {
  if (kind === 'shell' || kind === 'structure') return 'the boat itself';
  if (kind === 'trailer') return 'under the boat';
  return placed ? '' : 'no position given: ask before fitting';
}
