import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { accountOf, driftOf, openIssued } from '../../src/issued/index.ts';
import { exactText } from '../../src/money/index.ts';
import { openSealed } from '../../src/read/index.ts';
import { orders, ROOT } from '../demonstration/workspace.ts';
import { inside } from './forge.ts';

/** The sealed quotes of the demonstration: none of them is written again, and each has what its day gave it. */
const SENT = [
  ['DC-2601-r1', '73957.20'],
  ['DC-2603-r1', '144576.90'],
  ['DC-2604-r1', '47168.60'],
  ['DC-2605-r1', '97181.29'],
  ['DC-2606-r1', '147339.51'],
  ['DC-2609-r1', '110462.60'],
  ['DC-2609-r2', '114210.96'],
  ['DC-2609-r3', '114214.76'],
] as const;

const FOLDER = path.join(ROOT, 'orders/issued');
const contentOf = (name: string): unknown =>
  openSealed(readFileSync(path.join(FOLDER, `${name}.json`), 'utf8'));
const entryOf = (number: string) => {
  const entry = orders.find(({ order }) => order.value.number === number);
  if (!entry?.quoted) throw new Error(`${number} has no figures`);
  return { order: entry.order.value, quoted: entry.quoted };
};

describe('a quote of the first form', () => {
  it.each(SENT)('%s is read, with all that its price is made of', (name, price) => {
    const quote = openIssued(contentOf(name));
    expect(quote && `${quote.number}-r${quote.revision}`).toBe(name);
    expect(quote && exactText(quote.price.driveAway)).toBe(price);
    const { order, quoted } = entryOf(name.slice(0, 7));
    expect(quote && driftOf(quote, quoted)).toHaveProperty('rows');
    expect(quote && exactText(accountOf(quote, order).quoted)).toBe(price);
  });

  const content = contentOf('DC-2606-r1');
  const { order, quoted } = entryOf('DC-2606');
  /** The content without one field, and what is then left of it. */
  function without(...keys: readonly string[]) {
    const copy: unknown = structuredClone(content);
    delete inside(copy, ...keys.slice(0, -1))[keys.at(-1) ?? ''];
    return openIssued(copy);
  }

  it.each([
    ['rules.margins', 'build', 'yard', 'margins'],
    ['rules.overhead', 'build', 'yard', 'overhead'],
    ['rules.taxRounding', 'build', 'yard', 'tax', 'rounding'],
    ['rules.exchange', 'build', 'exchange'],
    ['items.3.quantity', 'build', 'items', '3', 'quantity'],
    ['items.3.class', 'build', 'items', '3', 'marginClass'],
    ['items.0.parts.0.cost', 'build', 'items', '0', 'parts', '0', 'unitCost'],
    ['packages.0', 'build', 'packages', '0', 'share'],
  ])('that lacks %s has its account, and no cost of today', (what, ...keys) => {
    const quote = without('figures', ...keys);
    expect(quote && exactText(accountOf(quote, order).quoted)).toBe('147339.51');
    expect(quote && driftOf(quote, quoted)).toEqual({
      notComputed: `the quote is of an earlier program, and ${what} is not in it`,
    });
  });

  it.each([
    ['price', 'driveAway'],
    ['price', 'taxable'],
    ['price', 'lines'],
    ['build', 'currency'],
    ['build', 'order', 'status'],
    ['build', 'yard', 'tax', 'rate'],
  ])('that lacks %s %s is not read', (...keys) => {
    expect(without('figures', ...keys)).toBeUndefined();
  });

  it('can lack any field of those that the program kept: it is read or not, and nothing breaks', () => {
    const build = inside(content, 'figures', 'build');
    const paths = [
      ...Object.keys(build).map((name) => [name]),
      ...['yard', 'order'].flatMap((part) =>
        Object.keys(inside(build, part)).map((name) => [part, name]),
      ),
      ...Object.keys(inside(build, 'items', '0')).map((name) => ['items', '0', name]),
    ];
    const read = paths.flatMap((keys) => without('figures', 'build', ...keys) ?? []);
    for (const quote of read)
      expect(Object.keys(driftOf(quote, quoted))).toContainEqual(
        expect.stringMatching(/^(?:rows|notComputed)$/),
      );
    expect(paths.length).toBeGreaterThan(80);
  });
});

it('no sealed quote of the demonstration is left out here', () => {
  const names = readdirSync(FOLDER).filter((name) => name.endsWith('.json'));
  expect(SENT.map(([name]) => `${name}.json`)).toEqual(names.toSorted());
});
