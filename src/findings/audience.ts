import { type Audience, AUDIENCES, type CodeFacts } from './code-facts.ts';
import { FINDING_CODES } from './codes.ts';
import type { Finding } from './finding.ts';

type Said = Pick<Finding, 'code' | 'received' | 'expected'>;

/** True when somebody may see a finding. */
export function seenBy({ code }: Pick<Finding, 'code'>, reader: Audience): boolean {
  return AUDIENCES.indexOf(FINDING_CODES[code].audience) <= AUDIENCES.indexOf(reader);
}

/** The findings that a person could be hurt by ignoring. */
export function safetyFindings<One extends Pick<Finding, 'code'>>(
  findings: readonly One[],
): readonly One[] {
  return findings.filter(({ code }) => factsOf(code).safety === true);
}

/** What a customer is told of a finding: what it means, then its figures where they are fit to be told; empty when it is not for them. */
export function toldToCustomer({ code, received, expected }: Said): readonly string[] {
  const { toCustomer, figures } = factsOf(code);
  if (toCustomer === undefined) return [];
  if (figures === undefined || (expected === undefined && figures.includes('{expected}')))
    return [toCustomer];
  return [
    toCustomer,
    figures.replaceAll('{received}', () => received).replaceAll('{expected}', () => expected ?? ''),
  ];
}

const factsOf = (code: Finding['code']): CodeFacts => FINDING_CODES[code];

/** The names in figures.json of the facts that findings of a code are about, with a star for what differs. */
export function factsAbout(code: Finding['code']): readonly string[] {
  return factsOf(code).about ?? [];
}
