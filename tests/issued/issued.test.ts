import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { loadWorkspace } from '../../src/cli/load.ts';
import { main } from '../../src/cli/main.ts';
import { renderSite } from '../../src/cli/pages.ts';
import { toData, fromData } from '../../src/issued/data.ts';
import { driftOf } from '../../src/issued/index.ts';
import { currencyOf, exactText, isMoney, moneyOf, moneyToText } from '../../src/money/index.ts';
import { HULL, ORDER, PARTS, workspaceOf, YARD } from '../read/samples.ts';

const QUOTED = ORDER.replace('status: enquiry', 'status: quoted').replace(
  'enquiry: 2026-03-14',
  'enquiry: 2026-03-14\n  quoted: 2026-03-20',
);
let folder = '';
let said = '';

async function run(...words: readonly string[]): Promise<number> {
  said = '';
  const spies = [process.stdout, process.stderr].map((stream) =>
    vi.spyOn(stream, 'write').mockImplementation((text) => {
      said += String(text);
      return true;
    }),
  );
  const code = await main([...words, '--workspace', folder]);
  for (const spy of spies) spy.mockRestore();
  return code;
}

const write = (file: string, text: string) => writeFileSync(path.join(folder, file), text);
const issuedText = (revision: number) =>
  readFileSync(path.join(folder, `orders/issued/T-1-r${revision}.json`), 'utf8');
const quotePage = async (): Promise<string | undefined> => {
  const { pages } = await renderSite(loadWorkspace(folder), { pdf: false });
  return pages.find(({ url }) => url === 'customer/T-1/quote.html')?.html;
};
const drift = () => {
  const { orders, issued } = loadWorkspace(folder);
  const quote = issued.get('T-1')?.at(-1);
  const figures = orders[0]?.figures;
  if (!quote || !figures) throw new Error('nothing to compare');
  return driftOf(quote, figures);
};
const cents = (text: string): bigint => BigInt(text.replace('.', ''));

