import type { Block, Cell, Field, Row } from '../../src/documents/blocks/block.ts';
import type { Letter } from '../../src/documents/index.ts';

/** All blocks of a part, those under its own headings too; none when the letter has no such part. */
export const blocksOf = (letter: Letter, id: string): readonly Block[] =>
  letter.parts.filter((part) => part.id === id).flatMap(({ blocks }) => blocks.flatMap(within));

const within = (block: Block): readonly Block[] =>
  block.block === 'under' ? [block, ...block.blocks.flatMap(within)] : [block];

export const rowsOf = (letter: Letter, id: string): readonly Row[] =>
  blocksOf(letter, id).flatMap((block) => (block.block === 'table' ? block.rows : []));

/** What a cell says: its text, or the values of its fields. */
export const saidIn = (cell: Cell | undefined): string => {
  if (cell === undefined || typeof cell === 'string') return cell ?? '';
  return cell.text === '' && cell.fields ? cell.fields.map(({ value }) => value).join() : cell.text;
};

/** The row of a part that begins with a label, its cells as texts. */
export const rowOf = (letter: Letter, id: string, label: string | RegExp): readonly string[] => {
  const is = (text: string) => (typeof label === 'string' ? text === label : label.test(text));
  const found = rowsOf(letter, id).find(({ cells }) => is(saidIn(cells[0])));
  return found?.cells.map(saidIn) ?? [];
};

/** What is smaller under the first cell of that row. */
export const underOf = (letter: Letter, id: string, label: string): string => {
  const found = rowsOf(letter, id).find(({ cells }) => saidIn(cells[0]) === label);
  const [cell] = found?.cells ?? [];
  return typeof cell === 'object' ? (cell.under ?? '') : '';
};

export const factsOf = (letter: Letter, id: string): readonly Field[] =>
  blocksOf(letter, id).flatMap((block) => (block.block === 'facts' ? block.facts : []));

/** Words of a style, each as its text. */
export const wordsOf = (
  letter: Letter,
  id: string,
  style: Extract<Block, { block: 'words' }>['style'],
): readonly string[] =>
  blocksOf(letter, id).flatMap((block) =>
    block.block === 'words' && block.style === style ? block.words.map(saidIn) : [],
  );

/** How figures were found: mark, title and text of each method. */
export const methodsOf = (letter: Letter) =>
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
export const marksOf = (letter: Letter, id: string) =>
  rowsOf(letter, id).map(({ cells: [cell] }) => ({
    label: saidIn(cell),
    marks: typeof cell === 'object' ? (cell.marks ?? '') : '',
  }));

export const signersOf = (letter: Letter): readonly string[] =>
  letter.parts
    .flatMap(({ blocks }) => blocks.flatMap(within))
    .flatMap((block) => (block.block === 'signatures' ? block.parties : []));

/** Headings inside a part. */
export const headingsIn = (letter: Letter, id: string): readonly string[] =>
  blocksOf(letter, id).flatMap((block) => (block.block === 'under' ? [block.heading] : []));

/** The final price on page one, what it includes, and how far the quote counts. */
export function panelOf(letter: Letter): Extract<Block, { block: 'panel' }> {
  const panel = blocksOf(letter, 'page-one').find((block) => block.block === 'panel');
  if (panel?.block !== 'panel') throw new Error('a quote has a price');
  return panel;
}
