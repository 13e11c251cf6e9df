import { posix, win32 } from 'node:path';

/** A browser that may be there. */
export interface BrowserCandidate {
  readonly kind: 'named' | 'installed' | 'downloaded' | 'carried';
  /** Executable; undefined for the carried one, which is unpacked first. */
  readonly path?: string;
}

export interface Surroundings {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: NodeJS.Platform;
  readonly home: string;
  /** Where puppeteer's own download would be; undefined when it knows none. */
  readonly downloaded: string | undefined;
  readonly exists: (path: string) => boolean;
}

const LINUX_NAMES = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'microsoft-edge-stable',
  'microsoft-edge',
];
const MAC_APPS = [
  'Google Chrome.app/Contents/MacOS/Google Chrome',
  'Chromium.app/Contents/MacOS/Chromium',
  'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];
const WINDOWS_PROGRAMS = [
  'Google/Chrome/Application/chrome.exe',
  'Chromium/Application/chrome.exe',
  'Microsoft/Edge/Application/msedge.exe',
];

/**
 * The browsers to try, first to last: the one that ORLOP_BROWSER names, those that are installed, puppeteer's own
 * download, the one that an npm package carries.
 *
 * @returns only paths that exist, except the named one (so that a wrong name is told, not passed over)
 */
export function browserCandidates(around: Surroundings): readonly BrowserCandidate[] {
  const named = around.env['ORLOP_BROWSER'];
  const installed = installedPaths(around).filter((path) => around.exists(path));
  return [
    ...(named ? [{ kind: 'named', path: named } as const] : []),
    ...installed.map((path) => ({ kind: 'installed', path }) as const),
    ...(around.downloaded !== undefined && around.exists(around.downloaded)
      ? [{ kind: 'downloaded', path: around.downloaded } as const]
      : []),
    { kind: 'carried' },
  ];
}

function installedPaths({ env, platform, home }: Surroundings): readonly string[] {
  if (platform === 'win32') {
    const roots = [env['PROGRAMFILES'], env['PROGRAMFILES(X86)'], env['LOCALAPPDATA']];
    return WINDOWS_PROGRAMS.flatMap((program) =>
      roots.flatMap((root) => (root ? [win32.join(root, program)] : [])),
    );
  }
  if (platform === 'darwin') {
    return MAC_APPS.flatMap((app) => [
      posix.join('/Applications', app),
      posix.join(home, 'Applications', app),
    ]);
  }
  const folders = (env['PATH'] ?? '').split(':').filter((folder) => folder.startsWith('/'));
  const onPath = LINUX_NAMES.flatMap((name) => folders.map((folder) => posix.join(folder, name)));
  const known = [
    '/opt/google/chrome/chrome',
    '/usr/bin/chromium',
    '/usr/lib/chromium/chromium',
    '/snap/bin/chromium',
    '/opt/microsoft/msedge/msedge',
  ];
  return [...new Set([...onPath, ...known])];
}