beforeEach(() => {
  vi.stubEnv('ORLOP_TODAY', '2026-03-21');
  folder = workspaceOf({ 'orders/t-1.yaml': QUOTED });
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

describe('a quote that was sent', () => {
  it('is printed the same, whatever the catalogue does, even when the order cannot be read any more', async () => {
    expect([await run('issue', 'T-1'), said]).toEqual([0, expect.stringContaining('T-1-r1.json')]);
    const sent = await quotePage();
    expect(sent).toContain('Revision');
    write('catalogue/parts/acme-parts.csv', PARTS.replaceAll(/,(\d+)\.\d\d,AUD/g, ',9$1.99,AUD'));
    write(
      'catalogue/yard.yaml',
      YARD.replace('laminate: 50', 'laminate: 77').replace('rate: 10%', 'rate: 15%'),
    );
    expect(await quotePage()).toBe(sent);
    write('orders/t-1.yaml', QUOTED.replace('people: 3', 'peeple: 3'));
    expect(await quotePage()).toBe(sent);
  });

  it('says what it would cost today, line by line and to the cent, and why', async () => {
    await run('issue', 'T-1');
    expect(drift().rows).toEqual([]);
    write('catalogue/parts/acme-parts.csv', PARTS.replace('6.80', '7.80'));
    write('catalogue/yard.yaml', YARD.replace('laminate: 50', 'laminate: 60'));
    write('catalogue/hulls/tern-400.yaml', HULL.replace('hours: 20', 'hours: 22'));
    write('orders/t-1.yaml', QUOTED.replace('quantity: 4', 'quantity: 3'));
    write(
      'catalogue/charges.yaml',
      'charges:\n  - { id: boat-registration, name: Registration, amount: 130.00, when: always, source: The office. }\n',
    );
    const { was, now, rows } = drift();
    const change = rows.reduce(
      (sum, row) => sum + cents(moneyToText(row.now)) - cents(moneyToText(row.was)),
      0n,
    );
    expect(change).toBe(cents(moneyToText(now)) - cents(moneyToText(was)));
    await run('check');
    expect(said).toContain('QUOTE_DIFFERS');
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
    await run('issue', 'T-1');
    const dearer = PARTS.split('\n')
      .find((row) => row.startsWith('AC-1,'))
      ?.replace('6.80', '7.80')
      .replace(/[\d-]+$/, '2026-03-21');
    write('catalogue/parts/acme-parts.csv', `${PARTS}${dearer}\n`);
    const [state] = loadWorkspace(folder).overview.orders;
    expect(drift().rows).toEqual([]);
    expect(state?.findings.map(({ code }) => code)).not.toContain('QUOTE_DIFFERS');
    // 12 m2 of the shell with 10 % wastage at 1.00 more; margin 28 %, tax 10 %.
    expect(
      state?.drift?.rows.map(({ key, causes }) => [
        key,
        causes.map(({ cause, amount, details }) => [cause, moneyToText(amount), details]),
      ]),
    ).toEqual([['shell', [['price list', '20.16', ['AC-1 6.80, now 7.80']]]]]);
  });

  it('is never overwritten: a change is a new revision with a table of what changed', async () => {
    await run('issue', 'T-1');
    const first = issuedText(1);
    expect(await run('issue', 'T-1')).toBe(0);
    expect(said).toContain('nothing to issue');
    write(
      'orders/t-1.yaml',
      QUOTED.replace('quantity: 4', 'quantity: 3').replace('people: 3', 'people: 2'),
    );
    write('catalogue/hulls/tern-400.yaml', HULL.replace('hours: 20', 'hours: 22'));
    expect(await run('issue', 'T-1')).toBe(0);
    expect(issuedText(1)).toBe(first);
    const page = await quotePage();
    expect(page).toContain('What changed since Revision 1, 21 March 2026');
    expect(page).toContain('Tern 400 hull shell');
  });

  it('names every file it was made of, with its digest', async () => {
    await run('issue', 'T-1');
    const [quote] = loadWorkspace(folder).issued.get('T-1') ?? [];
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

  it('is refused when a single digit of its file was changed', async () => {
    await run('issue', 'T-1');
    const text = issuedText(1);
    const changed = text.replace('"revision":1', '"revision":2');
    expect(changed).not.toBe(text);
    write('orders/issued/T-1-r1.json', changed);
    expect(await run('check')).toBe(1);
    expect(said).toContain('ISSUED_ALTERED');
    write('orders/issued/T-1-r1.json', text);
    expect(await run('check')).toBe(0);
  });

  it('is an error without its order, and a name that is no revision is one too', async () => {
    await run('issue', 'T-1');
    write('orders/t-1.yaml', QUOTED.replace('T-1', 'T-2'));
    await run('check');
    expect(said).toContain('ISSUED_OF_OTHER_ORDER');
    write('orders/issued/notes.json', '{}');
    await run('check');
    expect(said).toContain('<number>-r<revision>.json');
  });
});

describe('the issue command', () => {
  it.each([
    [[], 2, 'give the number'],
    [['T-9'], 2, 'there is no order T-9'],
  ])('refuses %j', async (words, code, message) => {
    expect(await run('issue', ...words)).toBe(code);
    expect(said).toContain(message);
  });
  it('refuses an order with errors, and one that has no date', async () => {
    write('orders/t-1.yaml', QUOTED.replace('- seat', '- saet'));
    expect(await run('issue', 'T-1')).toBe(1);
    expect(said).toContain('has errors');
    write('orders/t-1.yaml', ORDER);
    expect(await run('issue', 'T-1')).toBe(1);
    expect(said).toContain('has no date');
  });
});

describe('figures as data', () => {
  const aud = currencyOf('AUD');
  if (!aud) throw new Error('no currency');
  it('keep money and decimals to the last digit', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n }),
        fc.bigInt(0n, 12n),
        (amount, scale) => {
          const again = fromData(toData(moneyOf({ amount, scale }, aud)));
          expect(isMoney(again) && exactText(again)).toBe(
            exactText(moneyOf({ amount, scale }, aud)),
          );
          expect(fromData(toData([{ amount, scale }]))).toEqual([{ amount, scale }]);
        },
      ),
      { numRuns: 500 },
    );
  });
  it('leave out what is not there', () => {
    expect(toData({ a: undefined, b: () => 1, c: null, d: [true, 'x', 1.5] })).toEqual({
      c: null,
      d: [true, 'x', 1.5],
    });
  });
});
