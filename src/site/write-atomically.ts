import { randomUUID } from 'node:crypto';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
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
