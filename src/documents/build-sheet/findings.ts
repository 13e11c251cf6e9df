import { type Finding, FINDING_CODES, seenBy } from '../../findings/index.ts';
import type { ShopFinding } from './types.ts';

const WORDS = { error: 'Error', warning: 'Warning', note: 'Note' } as const;
const ORDER = ['error', 'warning', 'note'] as const;

/** What the checks found that whoever builds must know, one entry a code, the gravest first. */
export function shopFindings(findings: readonly Finding[]): readonly ShopFinding[] {
  const told = findings.filter((one) => seenBy(one, 'workshop'));
  const codes = [...new Set(told.map(({ code }) => code))];
  return ORDER.flatMap((severity) =>
    codes
      .filter((code) => FINDING_CODES[code].severity === severity)
      .map((code) => {
        const same = told.filter((one) => one.code === code);
        return {
          word: WORDS[severity],
          means: FINDING_CODES[code].means,
          details: same.map(detail),
          remedies: [...new Set(same.map(({ remedy }) => remedy))],
        };
      }),
  );
}

const detail = ({ received, expected }: Finding): string =>
  expected === undefined ? received : `${received}; wanted: ${expected}`;
