import { type Audience, type CodeFacts, FINDING_CODES } from '../../findings/index.ts';
import type { Yard } from '../../schema/index.ts';
import type { Check } from '../../verify/index.ts';
import { pageHead, type PageHead } from '../sections/head.ts';

export interface CheckRow {
  readonly name: string;
  readonly source: string;
  readonly published: string;
  readonly ours: string;
  readonly unit: string;
  readonly error: string;
  readonly tolerance: string;
  readonly result: string;
  readonly pass: boolean;
}

export interface ChecksView {
  readonly document: PageHead;
  readonly summary: string;
  readonly areas: readonly { readonly area: string; readonly rows: readonly CheckRow[] }[];
  readonly codes: readonly {
    readonly code: string;
    readonly severity: string;
    readonly audience: Audience;
    /** "safety" where a person could be hurt; else empty. */
    readonly safety: string;
    readonly means: string;
    readonly remedy: string;
  }[];
}

/** Why to trust a figure: every check against the published world, and every finding that a check can raise. */
export function checksView(checks: readonly Check[], yard: Yard): ChecksView {
  const areas = [...new Set(checks.map(({ area }) => area))];
  const passed = checks.filter(({ pass }) => pass).length;
  return {
    document: pageHead(
      yard,
      'Checks against published values',
      'What the computations were held against',
    ),
    summary: `${passed} of ${checks.length} checks pass.`,
    areas: areas.map((area) => ({
      area,
      rows: checks.filter((check) => check.area === area).map(checkRow),
    })),
    codes: Object.entries<CodeFacts>(FINDING_CODES).map(
      ([code, { severity, audience, safety, means, remedy }]) => ({
        code,
        severity,
        audience,
        safety: safety === true ? 'safety' : '',
        means,
        remedy,
      }),
    ),
  };
}

function checkRow(check: Check): CheckRow {
  return {
    name: check.name,
    source: check.source,
    published: plain(check.published),
    ours: plain(check.ours),
    unit: check.unit,
    error: check.error === 0 ? '0' : check.error.toExponential(1),
    tolerance: check.tolerance === 0 ? 'exact' : check.tolerance.toExponential(1),
    result: check.pass ? 'pass' : 'fails',
    pass: check.pass,
  };
}

/** Up to ten significant digits, without an exponent where that can be read. */
function plain(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(10))) : 'not computed';
}
