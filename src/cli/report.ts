import { type Finding, renderFinding } from '../findings/index.ts';
import { editedData, type Edition, inEdition } from '../words/index.ts';
import type { LoadedWorkspace } from './load.ts';

/** The English of a terminal: the shop's, where its yard file can be read. */
const editionOf = ({ catalogue }: LoadedWorkspace): Edition =>
  catalogue?.yard.value ?? { locale: 'en-GB' };

/** Our own words as a terminal prints them. */
export const inWords = (text: string, loaded: LoadedWorkspace): string =>
  inEdition(text, editionOf(loaded));

/** Prints data for a script. */
export function printData(data: unknown, loaded: LoadedWorkspace): void {
  process.stdout.write(`${JSON.stringify(editedData(data, editionOf(loaded)), undefined, 2)}\n`);
}

/** Prints findings for a person, errors last so that they are what stays on the screen. */
export function reportFindings(findings: readonly Finding[], loaded: LoadedWorkspace): void {
  const weight = { note: 0, warning: 1, error: 2 } as const;
  const sorted = findings.toSorted((a, b) => weight[a.severity] - weight[b.severity]);
  for (const finding of sorted)
    process.stdout.write(`${inWords(renderFinding(finding, loaded.sources), loaded)}\n\n`);
  const counted = (['error', 'warning', 'note'] as const).map((severity) => {
    const count = findings.filter((one) => one.severity === severity).length;
    return `${count} ${severity}${count === 1 ? '' : 's'}`;
  });
  process.stdout.write(`${counted.join(', ')}\n`);
}
