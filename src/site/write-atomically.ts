import { randomUUID } from 'node:crypto';
import { link, mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/**
 * Writes a file under another name beside it, then renames it, so that a reader sees the old file or the new
 * one and never half of one. Folders that are missing are made; after a failure nothing is left behind.
 */
export async function writeAtomically(file: string, content: string | Uint8Array): Promise<void> {
  await mkdir(dirname(file), { recursive: true });
  const unfinished = `${file}.${randomUUID()}.tmp`;
  try {
    await writeFile(unfinished, content);
    await rename(unfinished, file);
  } catch (error) {
    await rm(unfinished, { force: true });
    throw error;
  }
}

/**
 * Writes a file that must not be there yet: whole or not at all.
 *
 * @throws EEXIST when it is there, and leaves it as it is
 */
export async function writeOnce(file: string, content: string): Promise<void> {
  await mkdir(dirname(file), { recursive: true });
  const unfinished = `${file}.${randomUUID()}.tmp`;
  try {
    await writeFile(unfinished, content);
    // A link, unlike a rename, never takes the place of what is there.
    await link(unfinished, file);
  } finally {
    await rm(unfinished, { force: true });
  }
}
