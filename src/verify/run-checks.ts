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
import { type Check, type PublishedCase, type Tier, TIERS } from './types.ts';

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

/** How many there are: one that is lost is told. */
const ROWS = 271;

/** How a source words where its value was had: only one that it prints is first hand, a rule worked by us is derived. */
const SAID: readonly (readonly [RegExp, Tier])[] = [
  [/from memory|no source/i, 'from memory'],
  [
    /second hand|secondary|as a .* (?:site|reader|bulletin)|a public worked example|builders’ site/i,
    'second hand',
  ],
  [/as printed/, 'first hand'],
];

/** The tier of a value, as its source words it. */
export const tierOf = (source: string): Tier =>
  SAID.find(([words]) => words.test(source))?.[1] ?? 'derived';

let published: readonly Check[] | undefined;

/**
 * Holds cases against what was published.
 *
 * @param cases - left out: every case that there is, computed once, for they depend on nothing
 */
export function runChecks(cases?: readonly PublishedCase[]): readonly Check[] {
  if (cases) return cases.map((one) => checkOf(one));
  published ??= [...ALL_CASES, rowsOf('published rows', ROWS, ALL_CASES.length)].map((one) =>
    checkOf(one),
  );
  return published;
}

/** That no row is lost. */
export const rowsOf = (name: string, wanted: number, found: number): PublishedCase => ({
  area: 'rows',
  name,
  source: 'derived: counted when the list was last changed',
  published: wanted,
  unit: '',
  tolerance: 0,
  ours: () => found,
});

/** How many of the checks there are of each tier, those without any left out. */
export const byTier = (checks: readonly Check[]): readonly (readonly [Tier, number])[] =>
  TIERS.map((tier) => [tier, checks.filter((one) => one.tier === tier).length] as const).filter(
    ([, count]) => count > 0,
  );

/**
 * A case, computed.
 *
 * @returns the difference in the case’s unit, NaN where ours is no number: then it fails
 */
export function checkOf(one: PublishedCase, tier = tierOf(one.source)): Check {
  const { area, name, source, published: wanted, unit, tolerance } = one;
  const ours = one.ours();
  const error = Math.abs(ours - wanted);
  return {
    tier,
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
