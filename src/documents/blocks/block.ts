import type { CaptionedPicture, Picture } from '../sections/picture.ts';

/** A label with its value; an empty value is a blank to write in. */
export interface Field {
  readonly label: string;
  readonly value: string;
  /** Smaller, beside or under it. */
  readonly detail?: string;
}

/** What stands in a cell of a table: a text, with what belongs to it. */
export interface FullCell {
  readonly text: string;
  /** Smaller, under the text. */
  readonly under?: string;
  /** Numbers of the methods at the back. */
  readonly marks?: string;
  readonly list?: readonly string[];
  readonly fields?: readonly Field[];
}

export type Cell = string | FullCell;

export interface Column {
  readonly text: string;
  /** head: names the row; num: figures under each other by their decimal points; the others by width and weight. */
  readonly kind: 'head' | 'text' | 'num' | 'number' | 'value' | 'note' | 'day' | 'serial';
}

export interface Row {
  /** group: a heading within the table, then the last cells; includes: its last cell goes on to the end. */
  readonly kind: 'plain' | 'part' | 'sum' | 'whole' | 'group' | 'includes';
  readonly cells: readonly Cell[];
}

export interface Table {
  readonly block: 'table';
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** True: its headings are for those who only hear it. */
  readonly isBare: boolean;
}

/** What documents are made of; each has one template, in `templates/parts/blocks.njk`. */
export type Block =
  | Table
  | {
      readonly block: 'words';
      readonly style: 'plain' | 'small' | 'signed' | 'list' | 'steps' | 'known' | 'methods';
      readonly words: readonly Cell[];
    }
  | {
      readonly block: 'facts';
      readonly style: 'glance' | 'effects' | 'fields';
      readonly facts: readonly Field[];
    }
  | { readonly block: 'picture'; readonly picture: CaptionedPicture }
  | { readonly block: 'checks'; readonly lines: readonly string[] }
  | { readonly block: 'signatures'; readonly parties: readonly string[] }
  | {
      readonly block: 'panel';
      readonly heading: string;
      readonly value: string;
      readonly words: readonly string[];
      readonly standing: Standing;
    }
  | {
      readonly block: 'under';
      readonly style: string;
      readonly heading: string;
      readonly blocks: readonly Block[];
    };

/** How far a document counts: in a word, and in a sentence. */
export interface Standing {
  readonly kind: string;
  readonly word: string;
  readonly sentence: string;
}

/** One subject of a document. */
export interface Part {
  /** Unique in its document. */
  readonly id: string;
  /** Empty: it has none. */
  readonly heading: string;
  readonly blocks: readonly Block[];
}

/** A part; none when it has no block. */
export const part = (id: string, heading: string, ...blocks: readonly Block[]): readonly Part[] =>
  blocks.length === 0 ? [] : [{ id, heading, blocks }];

/** Paragraphs, a list or steps; none of nothing. */
export function words(
  style: Extract<Block, { block: 'words' }>['style'],
  ...said: readonly Cell[]
): readonly Block[] {
  return said.length === 0 ? [] : [{ block: 'words', style, words: said }];
}

/** A table under headings; none without rows. */
export function table(columns: readonly Column[], rows: readonly Row[]): readonly Block[] {
  return rows.length === 0 ? [] : [{ block: 'table', columns, rows, isBare: false }];
}

/** A table that needs no headings to be read; none without rows. */
export function bareTable(columns: readonly Column[], rows: readonly Row[]): readonly Block[] {
  return rows.length === 0 ? [] : [{ block: 'table', columns, rows, isBare: true }];
}

/** A column under its heading. */
export const column = (kind: Column['kind'], text: string): Column => ({ kind, text });
/** A row of texts, one a column unless its kind goes on further. */
export const row = (kind: Row['kind'], ...cells: readonly Cell[]): Row => ({ kind, cells });

/** A value, or a blank to write in. */
export const blank = (value: string, label = ''): FullCell => ({
  text: '',
  fields: [{ label, value }],
});

/** A drawing with its words. */
export const picture = (drawn: CaptionedPicture | Picture): Block => ({
  block: 'picture',
  picture: { caption: '', ...drawn },
});
