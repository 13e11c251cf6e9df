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

let published: readonly Check[] | undefined;

/**
 * Holds cases against what was published.
 *
 * @param cases - left out: every case that there is, computed once, for they depend on nothing
 */
export function runChecks(cases?: readonly PublishedCase[]): readonly Check[] {
  if (cases) return cases.map(checkOf);
  published ??= ALL_CASES.map(checkOf);
  return published;
}

function checkOf(one: PublishedCase): Check {
  const { area, name, source, published: wanted, unit, tolerance } = one;
  const ours = one.ours();
  const error = Math.abs(ours - wanted);
  return {
    area,
    name,
    source,
    published: wanted,
    ours,
    unit,
    error,
    tolerance,
    pass: error <= tolerance,
  };
}
