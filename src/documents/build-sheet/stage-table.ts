/** A column of a stage's table: write columns are blanks, tick columns a box to tick. */
export interface StageColumn {
  readonly text: string;
  readonly kind: 'text' | 'figure' | 'write' | 'tick';
}

export interface StageRow {
  /** One cell a column: a text, or texts with a box to tick before each. */
  readonly cells: readonly (string | readonly string[])[];
}

/** A table that a stage of the build sheet carries beside its lists. */
export interface StageTable {
  /** Unique in the document. */
  readonly id: string;
  readonly heading: string;
  readonly words: readonly string[];
  readonly columns: readonly StageColumn[];
  readonly rows: readonly StageRow[];
  /** Methods and cautions: small print below. */
  readonly notes: readonly string[];
  /** Of two that stand side by side, which one it is; empty when it has the width to itself. */
  readonly half: '' | 'left' | 'right';
}

/** A column of words. */
export const text = (heading: string): StageColumn => ({ text: heading, kind: 'text' });
/** A column of figures. */
export const figure = (heading: string): StageColumn => ({ text: heading, kind: 'figure' });
/** A column of blanks to write in. */
export const write = (heading: string): StageColumn => ({ text: heading, kind: 'write' });
/** A column of boxes to tick. */
export const tick = (heading: string): StageColumn => ({ text: heading, kind: 'tick' });
/** A row of the cells given. */
export const row = (...cells: StageRow['cells']): StageRow => ({ cells });

/** A table with what is given; words and notes are empty when left out. */
export function stageTable(
  id: string,
  heading: string,
  parts: Pick<StageTable, 'columns' | 'rows'> &
    Partial<Pick<StageTable, 'words' | 'notes' | 'half'>>,
): StageTable {
  return { id, heading, words: [], notes: [], half: '', ...parts };
}
