import { createReadStream, createWriteStream } from 'node:fs';
import { access, mkdir, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { createBrotliDecompress } from 'node:zlib';
import { extract } from 'tar-fs';

/** The browser that the optional package @sparticuz/chromium carries, unpacked and ready to start. */
export interface CarriedBrowser {
  readonly path: string;
  /** What the browser's own environment needs: its libraries, and fonts where the system has no font list. */
  readonly env: Readonly<Record<string, string>>;
}

/**
 * Unpacks the carried browser once into a cache folder.
 *
 * Two programs may do so at once: each unpacks into a folder of its own and renames it; the later one finds the
 * name taken and uses what is there.
 *
 * @param cache - the cache folder, absolute
 * @returns the browser, or in a sentence why there is none
 */
export async function carriedBrowser(cache: string): Promise<CarriedBrowser | string> {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    return `the browser that an npm package carries runs on Linux on x64 only, not on ${process.platform} on ${process.arch}`;
  }
  const packed = await findPackage();
  if (!packed)
    return 'the optional package @sparticuz/chromium is not installed (npm ci without --omit=optional installs it)';
  const folder = join(cache, `chromium-${packed.version}`);
  if (!(await exists(join(folder, 'complete')))) await unpack(packed.bin, cache, folder);
  const systemFonts = await exists('/etc/fonts/fonts.conf');
  return {
    path: join(folder, 'chromium'),
    env: {
      LD_LIBRARY_PATH: [join(folder, 'libraries', 'lib'), process.env['LD_LIBRARY_PATH']]
        .filter(Boolean)
        .join(':'),
      ...(!systemFonts && { FONTCONFIG_PATH: join(folder, 'fonts') }),
    },
  };
}

/** Where unpacked browsers and printed documents are kept between builds. */
export function cacheFolder(
  env: Readonly<Record<string, string | undefined>> = process.env,
): string {
  const named = env['ORLOP_CACHE'];
  if (named) return named;
  if (process.platform === 'win32') return join(env['LOCALAPPDATA'] ?? homedir(), 'orlop', 'cache');
  if (process.platform === 'darwin') return join(homedir(), 'Library', 'Caches', 'orlop');
  return join(env['XDG_CACHE_HOME'] ?? join(homedir(), '.cache'), 'orlop');
}

async function findPackage(): Promise<{ bin: string; version: string } | undefined> {
  try {
    const entry = createRequire(import.meta.url).resolve('@sparticuz/chromium');
    const root = join(dirname(entry), '..', '..');
    const facts: unknown = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'));
    const version =
      typeof facts === 'object' && facts && 'version' in facts ? String(facts.version) : 'unknown';
    return { bin: join(root, 'bin'), version };
  } catch {
    return undefined;
  }
}

async function unpack(bin: string, cache: string, folder: string): Promise<void> {
  await mkdir(cache, { recursive: true, mode: 0o700 });
  const own = await mkdtemp(join(cache, 'unpacking-'));
  try {
    const fonts = join(own, 'fonts');
    await Promise.all([
      pipeline(
        createReadStream(join(bin, 'chromium.br')),
        createBrotliDecompress(),
        createWriteStream(join(own, 'chromium'), { mode: 0o755 }),
      ),
      untar(join(bin, 'al2023.tar.br'), join(own, 'libraries')),
      untar(join(bin, 'fonts.tar.br'), fonts),
    ]);
    await writeFile(
      join(fonts, 'fonts.conf'),
      fontList(join(folder, 'fonts', 'fonts'), join(folder, 'font-cache')),
    );
    await writeFile(join(own, 'complete'), '');
    await rename(own, folder);
  } catch (error) {
    await rm(own, { recursive: true, force: true });
    // Another program was first: what it renamed into place is whole.
    if (!(await exists(join(folder, 'complete')))) throw error;
  }
}

async function untar(archive: string, to: string): Promise<void> {
  await pipeline(createReadStream(archive), createBrotliDecompress(), extract(to));
}

const fontList = (fonts: string, cache: string): string =>
  `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${fonts}</dir><cachedir>${cache}</cachedir></fontconfig>\n`;

async function exists(path: string): Promise<boolean> {
  try {
    await access(path);
    return true;
  } catch {
    return false;
  }
}
