import type { Block, Cell, Field, Part, Row, Table } from '../../src/documents/blocks/block.ts';
import type { Picture } from '../../src/documents/sections/picture.ts';

/** A document or a page: what is read here are its parts. */
interface Parted {
  readonly parts: readonly Part[];
}

/** A part by itself. */
export const alone = (part: Part): Parted => ({ parts: [part] });

const within = (block: Block): readonly Block[] =>
  block.block === 'under' ? [block, ...block.blocks.flatMap(within)] : [block];

/** All blocks of a part, those under its own headings too; none when there is no such part. */
export const blocksOf = ({ parts }: Parted, id: string): readonly Block[] =>
  parts.filter((part) => part.id === id).flatMap(({ blocks }) => blocks.flatMap(within));

export const tablesOf = (document: Parted, id: string): readonly Table[] =>
  blocksOf(document, id).filter((block) => block.block === 'table');

export const rowsOf = (document: Parted, id: string): readonly Row[] =>
  tablesOf(document, id).flatMap(({ rows }) => rows);

export const picturesOf = (document: Parted, id: string): readonly Picture[] =>
  blocksOf(document, id).flatMap((block) => (block.block === 'picture' ? [block.picture] : []));

/** What a cell says: its texts, or the values of its fields. */
export const saidIn = (cell: Cell | undefined): string => {
  if (cell === undefined || typeof cell === 'string') return cell ?? '';
  const { tag, strong, text, flag, fields = [], links = [], list = [], ticks = [] } = cell;
  const said = [tag, strong, text, flag].filter((one) => one !== undefined && one !== '').join(' ');
  const more = [
    ...fields.map(({ value }) => value),
    ...links.map((link) => link.text),
    ...list,
    ...ticks,
  ];
  return said === '' ? more.join() : said;
};

export const cellsOf = ({ cells }: Row): readonly string[] => cells.map(saidIn);

/** All words of a part, those in its tables and pictures too. */
export const saidBy = (part: Part): string =>
  part.blocks
    .flatMap(within)
    .flatMap((block) => {
      if (block.block === 'words') return block.words.map(saidIn);
      if (block.block === 'picture') return [block.picture.alt, block.picture.caption];
      if (block.block === 'table') return [block.caption ?? '', ...block.rows.flatMap(cellsOf)];
      return [];
    })
    .join('\n');

/** The row of a part that begins with a label, its cells as texts. */
export const rowOf = (letter: Parted, id: string, label: string | RegExp): readonly string[] => {
  const is = (text: string) => (typeof label === 'string' ? text === label : label.test(text));
  const found = rowsOf(letter, id).find(({ cells }) => is(saidIn(cells[0])));
  return found?.cells.map(saidIn) ?? [];
};

/** What is smaller under the first cell of that row. */
export const underOf = (letter: Parted, id: string, label: string): string => {
  const found = rowsOf(letter, id).find(({ cells }) => saidIn(cells[0]) === label);
  const [cell] = found?.cells ?? [];
  return typeof cell === 'object' ? (cell.under ?? '') : '';
};

export const factsOf = (letter: Parted, id: string): readonly Field[] =>
  blocksOf(letter, id).flatMap((block) => (block.block === 'facts' ? block.facts : []));

/** Words of a style, or all of them, each as its text. */
export const wordsOf = (
  letter: Parted,
  id: string,
  style?: Extract<Block, { block: 'words' }>['style'],
): readonly string[] =>
  blocksOf(letter, id).flatMap((block) =>
    block.block === 'words' && (style === undefined || block.style === style)
      ? block.words.map(saidIn)
      : [],
  );

/** How figures were found: mark, title and text of each method. */
export const methodsOf = (letter: Parted) =>
  blocksOf(letter, 'how-found').flatMap((block) =>
    block.block === 'words' && block.style === 'methods'
      ? block.words.map((one, index) => ({
          mark: `${index + 1}`,
          title: saidIn(one),
          text: typeof one === 'object' ? (one.under ?? '') : '',
        }))
      : [],
  );

/** Label and marks of the figures of a part. */
export const marksOf = (letter: Parted, id: string) =>
  rowsOf(letter, id).map(({ cells: [cell] }) => ({
    label: saidIn(cell),
    marks: typeof cell === 'object' ? (cell.marks ?? '') : '',
  }));

export const signersOf = (letter: Parted): readonly string[] =>
  letter.parts
    .flatMap(({ blocks }) => blocks.flatMap(within))
    .flatMap((block) => (block.block === 'signatures' ? block.parties : []));

/** Headings inside a part. */
export const headingsIn = (letter: Parted, id: string): readonly string[] =>
  blocksOf(letter, id).flatMap((block) => (block.block === 'under' ? [block.heading] : []));

/** The final price on page one, what it includes, and how far the quote counts. */
export function panelOf(letter: Parted): Extract<Block, { block: 'panel' }> {
  const panel = blocksOf(letter, 'page-one').find((block) => block.block === 'panel');
  if (panel?.block !== 'panel') throw new Error('a quote has a price');
  return panel;
}
