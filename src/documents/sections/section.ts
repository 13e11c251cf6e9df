import type { CaptionedPicture } from './picture.ts';

export interface SectionColumn {
  readonly text: string;
  /** Figures stand under each other by their decimal points. */
  readonly kind: 'text' | 'figure';
}

export interface SectionRow {
  /** One text a column. */
  readonly cells: readonly string[];
  /** A sum stands under a rule; a flagged row asks to be looked at. */
  readonly kind: 'plain' | 'sum' | 'flag';
}

export interface SectionTable {
  /** What the table shows, for those who only hear it; also printed. */
  readonly caption: string;
  readonly columns: readonly SectionColumn[];
  readonly rows: readonly SectionRow[];
}

/** One subject of a page: words, tables, drawings and cautions, in that order. */
export interface Section {
  /** Unique on its page. */
  readonly id: string;
  readonly heading: string;
  readonly words: readonly string[];
  readonly tables: readonly SectionTable[];
  readonly pictures: readonly CaptionedPicture[];
  /** Methods, sources and cautions: small print below. */
  readonly notes: readonly string[];
}

/** A section with what is given; the rest of it empty. */
export function section(
  id: string,
  heading: string,
  parts: Partial<Omit<Section, 'id' | 'heading'>>,
): Section {
  return { id, heading, words: [], tables: [], pictures: [], notes: [], ...parts };
}

/** A column of words. */
export const textColumn = (text: string): SectionColumn => ({ text, kind: 'text' });
/** A column of figures. */
export const figureColumn = (text: string): SectionColumn => ({ text, kind: 'figure' });
/** A row like the others. */
export const plainRow = (...cells: readonly string[]): SectionRow => ({ cells, kind: 'plain' });
/** A row that adds up those above. */
export const sumRow = (...cells: readonly string[]): SectionRow => ({ cells, kind: 'sum' });
/** A row that asks to be looked at. */
export const flagRow = (...cells: readonly string[]): SectionRow => ({ cells, kind: 'flag' });
