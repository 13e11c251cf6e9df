import { describe, expect, it } from 'vitest';
import { browserCandidates } from '../../src/print/index.ts';

const around = (
  platform: NodeJS.Platform,
  env: Record<string, string>,
  there: readonly string[],
) => ({
  env,
  platform,
  home: platform === 'win32' ? 'C:\\pat' : '/pat',
  downloaded: undefined as string | undefined,
  exists: (path: string) => there.includes(path),
});

describe('the search for a browser', () => {
  it('puts the one that ORLOP_BROWSER names first, there or not', () => {
    const [first] = browserCandidates(around('linux', { ORLOP_BROWSER: '/nowhere/chrome' }, []));
    expect(first).toEqual({ kind: 'named', path: '/nowhere/chrome' });
  });

  it('finds Chrome before Chromium on the path of Linux', () => {
    const there = ['/usr/bin/chromium', '/usr/local/bin/google-chrome'];
    const found = browserCandidates(around('linux', { PATH: '/usr/local/bin:/usr/bin' }, there));
    expect(found.map(({ path }) => path)).toEqual([
      '/usr/local/bin/google-chrome',
      '/usr/bin/chromium',
      undefined,
    ]);
  });

  it('finds an app in the user’s own folder on macOS', () => {
    const app = '/pat/Applications/Chromium.app/Contents/MacOS/Chromium';
    expect(browserCandidates(around('darwin', {}, [app]))[0]).toEqual({
      kind: 'installed',
      path: app,
    });
  });

  it('finds Edge under Program Files on Windows', () => {
    const edge = 'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe';
    const env = { 'PROGRAMFILES(X86)': 'C:\\Program Files (x86)' };
    expect(browserCandidates(around('win32', env, [edge]))[0]).toEqual({
      kind: 'installed',
      path: edge,
    });
  });

  it('takes puppeteer’s own download when it is there, after what is installed', () => {
    const found = browserCandidates({
      ...around('linux', { PATH: '/usr/bin' }, ['/usr/bin/chromium', '/cache/chrome']),
      downloaded: '/cache/chrome',
    });
    expect(found.map(({ kind }) => kind)).toEqual(['installed', 'downloaded', 'carried']);
  });

  it('ends with the carried one, whatever else there is', () => {
    expect(browserCandidates(around('linux', {}, []))).toEqual([{ kind: 'carried' }]);
  });
});
