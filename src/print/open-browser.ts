import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import puppeteer, { type Browser } from 'puppeteer';
import { cacheFolder, carriedBrowser } from './carried-browser.ts';
import { type BrowserCandidate, browserCandidates } from './find-browser.ts';

/** First version with the margin boxes of CSS paged media, which carry page numbers and running heads. */
const MIN_VERSION = 131;
const LAUNCH_MS = 30_000;

const HOW_TO_GET_ONE =
  'Install Chrome, Chromium or Edge (version 131 or later), or set ORLOP_BROWSER to the program file of one, ' +
  'or run npm ci without --omit=optional on Linux for the browser that a package carries.';

export interface OpenBrowser {
  readonly browser: Browser;
  readonly version: string;
  /** Browsers that were passed over, and why. */
  readonly warnings: readonly string[];
}

/** Why no browser could be started, in sentences that end with how to get one. */
export interface NoBrowser {
  readonly browser?: never;
  readonly reason: string;
}

/**
 * Starts the first browser that works, from the candidates in their order.
 *
 * A browser that ORLOP_BROWSER names and that does not work is an end of the search: whoever named it wants that one.
 *
 * @param candidates - left out: those of this machine
 */
export async function openBrowser(
  candidates: readonly BrowserCandidate[] = candidatesHere(),
  cache: string = cacheFolder(),
): Promise<OpenBrowser | NoBrowser> {
  const warnings: string[] = [];
  for (const candidate of candidates) {
    const tried = await tryBrowser(candidate, cache);
    if (typeof tried !== 'string') return { ...tried, warnings };
    if (candidate.kind === 'named') return { reason: `ORLOP_BROWSER: ${tried}. ${HOW_TO_GET_ONE}` };
    warnings.push(tried);
  }
  return { reason: `No browser to print with: ${warnings.join('; ')}. ${HOW_TO_GET_ONE}` };
}

function candidatesHere(): readonly BrowserCandidate[] {
  return browserCandidates({
    env: process.env,
    platform: process.platform,
    home: homedir(),
    downloaded: downloadedPath(),
    exists: existsSync,
  });
}

function downloadedPath(): string | undefined {
  try {
    return puppeteer.executablePath();
  } catch {
    return undefined;
  }
}

async function tryBrowser(
  { kind, path }: BrowserCandidate,
  cache: string,
): Promise<Pick<OpenBrowser, 'browser' | 'version'> | string> {
  const found = path === undefined ? await carriedBrowser(cache) : { path, env: {} };
  if (typeof found === 'string') return found;
  if (!existsSync(found.path)) return `there is no ${found.path}`;
  let browser: Browser;
  try {
    browser = await launch(found.path, found.env, kind === 'carried');
  } catch (error) {
    const [line = ''] = (error instanceof Error ? error.message : String(error)).split('\n');
    return `${found.path} does not start (${line.trim()})`;
  }
  const version = (await browser.version()).replace(/^.*\//, '');
  if (Number.parseInt(version, 10) >= MIN_VERSION) return { browser, version };
  await browser.close();
  return `${found.path} is version ${version}, older than ${MIN_VERSION}`;
}

function launch(
  path: string,
  env: Readonly<Record<string, string>>,
  carried: boolean,
): Promise<Browser> {
  // Chromium refuses to sandbox itself as root, and the carried one has no sandbox helper. Pages come from
  // text, without scripts and without the network, so nothing foreign runs in it.
  const unsandboxed = carried || process.getuid?.() === 0;
  return puppeteer.launch({
    executablePath: path,
    headless: carried ? 'shell' : true,
    // A browser that is spoken to through a pipe ends when the pipe does: when the program is killed, too.
    pipe: true,
    timeout: LAUNCH_MS,
    protocolTimeout: 60_000,
    env: { ...process.env, ...env },
    args: [
      '--host-resolver-rules=MAP * ~NOTFOUND',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--disable-gpu',
      '--font-render-hinting=none',
      '--disable-dev-shm-usage',
      ...(unsandboxed ? ['--no-sandbox'] : []),
      ...(carried ? ['--no-zygote'] : []),
    ],
  });
}
