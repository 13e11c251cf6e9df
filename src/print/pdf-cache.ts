import {
  chmod,
  mkdir,
  readdir,
  readFile,
  rename,
  rm,
  stat,
  utimes,
  writeFile,
} from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** Of what was last used so long ago nothing is kept. */
const MAX_AGE_DAYS = 60;
/** Bytes; what was used longest ago goes first. */
const MAX_SIZE = 400 * 1024 * 1024;

/** Printed documents, by the digest of all that they were made of. */
export interface PdfCache {
  get(shelf: string, name: string): Promise<Uint8Array | undefined>;
  keep(shelf: string, name: string, pdf: Uint8Array): Promise<void>;
  /** Takes out what is too old, then what is too much. */
  prune(limits?: { readonly days: number; readonly bytes: number }): Promise<void>;
}

/**
 * Opens the cache in a folder that nobody else may look into.
 *
 * @param folder - made when it is not there; its rights are taken back to the user's own (0700)
 * @returns undefined when the folder cannot be made private: then nothing is kept
 */
export async function openPdfCache(folder: string): Promise<PdfCache | undefined> {
  const root = join(folder, 'pdf');
  try {
    await mkdir(root, { recursive: true, mode: 0o700 });
    for (const own of [folder, root]) await chmod(own, 0o700);
  } catch {
    return undefined;
  }
  const fileOf = (shelf: string, name: string): string => join(root, shelf, `${name}.pdf`);
  return {
    async get(shelf, name) {
      const file = fileOf(shelf, name);
      try {
        const pdf = await readFile(file);
        const now = new Date();
        await utimes(file, now, now);
        return pdf;
      } catch {
        return undefined;
      }
    },
    async keep(shelf, name, pdf) {
      const file = fileOf(shelf, name);
      await mkdir(dirname(file), { recursive: true, mode: 0o700 });
      await writeWhole(file, pdf);
    },
    async prune({ days, bytes } = { days: MAX_AGE_DAYS, bytes: MAX_SIZE }) {
      const oldest = Date.now() - days * 86_400_000;
      let size = 0;
      for (const one of await filesByUse(root)) {
        size += one.size;
        if (one.used < oldest || size > bytes) await rm(one.file, { force: true });
      }
    },
  };
}

/** Every file below a folder, the one used last first. */
async function filesByUse(root: string) {
  const entries = await readdir(root, { recursive: true, withFileTypes: true });
  const files = await Promise.all(
    entries
      .filter((entry) => entry.isFile())
      .map(async (entry) => {
        const file = join(entry.parentPath, entry.name);
        // Another program may have taken it out just now.
        const facts = await stat(file).catch(() => undefined);
        return facts ? [{ file, size: facts.size, used: facts.mtimeMs }] : [];
      }),
  );
  return files.flat().toSorted((a, b) => b.used - a.used);
}

/** Writes a file under another name beside it, then renames it. */
export async function writeWhole(file: string, bytes: Uint8Array): Promise<void> {
  const own = temporaryName(file);
  try {
    await writeFile(own, bytes);
    await rename(own, file);
  } catch (error) {
    await rm(own, { force: true });
    throw error;
  }
}

let names = 0;
function temporaryName(file: string): string {
  names += 1;
  return `${file}.${process.pid}-${names}.tmp`;
}
