import type { Build, BuildItem } from '../../resolve/index.ts';
import { type Formatter, type Metres, metres, NO_BREAK } from '../../units/index.ts';
import { type Cell, column, type FullCell, heads, row, type Row } from '../blocks/block.ts';
import { countOf } from '../sections/words.ts';

/** Nearer to the centreline than this is on it: half a millimetre. */
const ON_CENTRE = 0.0005;

/** How things are marked in drawing and lists. */
export interface Marks {
  /** The number of an item in the drawing, by its key. */
  readonly numbers: ReadonlyMap<string, string>;
  /** The variation that an item came with, by its name: "V1". */
  readonly changes: ReadonlyMap<string, string>;
}

export const PLACE_COLUMNS = [
  column('number', 'No.'),
  column('head', 'Item'),
  ...heads('num', 'Forward', 'Across', 'Up'),
];

/** Where every item goes that has a place in the boat, in the order of the Build. */
export const placingList = ({ items }: Build, marks: Marks, format: Formatter): readonly Row[] =>
  items
    .filter(({ kind }) => kind !== 'shell' && kind !== 'structure' && kind !== 'trailer')
    .map((item) => placedRow(item, marks, format));

/**
 * One item with its place in workshop dimensions, from transom, centreline and baseline.
 *
 * @param before - cells before its number
 */
export function placedRow(
  item: BuildItem,
  { numbers, changes }: Marks,
  format: Formatter,
  ...before: readonly Cell[]
): Row {
  const quantity = countOf(item.quantity, format);
  const change = changes.get(item.name);
  const name: FullCell = {
    text: item.name,
    ...(change !== undefined && { tag: change }),
    ...(quantity !== '' && { strong: quantity }),
  };
  const cells = [...before, numbers.get(item.key) ?? '', name];
  const instead = insteadOfPlace(item);
  return instead === ''
    ? row('plain', ...cells, ...placeCells(item.at, format))
    : row('includes', ...cells, instead);
}

function placeCells({ x, y, z }: BuildItem['at'], format: Formatter): readonly string[] {
  const forward =
    x < 0 ? `${format.dimension(metres(Math.abs(x)))}${NO_BREAK}behind` : format.dimension(x);
  return [forward, acrossText(y, format), format.dimension(z)];
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
