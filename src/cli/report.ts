import { type Finding, renderFinding } from '../findings/index.ts';
import { type Edition, inEdition } from '../words/index.ts';
import type { LoadedWorkspace } from './load.ts';

/** The English of a terminal: the shop's, where its yard file can be read. */
export const editionOf = ({ catalogue }: Pick<LoadedWorkspace, 'catalogue'>): Edition =>
  catalogue?.yard.value ?? { locale: 'en-GB' };

/** Prints findings for a person, errors last so that they are what stays on the screen. */
export function reportFindings(findings: readonly Finding[], loaded: LoadedWorkspace): void {
  const edition = editionOf(loaded);
  const weight = { note: 0, warning: 1, error: 2 } as const;
  const sorted = findings.toSorted((a, b) => weight[a.severity] - weight[b.severity]);
  for (const finding of sorted)
    process.stdout.write(`${inEdition(renderFinding(finding, loaded.sources), edition)}\n\n`);
  const counted = (['error', 'warning', 'note'] as const).map((severity) => {
    const count = findings.filter((one) => one.severity === severity).length;
    return `${count} ${severity}${count === 1 ? '' : 's'}`;
  });
  process.stdout.write(`${counted.join(', ')}\n`);
}
