import { type Finding, renderFinding } from '../findings/index.ts';

/** Prints findings for a person, errors last so that they are what stays on the screen. */
export function reportFindings(
  findings: readonly Finding[],
  sources: ReadonlyMap<string, string>,
): void {
  const weight = { note: 0, warning: 1, error: 2 } as const;
  const sorted = findings.toSorted((a, b) => weight[a.severity] - weight[b.severity]);
  for (const finding of sorted) process.stdout.write(`${renderFinding(finding, sources)}\n\n`);
  const count = (severity: Finding['severity']) =>
    findings.filter((one) => one.severity === severity).length;
  process.stdout.write(
    `${count('error')} errors, ${count('warning')} warnings, ${count('note')} notes\n`,
  );
}
