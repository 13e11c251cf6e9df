import { describePlace, type Finding, FINDING_CODES } from '../../findings/index.ts';

/** A finding in words for a page of the yard. */
export interface FindingLine {
  readonly severity: string;
  readonly code: string;
  readonly means: string;
  readonly received: string;
  readonly expected: string;
  readonly remedy: string;
  readonly place: string;
}

const SEVERITY_WORDS = { error: 'Error', warning: 'Warning', note: 'Note' } as const;

/**
 * @param sources - the text of each file by its name, for line and column
 */
export function findingLine(finding: Finding, sources: ReadonlyMap<string, string>): FindingLine {
  return {
    severity: SEVERITY_WORDS[finding.severity],
    code: finding.code,
    means: FINDING_CODES[finding.code].means,
    received: finding.received,
    expected: finding.expected ?? '',
    remedy: finding.remedy,
    place: describePlace(finding.place, sources.get(finding.place.file)),
  };
}
