import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { loadWorkspace } from '../../src/cli/load.ts';
import { openIssued } from '../../src/issued/index.ts';
import { exactText } from '../../src/money/index.ts';
import { openSealed } from '../../src/read/index.ts';
import { ROOT } from '../demonstration/workspace.ts';
import { ORDER, PARTS, YARD } from '../read/samples.ts';
import { accepted, quoted, Shop, shopOf } from './shop.ts';

let shop: Shop;
afterEach(() => shop.remove());

/** Every amount that a page prints beside these words. */
const beside = (html: string, words: string): readonly string[] => {
  const text = html
    .replaceAll(/<style[^]*?<\/style>|src="[^"]*"/g, '')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/\s+/g, ' ');
  return [...text.matchAll(new RegExp(`${words}[^$]{0,80}(\\$[\\d,.]+\\d)`, 'g'))].flatMap(
    ([, amount]) => amount ?? [],
  );
};

describe('the whole life of an order', () => {
  it('from enquiry to the account: what was agreed never moves', async () => {
    const deck = `extras:
  - { name: Ladder, class: fit-out, cost: 320.00, mass: 4 kg, at: { x: 1 m, z: 0.5 m } }
`;
    shop = shopOf({ 't-1': `${ORDER}${deck}` });
    const page = (url: string): string => shop.read(`_site/${url}`);
    const build = async (day: string): Promise<void> => {
      expect(await shop.on(day, 'build', '--no-pdf'), shop.said).toBe(0);
    };

    // An enquiry: a draft that may move, and no handover pack anywhere.
    await build('2026-03-14');
    expect(page('customer/T-1/quote.html')).toContain('A draft, not yet an offer');
    expect(shop.has('_site/customer/T-1/handover.html')).toBe(false);
    expect(shop.has('_site/yard/T-1/handover.html')).toBe(false);

    // Quoted: sent, and sent again with another ladder.
    shop.write('orders/t-1.yaml', quoted('T-1', '300.00'));
    expect(await shop.on('2026-03-20', 'issue', 'T-1'), shop.said).toBe(0);
    shop.write('orders/t-1.yaml', quoted('T-1', '320.00'));
    expect(await shop.on('2026-03-22', 'issue', 'T-1')).toBe(0);
    await build('2026-03-22');
    expect(page('customer/T-1/quote.html')).toContain('What changed since Revision 1');
    expect(shop.has('_site/yard/T-1/handover.html')).toBe(true);
    const [price = ''] = beside(page('customer/T-1/quote.html'), 'Drive-away price');
    expect(price).toMatch(/^\$4,\d\d\d\.\d\d$/);

    // Accepted: the second revision, from now on the price everywhere.
    shop.write('orders/t-1.yaml', accepted(quoted('T-1', '320.00'), 2));
    const agreed = async (day: string, total: string): Promise<void> => {
      await build(day);
      expect(
        shop.bytes('_site/customer/T-1/quote.html').equals(shop.bytes('orders/issued/T-1-r2.html')),
      ).toBe(true);
      expect(beside(page('yard/index.html'), 'Tern 400')[0]).toBe(total);
      expect(beside(page('yard/T-1/order.html'), 'Drive-away price agreed')).toEqual([total]);
      expect(beside(page('yard/T-1/order.html'), 'Drive-away price with what was agreed')).toEqual([
        total,
      ]);
      expect(beside(page('yard/T-1/order.html'), 'Drive-away price as accepted')).toEqual([price]);
      expect(beside(page('yard/T-1/order.html'), 'How it is paid[^]*Total').at(-1)).toBe(total);
      const figures: Record<string, { value: string }> = JSON.parse(page('yard/T-1/figures.json'));
      expect(figures['agreed.quote']?.value).toBe(price.replaceAll(/[$,]/g, ''));
      expect(figures['agreed.drive-away']?.value).toBe(total.replaceAll(/[$,]/g, ''));
    };
    await agreed('2026-03-26', price);

    // Everything becomes dearer: margins, overhead, parts. Nothing agreed moves; the yard sees its margin shrink.
    const margin = (): readonly string[] =>
      beside(page('yard/T-1/order.html'), 'Sum of the lines before tax');
    const before = margin();
    shop.write(
      'catalogue/yard.yaml',
      YARD.replace('overhead: 38', 'overhead: 60').replace('hull: 28%', 'hull: 45%'),
    );
    shop.write('catalogue/parts/acme-parts.csv', PARTS.replace('6.80', '9.90'));
    await agreed('2026-03-27', price);
    expect(margin()).not.toEqual(before);

    // A variation that is not signed counts nothing; signed, at its price.
    const asked = `variations:
  - { name: A second seat, asked: 2026-04-01, days: 2, add: [{ option: rod-holder, quantity: 1 }]`;
    const again = accepted(quoted('T-1', '320.00'), 2).replace(
      / {2}- option: rod-holder\n {4}quantity: 4\n/,
      '',
    );
    shop.write('orders/t-1.yaml', `${again}${asked} }\n`);
    await agreed('2026-04-01', price);
    shop.write(
      'orders/t-1.yaml',
      `${again}${asked}, agreed: { date: 2026-04-02, by: Ada, price: 150.00 } }\n`,
    );
    const more = `$${(Number(price.replaceAll(/[$,]/g, '')) + 150).toLocaleString('en-AU', { minimumFractionDigits: 2 })}`;
    await agreed('2026-04-03', more);

    // The account: what was paid, what is left; still the same after another rise.
    const paid = `paid: [{ date: 2026-04-04, amount: 1000.00 }]\n`;
    shop.write(
      'orders/t-1.yaml',
      `${again}${paid}${asked}, agreed: { date: 2026-04-02, by: Ada, price: 150.00 } }\n`,
    );
    shop.write('catalogue/yard.yaml', YARD.replace('overhead: 38', 'overhead: 90'));
    await agreed('2026-04-05', more);
    const left = Number(more.replaceAll(/[$,]/g, '')) - 1000;
    expect(beside(page('yard/T-1/order.html'), 'Still to pay')).toEqual([
      `$${left.toLocaleString('en-AU', { minimumFractionDigits: 2 })}`,
    ]);
    expect(beside(page('customer/T-1/variations.html'), 'Still to pay')).toEqual([
      `$${left.toLocaleString('en-AU', { minimumFractionDigits: 2 })}`,
    ]);

    // A revision after acceptance is refused.
    expect(await shop.on('2026-04-06', 'issue', 'T-1')).toBe(1);
    expect(shop.said).toContain('a variation, not a revision');
  });
});

