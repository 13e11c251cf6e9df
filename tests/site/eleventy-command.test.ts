import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';

describe('.eleventy.js', () => {
  it('lets Eleventy’s own command start with our settings and make no page of a template', async () => {
    const command = ['node_modules/@11ty/eleventy/cmd.cjs', '--dryrun'];
    const { stdout } = await promisify(execFile)(process.execPath, command, { timeout: 9000 });
    expect(stdout).toMatch(/Wrote 0 files/);
  });
});
