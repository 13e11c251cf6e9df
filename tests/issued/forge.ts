import { rmSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { openSealed, canonicalWithDigest } from '../../src/read/index.ts';
import { canonicalText, digestOf } from '../../src/read/ledger.ts';
import { sendingShop, type Shop } from './shop.ts';

export const LEDGER = 'orders/issued/ledger.jsonl';

export interface Attack {
  readonly name: string;
  readonly attack: (shop: Shop) => void;
  /** What is found. */
  readonly code: string;
  /** Orders of which nothing is shown any more; the others are as they were. */
  readonly lost: readonly string[];
}

type Json = Record<string, unknown>;
const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null;

/** A part of data, by its keys. */
export const inside = (value: unknown, ...keys: readonly string[]): Json =>
  keys.reduce<Json>(
    (at, key) => {
      const next = at[key];
      if (!isJson(next)) throw new Error(`no ${key}`);
      return next;
    },
    isJson(value) ? value : {},
  );

/** A quote's data with something else in it, and a digest of its own that fits. */
export function reseal(shop: Shop, name: string, change: (content: Json) => void): void {
  const content = openSealed(shop.bytes(`orders/issued/${name}`).toString('utf8'));
  if (!isJson(content)) throw new Error(`${name} is not sealed`);
  change(content);
  shop.write(`orders/issued/${name}`, canonicalWithDigest(content));
}

export const lines = (shop: Shop): string[] => shop.read(LEDGER).trimEnd().split('\n');
export const writeLines = (shop: Shop, all: readonly string[]): void =>
  shop.write(LEDGER, `${all.join('\n')}\n`);

/** The whole ledger written anew by somebody who knows how: every digest fits. */
export function rewriteLedger(shop: Shop, change: (line: Json, index: number) => void): void {
  let before = '0'.repeat(64);
  const all = lines(shop).map((text, index) => {
    const line: Json = JSON.parse(text);
    change(line, index);
    for (const kind of ['json', 'html', 'pdf']) {
      const name = `${String(line['number'])}-r${String(line['revision'])}.${kind}`;
      if (shop.has(`orders/issued/${name}`))
        inside(line, 'files')[kind] = digestOf(shop.bytes(`orders/issued/${name}`));
    }
    const next = canonicalText({ ...line, before });
    before = digestOf(next);
    return next;
  });
  writeLines(shop, all);
}

export const price = (amount: string) => (content: Json) => {
  inside(content, 'price')['driveAway'] = `${amount} AUD`;
};

export const gone = (shop: Shop, name: string): void => rmSync(shop.issued(name));
export const KINDS = ['json', 'html', 'pdf'] as const;

/** What each order has in the customers' half before the attack. */
const PAGES: Readonly<Record<string, readonly string[]>> = {
  'T-1': ['quote.html', 'quote-T-1-r2.pdf'],
  'T-2': ['quote.html'],
  'T-3': ['quote.html', 'quote-T-3-r1.pdf'],
  'T-4': ['quote.html'],
};

/** One shop a file of tests, of which each test gets a copy. */
export function shopToAttack(): { readonly base: () => Shop; readonly copy: () => Shop } {
  let base: Shop | undefined;
  const copies: Shop[] = [];
  beforeAll(async () => {
    base = await sendingShop();
  }, 60_000);
  afterEach(() => {
    for (const copy of copies.splice(0)) copy.remove();
  });
  afterAll(() => base?.remove());
  const known = (): Shop => base ?? expect.fail('no shop yet');
  return {
    base: known,
    copy: () => {
      const copy = known().copy();
      copies.push(copy);
      return copy;
    },
  };
}

/** The table: what is found, nothing in its place, no issue, and the others as they were. */
export function attacked(attacks: readonly Attack[]): void {
  const { base, copy } = shopToAttack();
  it.each(attacks.map((one) => [one.name, one.code, one] as const))('%s: %s', async (...row) => {
    const { attack, code, lost } = row[2];
    const shop = copy();
    attack(shop);
    expect(await shop.on('2026-03-26', 'build', '--no-pdf')).toBe(1);
    expect(shop.said).toContain(`[${code}]`);
    for (const [number, pages] of Object.entries(PAGES)) {
      const urls = pages.map((page) => `_site/customer/${number}/${page}`);
      const same = urls.filter((url) => shop.has(url) && shop.bytes(url).equals(base().bytes(url)));
      expect(same, number).toEqual(lost.includes(number) ? [] : urls);
      expect(
        urls.filter((url) => shop.has(url)),
        number,
      ).toEqual(same);
    }
    for (const number of lost) {
      const before = shop.has(LEDGER) && shop.read(LEDGER);
      expect(await shop.on('2026-03-27', 'issue', number), number).not.toBe(0);
      expect(shop.has(LEDGER) && shop.read(LEDGER)).toBe(before);
    }
  });
}
