import { execFile } from 'node:child_process';
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../../src/print/index.ts';

const run = promisify(execFile);
const starts = fileURLToPath(new URL('start-carried.ts', import.meta.url));
const carries = process.platform === 'linux' && process.arch === 'x64';
let cache = '';

beforeAll(async () => {
  cache = await mkdtemp(join(tmpdir(), 'orlop-carried-'));
});
afterAll(() => rm(cache, { recursive: true, force: true }));

const start = (before?: readonly [string, ...string[]]) => {
  const words = [process.execPath, '--import', 'tsx', starts, cache];
  return before
    ? run(before[0], [...before.slice(1), ...words], { timeout: 60_000 })
    : run(process.execPath, words.slice(1), { timeout: 60_000 });
};

/** Libraries that a bare Debian has not, and that the browser needs. */
const HIDDEN = /lib(?:nss3|nssutil3|nspr4|smime3|plc4|plds4|expat)\.so/;

async function hiddenLibraries(): Promise<readonly string[]> {
  const { stdout } = await run('ldconfig', ['-p']);
  return stdout
    .split('\n')
    .filter((line) => HIDDEN.test(line))
    .map((line) => line.replace(/^.*=> /, ''));
}

describe.runIf(carries)('the browser that a package carries', () => {
  it('is unpacked once when two builds start together', async () => {
    const both = await Promise.all([start(), start()]);
    expect(both.map(({ stdout }) => stdout.trim())).toEqual(['started 143', 'started 143']);
    expect(await readdir(cache)).toEqual(['chromium-143.0.4']);
  }, 90_000);

  it.runIf(process.getuid?.() === 0)(
    'starts where the system has no NSS, NSPR or expat',
    async ({ skip }) => {
      const libraries = await hiddenLibraries();
      const hide =
        libraries.map((file) => `mount --bind /dev/null '${file}'`).join(' && ') || 'true';
      const inside = ['unshare', '--mount', 'sh', '-c', `${hide} && exec "$@"`, 'sh'] as const;
      const mayMount = await run('unshare', ['--mount', 'true']).then(
        () => true,
        () => false,
      );
      if (!mayMount) skip('this machine lets nobody mount');
      const { stdout } = await start(inside);
      expect(stdout.trim()).toBe('started 143');
      // The same program without the libraries it brings does not even tell its version there.
      const alone = [...inside.slice(1), join(cache, 'chromium-143.0.4', 'chromium'), '--version'];
      await expect(run('unshare', alone)).rejects.toThrow('error while loading shared libraries');
    },
    90_000,
  );

  it('is reached by falling past a browser that does not start', async () => {
    const opened = await openBrowser(
      [{ kind: 'installed', path: '/bin/false' }, { kind: 'carried' }],
      cache,
    );
    expect(opened.browser?.connected).toBe(true);
    expect('warnings' in opened ? opened.warnings : []).toEqual([
      expect.stringContaining('/bin/false does not start'),
    ]);
    await opened.browser?.close();
  }, 60_000);
});

describe('the search for a browser, when it ends with none', () => {
  it('says what was tried and how to get one', async () => {
    const opened = await openBrowser([{ kind: 'installed', path: '/nowhere/chrome' }], cache);
    expect(opened.browser).toBeUndefined();
    expect('reason' in opened ? opened.reason : '').toMatch(/no \/nowhere\/chrome.*ORLOP_BROWSER/s);
  });

  it('ends at a browser that ORLOP_BROWSER names and that is not there', async () => {
    const opened = await openBrowser(
      [{ kind: 'named', path: '/nowhere/chrome' }, { kind: 'carried' }],
      cache,
    );
    expect(opened.browser).toBeUndefined();
    expect('reason' in opened ? opened.reason : '').toContain(
      'ORLOP_BROWSER: there is no /nowhere/chrome',
    );
  });
});
