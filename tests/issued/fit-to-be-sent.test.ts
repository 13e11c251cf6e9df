import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { FINDING_CODES, stoppingIssue } from '../../src/findings/index.ts';
import { HULL, ORDER, PARTS } from '../read/samples.ts';
import { quoted, type Shop, shopOf } from './shop.ts';

const DAY = '2026-03-21';
let base: Shop;
let shop: Shop;
beforeAll(() => {
  base = shopOf({ 't-1': quoted('T-1') });
});
afterAll(() => base.remove());
afterEach(() => shop.remove());

const order = (change: (text: string) => string) => (): void =>
  shop.write('orders/t-1.yaml', change(quoted('T-1')));
const swap = (from: string, to: string) => (text: string) => {
  if (!text.includes(from)) throw new Error(`no "${from}"`);
  return text.replace(from, to);
};
const LADDER = 'cost: 300.00,';

describe('a quote is not sent with', () => {
  it.each([
    [
      'a price typed below its cost',
      'LINE_BELOW_COST',
      order(swap(LADDER, 'cost: 300.00, price: 3.29,')),
    ],
    [
      'a whole sold below its cost',
      'LINE_BELOW_COST',
      order((text) => `${text}discount: { amount: 3000, reason: A friend. }\n`),
    ],
    ['a one-off that costs nothing', 'FREE_WITHOUT_REASON', order(swap(LADDER, 'cost: 0,'))],
    ['a price of nothing', 'FREE_WITHOUT_REASON', order(swap(LADDER, 'cost: 0, price: 0,'))],
    [
      'something to be filled in',
      'PLACEHOLDER_LEFT',
      order(swap('Sampling on a shallow lake.', '??? what for')),
    ],
    [
      'the words that an older new order had',
      'PLACEHOLDER_LEFT',
      order(swap('Sampling on a shallow lake.', 'What she is for, in one sentence')),
    ],
    ['no people', 'PEOPLE_NOT_SAID', order(swap('  people: 3\n', ''))],
    [
      'a day that is past its last',
      'QUOTE_EXPIRED',
      order((text) =>
        swap(
          'enquiry: 2026-03-14',
          'enquiry: 2026-02-14',
        )(swap('quoted: 2026-03-20', 'quoted: 2026-02-18')(text)),
      ),
    ],
    [
      'a day still to come',
      'QUOTED_LATER',
      order(swap('quoted: 2026-03-20', 'quoted: 2027-03-20')),
    ],
    [
      'a hull whose ratings are a draft',
      'RATING_DRAFT',
      () =>
        shop.write(
          'catalogue/hulls/tern-400.yaml',
          swap('  basis: Trial.', '  basis: Trial.\n  draft: true')(HULL),
        ),
    ],
    [
      'a price list older than the shop allows',
      'PART_PRICE_OLD',
      () =>
        shop.write(
          'catalogue/parts/acme-parts.csv',
          PARTS.replaceAll(/2026-\d\d-\d\d/g, '2025-06-01'),
        ),
    ],
    [
      'a price ten times that of the row before',
      'PART_PRICE_JUMP',
      () => shop.write('catalogue/parts/acme-parts.csv', `${PARTS}${jump('68.00')}`),
    ],
  ] as const)('%s: a warning before, an error then: %s', async (_, code, attack) => {
    shop = base.copy();
    attack();
    expect(await shop.on(DAY, 'check')).toBe(0);
    expect(shop.said).toMatch(new RegExp(`: warning: .*\\[${code}\\]`));
    expect(await shop.on(DAY, 'issue', 'T-1')).toBe(1);
    expect(shop.said).toMatch(new RegExp(`: error: .*\\[${code}\\]`));
    expect(shop.said).toContain('not fit to be sent');
    expect(shop.has('orders/issued/ledger.jsonl')).toBe(false);
  });

  it('a total far from that of other orders of its hull: TOTAL_UNLIKE_OTHERS; near it passes', async () => {
    shop = base.copy();
    for (const [index, cost] of ['280.00', '300.00', '350.00'].entries())
      shop.write(`orders/t-${index + 2}.yaml`, quoted(`T-${index + 2}`, cost));
    expect(await shop.codes(DAY)).not.toContain('TOTAL_UNLIKE_OTHERS');
    order(swap(LADDER, 'cost: 3000.00,'))();
    await shop.on(DAY, 'check');
    expect(shop.said).toMatch(/TOTAL_UNLIKE_OTHERS[^]*by 3 other orders of the Tern 400/);
    expect(await shop.on(DAY, 'issue', 'T-1')).toBe(1);
  });
});