describe('the demonstration with margin and overhead raised', () => {
  it('has the same agreed prices, as sealed and varied, and dearer boats behind them', () => {
    shop = new Shop(mkdtempSync(path.join(tmpdir(), 'orlop-dearer-')));
    for (const name of ['catalogue', 'orders'])
      cpSync(path.join(ROOT, name), shop.at(name), { recursive: true });
    shop.change('catalogue/yard.yaml', 'overhead: 38.00', 'overhead: 45.00');
    shop.change('catalogue/yard.yaml', '  hull: 28%', '  hull: 31%');
    const { overview } = loadWorkspace(shop.folder);
    const agreed = overview.orders.flatMap(({ entry, account }) =>
      account ? [{ number: entry.order.value.number, account, live: entry.figures?.price }] : [],
    );
    expect(agreed.map(({ number, account }) => [number, exactText(account.total)])).toEqual([
      ['DC-2601', '73957.20'],
      ['DC-2603', '144576.90'],
      // 47168.60 as accepted and 443.30 as signed.
      ['DC-2604', '47611.90'],
      ['DC-2605', '97181.29'],
    ]);
    for (const { number, account, live } of agreed)
      expect(Number(live && exactText(live.driveAway)), number).toBeGreaterThan(
        Number(exactText(account.total)) + 1000,
      );
  });
});

/**
 * A quote of the first form, as it was sent on 12 October 2026 and never written again: it must be read for ever.
 */
describe('a quote of the first form', () => {
  const NAME = 'DC-2606-r1.json';
  const FILE = path.join(ROOT, 'orders/issued', NAME);

  it('is the file that it was, and gives its price', () => {
    const text = readFileSync(FILE, 'utf8');
    expect(createHash('sha256').update(text).digest('hex')).toBe(
      '4c6535c1984fc9e3f9830c04d8bbf72356289b721925e478394dfb8c2b073498',
    );
    const quote = openIssued(openSealed(text));
    expect([quote?.number, quote?.revision, quote?.issuedOn]).toEqual(['DC-2606', 1, '2026-10-12']);
    expect(quote && exactText(quote.price.driveAway)).toBe('147339.51');
  });

  it('is taken in once, and said so; what it says is copied from then on', async () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'orlop-older-'));
    shop = new Shop(folder);
    for (const name of ['catalogue', 'orders/DC-2606.yaml'])
      cpSync(path.join(ROOT, name), shop.at(name), { recursive: true });
    cpSync(FILE, shop.issued(NAME));
    expect(await shop.on('2026-11-26', 'check')).toBe(1);
    expect(shop.said).toContain('ledger --take-in');
    expect(await shop.on('2026-11-26', 'ledger', '--take-in')).toBe(0);
    expect(shop.said).toContain('DC-2606-r1 of 2026-10-12 taken in');
    expect(readFileSync(FILE).equals(shop.bytes(`orders/issued/${NAME}`))).toBe(true);
    expect(await shop.on('2026-11-27', 'ledger')).toBe(0);
    expect(shop.said).toContain('taken in on 2026-11-26');
    expect(await shop.on('2026-11-27', 'ledger', '--take-in')).toBe(1);
    expect(shop.said).toContain('taken in once');
    expect(shop.read('orders/issued/DC-2606-r1.html')).toContain('$147,339.51');
    expect(readdirSync(shop.at('orders/issued')).toSorted()).toEqual([
      'DC-2606-r1.html',
      NAME,
      'DC-2606-r1.pdf',
      'ledger.jsonl',
    ]);
  }, 60_000);

  it.each([
    ['changed', (text: string) => text.replace('147339.51', '1.00')],
    ['of another number', (text: string) => text.replaceAll('DC-2606', 'DC-2607')],
    ['cut', (text: string) => text.slice(0, 1000)],
  ])('that was %s is not taken in, nor anything beside it', async (_, change) => {
    const folder = mkdtempSync(path.join(tmpdir(), 'orlop-older-'));
    shop = new Shop(folder);
    for (const name of ['catalogue', 'orders/DC-2606.yaml'])
      cpSync(path.join(ROOT, name), shop.at(name), { recursive: true });
    cpSync(FILE, shop.issued(NAME));
    shop.write(`orders/issued/${NAME}`, change(shop.read(`orders/issued/${NAME}`)));
    expect(await shop.on('2026-11-26', 'ledger', '--take-in')).toBe(1);
    expect(shop.said).toContain('no quote as it was issued');
    rmSync(shop.issued(NAME));
    expect(shop.has('orders/issued/ledger.jsonl')).toBe(false);
  });
});
