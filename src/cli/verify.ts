import { orderChecks, runChecks } from '../verify/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { loadWorkspace } from './load.ts';
import { inWords, printData } from './report.ts';

/** Prints one row for each check against the published world. */
export async function verify({ workspace, json }: CommandOptions<'verify'>): Promise<number> {
  const loaded = loadWorkspace(workspace);
  const orders = loaded.orders.flatMap((entry) => entry.figures ?? []);
  const checks = [...runChecks(), ...orderChecks(orders)];
  const failed = checks.filter(({ pass }) => !pass);
  if (json) {
    printData(checks, loaded);
  } else {
    for (const check of checks) {
      const sums = `${check.ours} ${check.unit}, published ${check.published}, off by ${check.error.toPrecision(2)} of ${check.tolerance}`;
      const row = `${check.pass ? 'pass' : 'FAIL'}  ${check.area}: ${check.name}: ${sums}\n      ${check.source}\n`;
      process.stdout.write(inWords(row, loaded));
    }
    process.stdout.write(`${checks.length - failed.length} of ${checks.length} checks pass\n`);
  }
  return failed.length === 0 ? EXIT.fine : EXIT.findings;
}
