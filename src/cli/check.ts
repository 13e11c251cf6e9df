import { describePlace, hasErrors } from '../findings/index.ts';
import type { CommandOptions } from './command-line.ts';
import { EXIT } from './exit.ts';
import { allFindings, knowsOrder, loadWorkspace } from './load.ts';
import { refuse } from './refuse.ts';
import { reportFindings } from './report.ts';

/** Reads every file and says what is wrong with it. */
export async function check({ workspace, only, json }: CommandOptions): Promise<number> {
  const loaded = loadWorkspace(workspace);
  if (only !== undefined && !knowsOrder(loaded, only))
    return refuse('check', `there is no order ${only} in ${workspace}`);
  const findings = allFindings(loaded, only);
  if (json) {
    const located = findings.map((one) => ({
      ...one,
      at: describePlace(one.place, loaded.sources.get(one.place.file)),
    }));
    process.stdout.write(`${JSON.stringify(located, undefined, 2)}\n`);
  } else {
    reportFindings(findings, loaded.sources);
  }
  return hasErrors(findings) ? EXIT.findings : EXIT.fine;
}
