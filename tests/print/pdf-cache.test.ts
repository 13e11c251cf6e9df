import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openPdfCache, type PdfCache } from '../../src/print/pdf-cache.ts';

let folder: string;
let cache: PdfCache;
const bytes = (count: number): Uint8Array => new Uint8Array(count);
const modeOf = (file: string): number => statSync(file).mode % 0o1000;
const kept = (shelf: string): readonly string[] =>
  readdirSync(join(folder, 'pdf', shelf)).toSorted();
const used = (name: string, daysAgo: number): void => {
  const then = new Date(Date.now() - daysAgo * 86_400_000);
  utimesSync(join(folder, 'pdf/yard', `${name}.pdf`), then, then);
};

beforeEach(async () => {
  folder = join(mkdtempSync(join(tmpdir(), 'orlop-cache-')), 'orlop');
  cache = (await openPdfCache(folder)) ?? expect.fail('no cache');
});
afterEach(() => rmSync(join(folder, '..'), { recursive: true }));

describe('the cache of PDFs', () => {
  it('is nobody else\u2019s to read, even where it was before', async () => {
    await cache.keep('yard', 'a', bytes(1));
    const folders = [folder, join(folder, 'pdf'), join(folder, 'pdf/yard')];
    expect(folders.map(modeOf)).toEqual([0o700, 0o700, 0o700]);
    chmodSync(folder, 0o755);
    await openPdfCache(folder);
    expect(modeOf(folder)).toBe(0o700);
  });

  it('holds what customers get apart from the rest', async () => {
    await cache.keep('yard', 'same', bytes(1));
    expect(await cache.get('customer', 'same')).toBeUndefined();
    await cache.keep('customer', 'same', bytes(2));
    expect([await cache.get('yard', 'same'), await cache.get('customer', 'same')]).toEqual([
      Buffer.from(bytes(1)),
      Buffer.from(bytes(2)),
    ]);
  });

  it('forgets what was not used for so many days, and keeps what was', async () => {
    for (const name of ['old', 'older', 'new']) await cache.keep('yard', name, bytes(10));
    used('old', 59);
    used('older', 61);
    await cache.prune({ days: 60, bytes: 1000 });
    expect(kept('yard')).toEqual(['new.pdf', 'old.pdf']);
    used('old', 61);
    await cache.get('yard', 'old');
    await cache.prune({ days: 60, bytes: 1000 });
    expect(kept('yard')).toEqual(['new.pdf', 'old.pdf']);
  });

  it('takes no more room than allowed: what was used longest ago goes first', async () => {
    for (const [name, days] of [
      ['a', 3],
      ['b', 2],
      ['c', 1],
    ] as const) {
      await cache.keep('yard', name, bytes(100));
      used(name, days);
    }
    await cache.prune({ days: 60, bytes: 200 });
    expect(kept('yard')).toEqual(['b.pdf', 'c.pdf']);
  });

  it('is not there where its folder cannot be one', async () => {
    const taken = join(folder, 'taken');
    mkdirSync(folder, { recursive: true });
    writeFileSync(taken, '');
    expect(await openPdfCache(taken)).toBeUndefined();
  });
});
