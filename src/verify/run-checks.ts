import { MASS_CASES } from './cases-mass.ts';
import { MONEY_CASES } from './cases-money.ts';
import { TAX_CASES } from './cases-tax.ts';
import { UNIT_CASES } from './cases-units.ts';
import type { Check, PublishedCase } from './types.ts';

const ALL_CASES: readonly PublishedCase[] = [
  ...UNIT_CASES,
  ...MONEY_CASES,
  ...TAX_CASES,
  ...MASS_CASES,
];

/** Computes every case and holds it against what was published. */
export function runChecks(cases: readonly PublishedCase[] = ALL_CASES): readonly Check[] {
  return cases.map(({ area, name, source, published, unit, tolerance, ours }) => {
    const computed = ours();
    const error = Math.abs(computed - published);
    return {
      area,
      name,
      source,
      published,
      ours: computed,
      unit,
      error,
      tolerance,
      pass: error <= tolerance,
    };
  });
}
