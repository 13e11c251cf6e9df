import { rmSync } from 'node:fs';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loadWorkspace } from '../../src/cli/load.ts';
import * as texts from '../../src/issued/form/texts.ts';
import { driftOf } from '../../src/issued/index.ts';
import { currencyOf, exactText, moneyOf, moneyToText } from '../../src/money/index.ts';
import { HULL, PARTS, YARD } from '../read/samples.ts';
import { quoted, type Shop, shopOf } from './shop.ts';

const DAY = '2026-03-21';
const QUOTED = quoted('T-1');
let shop: Shop;

const drift = () => {
  const { orders, issued } = loadWorkspace(shop.folder);
  const quote = issued.get('T-1')?.at(-1);
  const figures = orders[0]?.figures;
  const drifted = quote && figures && driftOf(quote, figures);
  if (!drifted || 'notComputed' in drifted) throw new Error('nothing to compare');
  return drifted;
};
const cents = (text: string): bigint => BigInt(text.replace('.', ''));

beforeEach(() => {
  shop = shopOf({ 't-1': QUOTED });
});
afterEach(() => shop.remove());

describe('a quote that was sent', () => {
  it('is copied byte for byte, whatever the catalogue does, even when nothing else can be read any more', async () => {
    expect(await shop.on(DAY, 'issue', 'T-1')).toBe(0);
    expect(shop.said).toMatch(
      /orders\/issued\/T-1-r1\.pdf[^]*customer\/T-1\/quote-T-1-r1\.pdf[^]*Digest of the ledger: [0-9a-f]{64}/,
    );
    const page = shop.bytes('orders/issued/T-1-r1.html');
    const pdf = shop.bytes('orders/issued/T-1-r1.pdf');
    const built = async (): Promise<void> => {
      await shop.on('2026-03-25', 'build', '--no-pdf');
      expect(shop.bytes('_site/customer/T-1/quote.html').equals(page)).toBe(true);
      expect(shop.bytes('_site/customer/T-1/quote-T-1-r1.pdf').equals(pdf)).toBe(true);
    };
    await built();
    shop.write(
      'catalogue/parts/acme-parts.csv',
      PARTS.replaceAll(/,(\d+)\.\d\d,AUD/g, ',9$1.99,AUD'),
    );
    shop.write('catalogue/yard.yaml', YARD.replace('laminate: 50', 'laminate: 77'));
    await built();
    shop.write('orders/t-1.yaml', QUOTED.replace('people: 3', 'peeple: 3'));
    await built();
    shop.write('catalogue/yard.yaml', 'not: [a yard');
    await built();
  });

  it('says what it would cost today, line by line and to the cent, and why', async () => {
    await shop.on(DAY, 'issue', 'T-1');
    expect(drift().rows).toEqual([]);
    shop.write('catalogue/parts/acme-parts.csv', PARTS.replace('6.80', '7.80'));
    shop.write('catalogue/yard.yaml', YARD.replace('laminate: 50', 'laminate: 60'));
    shop.write('catalogue/hulls/tern-400.yaml', HULL.replace('hours: 20', 'hours: 22'));
    shop.write(
      'catalogue/charges.yaml',
      'charges:\n  - { id: boat-registration, name: Registration, amount: 130.00, taxed: no, when: always, source: The office. }\n',
    );
    const { was, now, rows } = drift();
    const change = rows.reduce(
      (sum, row) => sum + cents(moneyToText(row.now)) - cents(moneyToText(row.was)),
      0n,
    );
    expect(change).toBe(cents(moneyToText(now)) - cents(moneyToText(was)));
    expect(await shop.codes(DAY)).toContain('QUOTE_DIFFERS');
    const shell = rows.find(({ key }) => key === 'shell');
    // 12 m2 with 10 % wastage at 1.00 more (18.33 and 1.83 of tax); 20 h at 10.00 more; then 2 h more at 60 + 38; margin 28 %, tax 10 %.
    expect(
      shell?.causes.map(({ cause, amount, details }) => [cause, moneyToText(amount), details]),
    ).toEqual([
      ['price list', '20.16', ['AC-1 6.80, now 7.80']],
      ['rate', '305.56', ['rates.laminate 50, now 60']],
      ['option', '299.44', ['hours']],
    ]);
    expect(rows.find(({ key }) => key === 'charges')?.causes[0]?.cause).toBe('charge');
    for (const row of rows) {
      const causes = row.causes.reduce((sum, { amount }) => sum + cents(moneyToText(amount)), 0n);
      expect(causes, row.key).toBe(cents(moneyToText(row.now)) - cents(moneyToText(row.was)));
    }
  });

  it('would cost more by a price of today, while the order keeps the prices of its own day', async () => {
    await shop.on(DAY, 'issue', 'T-1');
    const dearer = PARTS.split('\n')
      .find((row) => row.startsWith('AC-1,'))
      ?.replace('6.80', '7.80')
      .replace(/[\d-]+$/, '2026-03-21');
    shop.write('catalogue/parts/acme-parts.csv', `${PARTS}${dearer}\n`);
    const [state] = loadWorkspace(shop.folder).overview.orders;
    expect(drift().rows).toEqual([]);
    expect(state?.findings.map(({ code }) => code)).not.toContain('QUOTE_DIFFERS');
    // 12 m2 of the shell with 10 % wastage at 1.00 more; margin 28 %, tax 10 %.
    const drifted = state?.drift && 'rows' in state.drift ? state.drift.rows : [];
    expect(
      drifted.map(({ key, causes }) => [
        key,
        causes.map(({ cause, amount, details }) => [cause, moneyToText(amount), details]),
      ]),
    ).toEqual([['shell', [['price list', '20.16', ['AC-1 6.80, now 7.80']]]]]);
  });

  it('is never overwritten: a change is a new revision with a table of what changed', async () => {
    await shop.on(DAY, 'issue', 'T-1');
    const first = shop.bytes('orders/issued/T-1-r1.pdf');
    expect(await shop.on(DAY, 'issue', 'T-1')).toBe(0);
    expect(shop.said).toContain('nothing to issue');
    shop.write('catalogue/hulls/tern-400.yaml', HULL.replace('hours: 20', 'hours: 22'));
    expect(await shop.on(DAY, 'issue', 'T-1')).toBe(0);
    expect(shop.bytes('orders/issued/T-1-r1.pdf').equals(first)).toBe(true);
    const page = shop.read('orders/issued/T-1-r2.html');
    expect(page).toContain('What changed since Revision 1, 21 March 2026');
    expect(page).toContain('Tern 400 hull shell');
    expect(page).toContain('href="quote-T-1-r2.pdf"');
  });

  it('names every file it was made of, with its digest', async () => {
    await shop.on(DAY, 'issue', 'T-1');
    const [quote] = loadWorkspace(shop.folder).issued.get('T-1') ?? [];
    expect(quote?.inputs.map(({ file }) => file)).toEqual([
      'catalogue/charges.yaml',
      'catalogue/hulls/tern-400.yaml',
      'catalogue/options/seats.yaml',
      'catalogue/outboards.yaml',
      'catalogue/parts/acme-parts.csv',
      'catalogue/trailers.yaml',
      'catalogue/yard.yaml',
      'orders/t-1.yaml',
    ]);
    for (const { sha256 } of quote?.inputs ?? []) expect(sha256).toMatch(/^[0-9a-f]{64}$/);
  });

  it('is not held up by another file in its folder, which is told', async () => {
    await shop.on(DAY, 'issue', 'T-1');
    shop.write('orders/issued/notes.json', '{}');
    expect(await shop.on(DAY, 'check')).toBe(1);
    expect(shop.said).toMatch(/orders\/issued\/notes\.json: error: .*\[ISSUED_NOT_IN_LEDGER\]/);
    shop.write('orders/t-1.yaml', quoted('T-1', '320.00'));
    expect(await shop.on(DAY, 'issue', 'T-1'), shop.said).toBe(0);
  });

  it('is withdrawn from what was built when its order is no more', async () => {
    await shop.on(DAY, 'issue', 'T-1');
    await shop.on(DAY, 'build', '--no-pdf');
    expect(shop.has('_site/customer/T-1/quote-T-1-r1.pdf')).toBe(true);
    rmSync(shop.at('orders/t-1.yaml'));
    expect(await shop.on(DAY, 'build', '--no-pdf')).toBe(1);
    expect(shop.has('_site/customer/T-1/quote-T-1-r1.pdf')).toBe(false);
    expect(shop.has('_site/yard/T-1/build-sheet.html')).toBe(false);
  });
});

