import { byTier, orderChecks, runChecks } from '../verify/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { loadWorkspace } from './load.ts';
import { inWords, printData } from './report.ts';

/** Prints one row for each check against the published world. */
export async function verify({ workspace, json }: CommandOptions<'verify'>): Promise<number> {
  const loaded = loadWorkspace(workspace);
  const checks = [...runChecks(), ...orderChecks(loaded.orders)];
  const failed = checks.filter(({ pass }) => !pass);
  if (json) {
    printData(checks, loaded);
  } else {
    for (const check of checks) {
      const sums = `${check.ours} ${check.unit}, wanted ${check.published}, off by ${check.error.toPrecision(2)} of ${check.tolerance}; ${check.tier}`;
      const row = `${check.pass ? 'pass' : 'FAIL'}  ${check.area}: ${check.name}: ${sums}\n      ${check.source}\n`;
      process.stdout.write(inWords(row, loaded));
    }
    const tiers = byTier(checks).map(([tier, count]) => `${count} ${tier}`);
    process.stdout.write(
      `${checks.length - failed.length} of ${checks.length} checks pass: ${tiers.join(', ')}\n`,
    );
  }
  return failed.length === 0 ? EXIT.fine : EXIT.findings;
}
