import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type * as loading from '../../src/cli/load.ts';
import type * as issuing from '../../src/issued/index.ts';
import { currencyCode, exactText, isMoney } from '../../src/money/index.ts';
import { ROOT } from '../demonstration/workspace.ts';
import { sendingShop, type Shop } from './shop.ts';

/** Fields that prices are computed with; a sealed file has other words for them, or none. */
const RENAMED = [
  'priceWithTax',
  'marginClass',
  'materialClass',
  'unitCost',
  'taxRule',
  'fixedPrice',
  'otherCost',
  'boatWithTax',
];
const BY_NAME = new RegExp(`\\b(?:${RENAMED.join('|')})\\b`, 'g');

let program: string;
let shop: Shop;

/** The program with each of these fields under another name, but for the form that quotes are sealed in. */
beforeAll(async () => {
  program = mkdtempSync(path.join(tmpdir(), 'orlop-renamed-'));
  cpSync(path.join(ROOT, 'src'), path.join(program, 'src'), { recursive: true });
  for (const name of ['node_modules', 'templates', 'package.json'])
    symlinkSync(path.join(ROOT, name), path.join(program, name));
  const files = readdirSync(path.join(program, 'src'), { recursive: true, encoding: 'utf8' });
  for (const file of files.filter(
    (one) => one.endsWith('.ts') && !one.startsWith('issued/form/'),
  )) {
    const at = path.join(program, 'src', file);
    writeFileSync(at, readFileSync(at, 'utf8').replaceAll(BY_NAME, '$&Renamed'));
  }
  shop = await sendingShop();
  shop.change('catalogue/yard.yaml', 'laminate: 50', 'laminate: 60');
}, 60_000);
afterAll(() => {
  rmSync(program, { recursive: true });
  shop.remove();
});

/** What a program says of the quotes that were sent: their accounts and what they would cost today. */
async function saidBy(root: string, workspace: string) {
  const { loadWorkspace }: typeof loading = await import(path.join(root, 'src/cli/load.ts'));
  const { freezeQuote }: typeof issuing = await import(path.join(root, 'src/issued/index.ts'));
  const { overview, issued } = loadWorkspace(workspace);
  return overview.orders.map(({ entry, account, drift }) => {
    const { quoted: figures, order } = entry;
    const day = order.value.dates.enquiry;
    return plain({
      number: order.value.number,
      revisions: issued.get(order.value.number)?.map(({ revision, rows }) => ({ revision, rows })),
      account,
      drift,
      sealed: figures && freezeQuote({ figures, revision: 1, issuedOn: day, inputs: [], view: {} }),
    });
  });
}

/** Amounts as text, so that those of two programs can be held against each other. */
function plain(value: unknown): unknown {
  if (isMoney(value)) return `${exactText(value)} ${currencyCode(value)}`;
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, plain(part)]));
}

it.each([
  ['of the form that is sealed now', () => shop.folder, ['T-1', 'T-3']],
  ['of the first form', () => ROOT, ['DC-2601', 'DC-2606', 'DC-2609']],
])(
  'a sent quote %s says the same when fields inside are renamed',
  async (_, workspace, sent) => {
    const now = await saidBy(ROOT, workspace());
    expect(await saidBy(program, workspace())).toEqual(now);
    const drifted = now.filter((one) => JSON.stringify(one).includes('"drift":{"was"'));
    for (const number of sent) expect(JSON.stringify(drifted)).toContain(`"number":"${number}"`);
  },
  120_000,
);

it('the fields are renamed indeed', () => {
  const text = readFileSync(path.join(program, 'src/price/result-types.ts'), 'utf8');
  expect(text).toContain('readonly priceWithTaxRenamed: Money;');
  expect(text).not.toMatch(BY_NAME);
});
