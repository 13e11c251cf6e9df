import { type Finding, positionAt } from '../../src/findings/index.ts';

/** "CODE line:column" of each finding; "CODE" alone of one without a range. */
export function spots(findings: readonly Finding[], text: string): readonly string[] {
  return findings.map(({ code, place }) => {
    if (!place.range) return code;
    const { line, column } = positionAt(text, place.range[0]);
    return `${code} ${line}:${column}`;
  });
}

/** The characters that each finding points at. */
export function pointedAt(findings: readonly Finding[], text: string): readonly string[] {
  return findings.map(({ place }) => (place.range ? text.slice(...place.range) : ''));
}
