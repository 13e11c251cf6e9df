import { describePlace, factsAbout, hasErrors } from '../findings/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { allFindings, noSuchOrder, loadWorkspace } from './load.ts';
import { refuse } from './refuse.ts';
import { printData, reportFindings } from './report.ts';

/** Reads every file and says what is wrong with it. */
export async function check({ workspace, only, json }: CommandOptions<'check'>): Promise<number> {
  const loaded = loadWorkspace(workspace);
  const unknown = noSuchOrder(loaded, only);
  if (unknown !== undefined) return refuse('check', unknown);
  const findings = allFindings(loaded, only);
  if (json) {
    const located = findings.map((one) => ({
      ...one,
      about: factsAbout(one.code),
      at: describePlace(one.place, loaded.sources.get(one.place.file)),
    }));
    printData(located, loaded);
  } else {
    reportFindings(findings, loaded);
  }
  return hasErrors(findings) ? EXIT.findings : EXIT.fine;
}
