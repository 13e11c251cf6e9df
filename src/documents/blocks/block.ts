import type { CaptionedPicture, Picture } from '../sections/picture.ts';

/** A label with its value; an empty value is a blank to write in. */
export interface Field {
  readonly label: string;
  readonly value: string;
  /** Smaller, beside or under it. */
  readonly detail?: string;
}

/** Where a text leads. */
export interface Link {
  readonly text: string;
  readonly page: string;
  /** For those who only hear it, where the text alone does not say where it leads. */
  readonly label?: string;
}

/** What stands in a cell of a table or a line of a list: a text, with what belongs to it. */
export interface FullCell {
  readonly text: string;
  /** Framed, before all else: what a change brought. */
  readonly tag?: string;
  /** Heavy, before the text. */
  readonly strong?: string;
  /** Asks to be looked at, after the text. */
  readonly flag?: string;
  /** Smaller, under the text. */
  readonly under?: string;
  /** Numbers of the methods at the back. */
  readonly marks?: string;
  readonly list?: readonly string[];
  readonly fields?: readonly Field[];
  readonly links?: readonly Link[];
  /** Each with a box to tick. */
  readonly ticks?: readonly string[];
}

/** A line with a box to tick, and how much of it. */
interface CheckLine extends FullCell {
  readonly amount?: string;
}

export type Cell = string | FullCell;

export interface Column {
  readonly text: string;
  /**
   * head, and a text that comes first: names the row; num: figures under each other by their decimal points; write: blanks
   * to write in; tick: boxes to tick; the others by width and weight.
   */
  readonly kind:
    'head' | 'text' | 'num' | 'number' | 'value' | 'note' | 'day' | 'serial' | 'write' | 'tick';
}

export interface Row {
  /**
   * group: a heading within the table, then the last cells; includes: its last cell goes on to the end, as does that of
   * beneath, which belongs to the row above and has no box; flag: asks to be looked at.
   */
  readonly kind: 'plain' | 'part' | 'sum' | 'whole' | 'group' | 'includes' | 'beneath' | 'flag';
  readonly cells: readonly Cell[];
}

export interface Table {
  readonly block: 'table';
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** True: its headings are for those who only hear it. */
  readonly isBare: boolean;
  /** What it shows, where no heading above it does; on a screen such a table scrolls by itself. */
  readonly caption?: string;
}

/** What documents are made of; each has one template, in `templates/parts/blocks.njk`. */
export type Block =
  | Table
  | {
      readonly block: 'words';
      readonly style:
        | 'plain'
        | 'small'
        | 'signed'
        | 'list'
        | 'steps'
        | 'known'
        | 'methods'
        | 'said'
        | 'small-print'
        | 'findings';
      readonly words: readonly Cell[];
    }
  | {
      readonly block: 'facts';
      readonly style: 'glance' | 'effects' | 'totals' | 'measures' | 'sign';
      readonly facts: readonly Field[];
    }
  | { readonly block: 'picture'; readonly picture: CaptionedPicture }
  | {
      readonly block: 'checks';
      /** picks: materials with their amounts. */
      readonly style?: 'checks' | 'picks';
      readonly lines: readonly (string | CheckLine)[];
    }
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
  /** Of a stage: its number, and what stands at the right of its heading. */
  readonly number?: string;
  readonly beside?: readonly string[];
  /** How it looks, where it is one of several alike. */
  readonly style?: 'stage';
}

/** A part of what is given; a text is a paragraph. */
export const section = (
  id: string,
  heading: string,
  ...blocks: readonly (Block | string)[]
): Part => ({
  id,
  heading,
  blocks: blocks.flatMap((one) => (typeof one === 'string' ? words('plain', one) : [one])),
});

/** A part; none when it has no block. */
export const part = (id: string, heading: string, ...blocks: readonly Block[]): readonly Part[] =>
  blocks.length === 0 ? [] : [section(id, heading, ...blocks)];

type Style = Extract<Block, { block: 'words' }>['style'];

/** Paragraphs, a list or steps; none of nothing. */
export function words(style: Style, ...said: readonly Cell[]): readonly Block[] {
  return said.length === 0 ? [] : [{ block: 'words', style, words: said }];
}

/** Paragraphs, or a list where there are more than two. */
export const sentences = (said: readonly string[]): readonly Block[] =>
  words(said.length > 2 ? 'said' : 'plain', ...said);

/** Methods, sources and cautions; a list where there are more than two. */
export const smallPrint = (said: readonly string[]): readonly Block[] =>
  words(said.length > 2 ? 'small-print' : 'small', ...said);

/** A table under headings; none without rows. */
export function table(columns: readonly Column[], rows: readonly Row[]): readonly Table[] {
  return rows.length === 0 ? [] : [{ block: 'table', columns, rows, isBare: false }];
}

/** A table that needs no headings to be read; none without rows. */
export const bareTable = (columns: readonly Column[], rows: readonly Row[]): readonly Table[] =>
  table(columns, rows).map((one) => ({ ...one, isBare: true }));

/** A table that says what it shows. */
export const captioned = (
  caption: string,
  columns: readonly Column[],
  rows: readonly Row[],
): Table => ({ block: 'table', columns, rows, isBare: false, caption });

/** A column under its heading. */
export const column = (kind: Column['kind'], text: string): Column => ({ kind, text });
/** Columns of one kind, each under its heading. */
export const heads = (kind: Column['kind'], ...texts: readonly string[]): readonly Column[] =>
  texts.map((text) => column(kind, text));
/** Columns of a table that names things and gives figures of each. */
export const figureColumns = (name: string, ...figures: readonly string[]): readonly Column[] => [
  column('text', name),
  ...heads('num', ...figures),
];
/** A row of texts, one a column unless its kind goes on further. */
export const row = (kind: Row['kind'], ...cells: readonly Cell[]): Row => ({ kind, cells });

/** A value, or a blank to write in. */
export const blank = (value: string): FullCell => ({ text: '', fields: [{ label: '', value }] });

/** Labels with their values. */
export const factList = (
  style: Extract<Block, { block: 'facts' }>['style'],
  facts: readonly Field[],
): Block => ({ block: 'facts', style, facts });

/** Blocks under a heading of their own; an empty heading frames them. */
export const under = (style: string, heading: string, ...blocks: readonly Block[]): Block => ({
  block: 'under',
  style,
  heading,
  blocks,
});

/** A drawing with its words. */
export const picture = (drawn: CaptionedPicture | Picture): Block => ({
  block: 'picture',
  picture: { caption: '', ...drawn },
});
