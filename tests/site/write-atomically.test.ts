import { mkdir, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writeAtomically } from '../../src/site/index.ts';

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'orlop-write-'));
});
afterEach(() => rm(folder, { recursive: true }));

describe('writing a file', () => {
  it('makes the folders it needs and replaces what was there', async () => {
    const file = join(folder, 'customer', '2026-001', 'quote.html');
    await writeAtomically(file, 'old');
    await writeAtomically(file, new TextEncoder().encode('new'));
    expect(await readFile(file, 'utf8')).toBe('new');
    expect(await readdir(join(folder, 'customer', '2026-001'))).toEqual(['quote.html']);
  });

  it('leaves nothing half-written behind when it fails', async () => {
    const taken = join(folder, 'quote.html');
    await mkdir(join(taken, 'inside'), { recursive: true });
    await expect(writeAtomically(taken, 'text')).rejects.toThrow(/EISDIR|EPERM|ENOTEMPTY/);
    expect(await readdir(folder)).toEqual(['quote.html']);
  });
});
