import { UNIT_KINDS } from './unit-table.ts';

/** What one of a part is, as price lists write it: a count, or a unit of some kind. Suppliers' own, whatever is printed in. */
export const PART_UNITS = [
  'each',
  'set',
  'sheet',
  'm',
  'ft',
  'yd',
  'm2',
  'ft2',
  'yd2',
  'kg',
  'lb',
  'L',
  'US gal',
] as const;

/** What follows one, and what follows any other quantity, where the unit itself would read ill. */
const WORDS: ReadonlyMap<string, readonly [one: string, more: string]> = new Map([
  ['m2', ['m²', 'm²']],
  ['ft2', ['ft²', 'ft²']],
  ['yd2', ['yd²', 'yd²']],
  ['each', ['', '']],
  ['set', ['set', 'sets']],
  ['sheet', ['sheet', 'sheets']],
]);

/** A part's unit behind a quantity of it: "m²", "sheets"; empty for pieces. */
export const partUnitText = (unit: string, isOne = false): string =>
  WORDS.get(unit)?.[isOne ? 0 : 1] ?? unit;

/** How much one of a part's unit is in SI, by the kind of unit; undefined for counts and for other kinds. */
export function partUnitSize(kind: 'length' | 'area' | 'mass', unit: string): number | undefined {
  const units: ReadonlyMap<string, number> = new Map(Object.entries(UNIT_KINDS[kind]));
  return units.get(unit);
}
