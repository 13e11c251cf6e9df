import type { PublishedCase } from './types.ts';

/** What is computed in a sentence, its value, the unit, ours, and the largest difference that passes, in the unit. */
export type Row = readonly [
  name: string,
  published: number,
  unit: string,
  ours: () => number | object | undefined,
  tolerance?: number,
];

/**
 * Makes the cases of one area: rows that have one source.
 *
 * Without a tolerance the value is exact but for the last digits of the machine. What is not computed is no number.
 */
export const casesIn =
  (area: string) =>
  (source: string, ...rows: readonly Row[]): readonly PublishedCase[] =>
    rows.map(([name, published, unit, ours, tolerance = Math.abs(published) * 1e-9]) => ({
      area,
      name,
      source,
      published,
      unit,
      tolerance,
      ours: () => {
        const value = ours();
        return typeof value === 'number' ? value : Number.NaN;
      },
    }));