/** A later row of the cloth, on the day before the quote. */
function jump(cost: string, day = '2026-03-19'): string {
  const row = PARTS.split('\n').find((line) => line.startsWith('AC-1,')) ?? '';
  return `${row.replace('6.80', cost).replace(/[\d-]+$/, day)}\n`;
}

describe('what looks wrong and is right', () => {
  it('a price that moved is confirmed by another row of the same price', async () => {
    shop = base.copy();
    shop.write('catalogue/parts/acme-parts.csv', `${PARTS}${jump('9.60', '2026-03-18')}`);
    expect(await shop.codes(DAY)).toContain('PART_PRICE_JUMP');
    shop.write(
      'catalogue/parts/acme-parts.csv',
      `${PARTS}${jump('9.60', '2026-03-18')}${jump('9.60')}`,
    );
    expect(await shop.codes(DAY)).not.toContain('PART_PRICE_JUMP');
  });

  it.each([
    ['9.52', false],
    ['9.53', true],
    ['4.08', false],
    ['4.07', true],
  ])('a price may move by 40 %% unasked: 6.80, then %s', async (cost, told) => {
    shop = base.copy();
    shop.write('catalogue/parts/acme-parts.csv', `${PARTS}${jump(cost)}`);
    expect((await shop.codes(DAY)).includes('PART_PRICE_JUMP')).toBe(told);
  });

  it('an item that is free for a reason is sent, and says no charge', async () => {
    shop = base.copy();
    order(swap(LADDER, 'free: Left over from the trials., cost: 0,'))();
    expect(await shop.on(DAY, 'issue', 'T-1'), shop.said).toBe(0);
    expect(shop.read('orders/issued/T-1-r1.html')).toContain('no charge');
  });

  it('what the owner allows, with a name and a reason, is sent; what nobody may allow is not', async () => {
    shop = base.copy();
    const cheap = swap(LADDER, 'cost: 300.00, price: 290.00,');
    const allow = (code: string) =>
      `allow: [{ finding: ${code}, by: The owner, reason: A sample. }]\n`;
    order((text) => `${cheap(text)}${allow('LINE_BELOW_COST')}`)();
    expect(await shop.on(DAY, 'issue', 'T-1'), shop.said).toBe(0);
    order((text) => `${text}${allow('PLACEHOLDER_LEFT')}`)();
    expect(await shop.on(DAY, 'check')).toBe(1);
    expect(shop.said).toContain('[WRONG_VALUE]');
  });
});

describe('a new order', () => {
  it('leaves blank what nobody has said, and marks it: nothing of it can be sent', async () => {
    shop = base.copy();
    expect(await shop.on(DAY, 'new', 'T-7', '--hull', 'tern-400')).toBe(0);
    const text = shop.read('orders/T-7.yaml');
    expect(text).not.toMatch(/^ +people:/m);
    expect(await shop.on(DAY, 'check', '--only', 'T-7')).toBe(0);
    expect(shop.said.match(/\[PLACEHOLDER_LEFT\]/g)).toHaveLength(2);
    expect(shop.said).toContain('[PEOPLE_NOT_SAID]');
    expect(await shop.on(DAY, 'issue', 'T-7')).toBe(1);
    expect(shop.has('orders/issued')).toBe(false);
  });

  it('is figured with all that the hull is rated for until it says how many', async () => {
    shop = base.copy();
    shop.write('orders/t-2.yaml', ORDER.replace('T-1', 'T-2').replace('  people: 3\n', ''));
    await shop.on(DAY, 'build', '--no-pdf', '--only', 'T-2');
    expect(shop.read('_site/yard/T-2/build-sheet.html')).toMatch(/People[^]{0,80}4/);
  });
});

it('only errors and codes that stop an issue do, and allowing helps where the code lets it', () => {
  shop = base.copy();
  const place = { file: 'x' };
  const all = Object.entries(FINDING_CODES).map(([code, { severity, remedy }]) => ({
    code: code as keyof typeof FINDING_CODES,
    severity,
    place,
    received: '',
    remedy,
  }));
  const stopped = new Set(stoppingIssue(all, new Set()).map(({ code }) => code));
  const allowed = new Set(
    stoppingIssue(all, new Set(Object.keys(FINDING_CODES))).map(({ code }) => code),
  );
  expect([...stopped].filter((code) => !allowed.has(code)).toSorted()).toEqual([
    'LINE_BELOW_COST',
    'PART_PRICE_JUMP',
    'PART_PRICE_OLD',
    'TOTAL_UNLIKE_OTHERS',
  ]);
  expect(stoppingIssue(all, new Set()).every(({ severity }) => severity === 'error')).toBe(true);
  expect(stopped.has('QUOTE_NOT_ISSUED')).toBe(false);
});