describe('the issue command', () => {
  it.each([
    [[], 2, 'takes one order number'],
    [['T-9'], 2, 'there is no order T-9'],
  ])('refuses %j', async (words, code, message) => {
    expect(await shop.on(DAY, 'issue', ...words)).toBe(code);
    expect(shop.said).toContain(message);
  });
  it('is not held up by a mistake in another order', async () => {
    shop.write('orders/t-2.yaml', 'number: T-2\nstatus: [');
    expect(await shop.on(DAY, 'issue', 'T-1'), shop.said).toBe(0);
  });
  it('refuses an order with errors', async () => {
    shop.write('orders/t-1.yaml', QUOTED.replace('- seat', '- saet'));
    expect(await shop.on(DAY, 'issue', 'T-1')).toBe(1);
    expect(shop.said).toContain('not fit to be sent');
  });
});

describe('amounts in a sealed file', () => {
  const aud = currencyOf('AUD');
  if (!aud) throw new Error('no currency');
  it('keep money and decimals to the last digit', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n }),
        fc.bigInt(0n, 12n),
        (amount, scale) => {
          const money = moneyOf({ amount, scale }, aud);
          expect(exactText(texts.money.parse(texts.written(money)))).toBe(exactText(money));
          const decimal = { amount, scale };
          expect(texts.decimal.parse(texts.written(decimal))).toEqual(decimal);
        },
      ),
      { numRuns: 500 },
    );
  });
  it.each([
    [texts.money, '12.50'],
    [texts.money, '12.50 XXQ'],
    [texts.money, 'AUD 12.50'],
    [texts.decimal, '1e3'],
    [texts.day, '2026-02-30'],
    [texts.currency, 'constructor'],
  ])('are no other text: %#', (text, written) => {
    expect(text.safeParse(written).success).toBe(false);
  });
});
