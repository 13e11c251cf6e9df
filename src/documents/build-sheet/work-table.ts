import { type Block, type Column, type Row, table, under, words } from '../blocks/block.ts';

interface Work {
  /** What to know before it is read. */
  readonly said?: readonly string[];
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Methods and cautions: small print below. */
  readonly notes?: readonly string[];
}

/** Rows of a table that is too long to keep to one sheet. */
const LONG = 14;

/** A table that a stage's trade works by, under its own heading. */
export const workTable = (heading: string, { said = [], columns, rows, notes = [] }: Work): Block =>
  under(
    rows.length < LONG ? 'stage-table whole' : 'stage-table',
    heading,
    ...words('plain', ...said),
    ...table(columns, rows),
    ...words('small', ...notes),
  );
