import { DRIVE_CASES } from './cases-drive.ts';
import { ELECTRICS_CASES } from './cases-electrics.ts';
import { FLOAT_CASES } from './cases-float.ts';
import { LAMINATE_CASES } from './cases-laminate.ts';
import { LIMITS_CASES } from './cases-limits.ts';
import { MASS_CASES } from './cases-mass.ts';
import { MONEY_CASES } from './cases-money.ts';
import { PLAN_CASES } from './cases-plan.ts';
import { TAX_CASES } from './cases-tax.ts';
import { TOW_CASES } from './cases-tow.ts';
import { UNIT_CASES } from './cases-units.ts';
import type { Check, PublishedCase } from './types.ts';

const ALL_CASES: readonly PublishedCase[] = [
  ...UNIT_CASES,
  ...MONEY_CASES,
  ...TAX_CASES,
  ...MASS_CASES,
  ...FLOAT_CASES,
  ...DRIVE_CASES,
  ...LIMITS_CASES,
  ...TOW_CASES,
  ...LAMINATE_CASES,
  ...ELECTRICS_CASES,
  ...PLAN_CASES,
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
