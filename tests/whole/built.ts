import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, vi } from 'vitest';
import { main } from '../../src/cli/main.ts';

export const PROJECT = fileURLToPath(new URL('../../', import.meta.url));

export interface Built {
  /** Folder that the documents are in. */
  readonly out: string;
  readonly code: number;
  readonly said: string;
}

/** Builds a workspace once for all the tests of a file, as the command does, PDFs and all. */
export function builtOnce(workspace: () => string | Promise<string>): {
  readonly get: () => Built;
} {
  let built: Built | undefined;
  beforeAll(async () => {
    const folder = await workspace();
    const out = mkdtempSync(path.join(tmpdir(), 'orlop-whole-'));
    let said = '';
    const keep = (text: unknown): boolean => {
      said += String(text);
      return true;
    };
    const spies = [process.stdout, process.stderr].map((stream) =>
      vi.spyOn(stream, 'write').mockImplementation(keep),
    );
    vi.stubEnv('ORLOP_TODAY', '2026-11-26');
    const code = await main(['build', '--workspace', folder, '--out', out]);
    vi.unstubAllEnvs();
    for (const spy of spies) spy.mockRestore();
    built = { out, code, said };
  }, 120_000);
  afterAll(() => {
    if (built) rmSync(built.out, { recursive: true });
  });
  return {
    get: () => {
      if (!built) throw new Error('nothing is built yet');
      return built;
    },
  };
}

/** Every file under a folder, by its path from there with forward slashes. */
export function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'),
    )
    .toSorted();
}
