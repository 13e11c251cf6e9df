import { type Finding, renderFinding } from '../findings/index.ts';
import { inEdition } from '../words/index.ts';

/** On the terminal our own words are those of the program. */
export const TERMINAL = { locale: 'en-GB' };

/** Prints findings for a person, errors last so that they are what stays on the screen. */
export function reportFindings(
  findings: readonly Finding[],
  sources: ReadonlyMap<string, string>,
): void {
  const weight = { note: 0, warning: 1, error: 2 } as const;
  const sorted = findings.toSorted((a, b) => weight[a.severity] - weight[b.severity]);
  for (const finding of sorted)
    process.stdout.write(`${inEdition(renderFinding(finding, sources), TERMINAL)}\n\n`);
  const counted = (['error', 'warning', 'note'] as const).map((severity) => {
    const count = findings.filter((one) => one.severity === severity).length;
    return `${count} ${severity}${count === 1 ? '' : 's'}`;
  });
  process.stdout.write(`${counted.join(', ')}\n`);
}
