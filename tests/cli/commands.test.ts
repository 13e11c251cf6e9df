import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { type Files, HULL, ORDER, workspaceOf, YARD } from '../read/samples.ts';

const made: string[] = [];

interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

function workspace(changes: Files = {}): string {
  const folder = workspaceOf(changes);
  made.push(folder);
  return folder;
}

/** Runs a command as the program does, and keeps what it says. */
async function run(folder: string, ...words: readonly string[]): Promise<Run> {
  const said = { out: '', err: '' };
  const out = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    said.out += String(text);
    return true;
  });
  const err = vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said.err += String(text);
    return true;
  });
  try {
    return { code: await main([...words, '--workspace', folder]), ...said };
  } finally {
    out.mockRestore();
    err.mockRestore();
  }
}

beforeEach(() => vi.stubEnv('ORLOP_TODAY', '2026-03-20'));
afterEach(() => {
  vi.unstubAllEnvs();
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true });
});

describe('check', () => {
  it('ends with 0 on a sound workspace', async () => {
    const { code, out } = await run(workspace(), 'check');
    expect(code).toBe(0);
    expect(out).toContain('0 errors');
  });
  it('ends with 1 and prints place, line and caret of every mistake in every file', async () => {
    const folder = workspace({
      'orders/t-1.yaml': ORDER.replace('people: 3', 'peeple: 3'),
      'orders/t-2.yaml': ORDER.replace('T-1', 'T-2').replace('- seat', '- saet'),
    });
    const { code, out } = await run(folder, 'check');
    expect(code).toBe(1);
    expect(out).toMatch(/orders\/t-1\.yaml:9:3/);
    expect(out).toMatch(/orders\/t-2\.yaml:12:5/);
    expect(out).toContain('nearest is "seat"');
    expect(out).toMatch(/\^/);
  });
  it('speaks JSON', async () => {
    const folder = workspace({ 'orders/t-1.yaml': ORDER.replace('- seat', '- saet') });
    const { code, out } = await run(folder, 'check', '--json');
    expect(code).toBe(1);
    expect(JSON.parse(out)).toContainEqual(
      expect.objectContaining({ code: 'UNKNOWN_ID', at: 'orders/t-1.yaml:12:5' }),
    );
  });
  it('ends with 2 for an order that is not there', async () => {
    const { code, err } = await run(workspace(), 'check', '--only', 'T-9');
    expect(code).toBe(2);
    expect(err).toContain('there is no order T-9');
  });
});

describe('build --no-pdf', () => {
  it('makes the pages of sound orders beside broken ones, and says 1', async () => {
    const folder = workspace({
      'orders/t-2.yaml': ORDER.replace('T-1', 'T-2').replace('tern-400', 'tern-500'),
    });
    const { code } = await run(folder, 'build', '--no-pdf');
    expect(code).toBe(1);
    const has = (file: string) => existsSync(path.join(folder, '_site', file));
    expect(has('customer/T-1/quote.html')).toBe(true);
    // An enquiry has no handover pack, not even for the yard.
    expect(['customer/T-1/handover.html', 'yard/T-1/handover.html'].filter(has)).toEqual([]);
    expect(['yard/index.html', 'yard/T-1/build-sheet.html'].filter(has)).toHaveLength(2);
    expect(has('customer/T-2/quote.html')).toBe(false);
    const index = readFileSync(path.join(folder, '_site/yard/index.html'), 'utf8');
    expect(index).toContain('T-2');
  });
  it('takes away the documents of an order that has since gone wrong', async () => {
    const folder = workspace();
    await run(folder, 'build', '--no-pdf');
    const quote = path.join(folder, '_site/customer/T-1/quote.html');
    expect(existsSync(quote)).toBe(true);
    writeFileSync(path.join(folder, 'orders/t-1.yaml'), ORDER.replace('- seat', '- saet'));
    expect((await run(folder, 'build', '--no-pdf')).code).toBe(1);
    expect(existsSync(quote)).toBe(false);
  });
  it('writes figures.json of one order with --only', async () => {
    const folder = workspace({ 'orders/t-2.yaml': ORDER.replace('T-1', 'T-2') });
    await run(folder, 'build', '--no-pdf', '--only', 'T-2');
    const figures: unknown = JSON.parse(
      readFileSync(path.join(folder, '_site/yard/T-2/figures.json'), 'utf8'),
    );
    expect(figures).toHaveProperty(['price.drive-away', 'unit'], 'AUD');
    expect(existsSync(path.join(folder, '_site/yard/T-1/figures.json'))).toBe(false);
  });
});

describe('new', () => {
  it('begins an order without an error, marked where it is to be filled in, and never overwrites one', async () => {
    const folder = workspace();
    const words = ['new', 'T-7', '--hull', 'tern-400', '--customer', 'Reed: "Bank"'];
    expect((await run(folder, ...words)).code).toBe(0);
    const { code, out } = await run(folder, 'check', '--only', 'T-7');
    expect([code, out]).toEqual([0, expect.stringContaining('0 errors, 2 warnings, 0 notes\n')]);
    const again = await run(folder, ...words);
    expect([again.code, again.err]).toEqual([2, expect.stringContaining('left as it is')]);
  });
  it.each([
    [['new'], 'takes one order number'],
    [['new', 'T-8', '--out', 'x'], 'takes no --out'],
    [['new', 'A B', '--hull', 'tern-400'], 'no order number'],
    [['new', 'T-8'], 'name a hull with --hull: tern-400'],
    [['new', 'T-8', '--hull', 'tern-40'], 'did you mean tern-400'],
  ])('%j is a mistake that says how to remedy it', async (words, message) => {
    const { code, err } = await run(workspace(), ...words);
    expect([code, err]).toEqual([2, expect.stringContaining(message)]);
  });
});

it.each([
  ['catalogue/schema', []],
  ['elsewhere', ['--out', 'elsewhere']],
])('schema writes the names of this workspace to %s only', async (place, words) => {
  const folder = workspace();
  const asked = words.map((word) => (word === place ? path.join(folder, place) : word));
  expect((await run(folder, 'schema', ...asked)).code).toBe(0);
  const text = readFileSync(path.join(folder, place, 'order.schema.json'), 'utf8');
  expect(text).toContain('"rod-holder"');
  expect(existsSync(path.join(folder, 'catalogue/schema'))).toBe(place === 'catalogue/schema');
});

it('a port that is none is refused before anything is read', async () => {
  const { code, err } = await run('/no/such/folder', 'preview', '--port', 'seventy');
  expect([code, err]).toEqual([2, expect.stringContaining('whole number from 1 to 65535')]);
});

it('verify prints a row for each check and its source, and the same as JSON', async () => {
  const { code, out } = await run(workspace(), 'verify');
  expect(code).toBe(0);
  expect(out).toMatch(/^pass {2}money: .*first hand\n {6}.*as printed/m);
  expect(out).toMatch(/(\d+) of \1 checks pass: \d+ first hand, .*\n$/);
  const rows: unknown = JSON.parse((await run(workspace(), 'verify', '--json')).out);
  expect(rows).toContainEqual(
    expect.objectContaining({ area: 'mass', pass: true, source: expect.any(String) }),
  );
});

it('verify fails for an order that could not be computed: its row is there, and not passed', async () => {
  const broken = workspace({
    'orders/t-2.yaml': ORDER.replace('T-1', 'T-2').replace('- seat', '- sofa'),
  });
  const { code, out } = await run(broken, 'verify');
  expect(code).toBe(1);
  expect(out).toMatch(/^FAIL {2}money: orders\/t-2\.yaml: its sums/m);
});

it('a workspace that is not there is told, not thrown', async () => {
  const { code, out, err } = await run('/no/such/folder', 'check');
  expect([code, err]).toEqual([1, '']);
  expect(out).toContain('name another folder with --workspace');
});

describe('plan', () => {
  const ACCEPTED = ORDER.replace('status: enquiry', 'status: accepted').replace(
    'enquiry: 2026-03-14',
    'enquiry: 2026-03-14\n  quoted: 2026-03-15\n  accepted: 2026-03-16\n  promised: 2026-06-30',
  );
  const both: Files = {
    'orders/t-1.yaml': ACCEPTED,
    'orders/t-2.yaml': ORDER.replace('T-1', 'T-2'),
  };
  it('prints start, finish, promise and what binds of each accepted order', async () => {
    const { code, out } = await run(workspace(both), 'plan');
    expect(code).toBe(0);
    // Parts ordered on the Friday come a week later; 20 hours of laminate are three days, the cure two.
    expect(out).toMatch(
      /^Plan from 2026-03-20\nT-1 {2}2026-03-20 to 2026-0\d-\d\d {2}promised 2026-06-30, \d+ days to spare {2}waits for parts from Acme 7 days\n$/,
    );
  });
  it('says what date can be promised for one that is not accepted, as words and as data', async () => {
    const folder = workspace(both);
    const words = await run(folder, 'plan', '--promise', 'T-2');
    expect(words.code).toBe(0);
    const [, day = ''] = /^T-2 {2}can be promised for (\d{4}-\d\d-\d\d)\n/.exec(words.out) ?? [];
    const data = await run(folder, 'plan', '--promise', 'T-2', '--json');
    expect(JSON.parse(data.out)).toMatchObject({ number: 'T-2', promise: day });
  });
  it('says in the English of the shop what is waited for', async () => {
    const alone = (order: string) => order.replace('people: 3', 'people: 1');
    const said = async (locale: string) => {
      const folder = workspace({
        'orders/t-1.yaml': alone(ACCEPTED),
        'orders/t-2.yaml': alone(ORDER.replace('T-1', 'T-2')),
        'catalogue/hulls/tern-400.yaml': HULL.replace('hours: 20', 'hours: 400'),
        'catalogue/yard.yaml': YARD.replace('en-AU', locale),
      });
      return (await run(folder, 'plan', '--promise', 'T-2')).out;
    };
    expect(await said('en-AU')).toContain('waits for mould of the Tern 400');
    expect(await said('en-US')).toContain('waits for mold of the Tern 400');
  });
  it('gives every stage of every order as data', async () => {
    const { out } = await run(workspace(both), 'plan', '--json');
    const data: unknown = JSON.parse(out);
    expect(data).toHaveProperty(['orders', 0, 'number'], 'T-1');
    expect(data).toHaveProperty(['orders', 0, 'stages', 'handover', 'ends']);
  });
  it.each([
    ['T-9', 2, 'there is no order T-9'],
    ['T-1', 2, 'T-1 is accepted already: planned to finish on'],
  ])('promises nothing for %s', async (number, code, message) => {
    const asked = await run(workspace(both), 'plan', '--promise', number);
    expect([asked.code, asked.err]).toEqual([code, expect.stringContaining(message)]);
  });
  it('ends with 1 when an order cannot be planned, and the build has no document of it', async () => {
    const crowded = YARD.replace(
      '  laminate: { does: Work. }',
      '  laminate: { does: Work., trade: laminator, people: 2 }',
    ).concat(
      'trades: { laminator: { name: Laminator, wage: 33, onCosts: 25%, productive: 80%, people: 1 } }\n',
    );
    const folder = workspace({ ...both, 'catalogue/yard.yaml': crowded });
    const { code, out } = await run(folder, 'plan');
    expect([code, out]).toEqual([
      1,
      expect.stringContaining(
        'T-1  cannot be planned: laminate: needs 2 of laminator, and there are 1',
      ),
    ]);
    expect((await run(folder, 'build', '--no-pdf')).code).toBe(1);
    const has = (file: string) => existsSync(path.join(folder, '_site/yard', file));
    expect([has('T-1/build-sheet.html'), has('T-2/build-sheet.html')]).toEqual([false, true]);
  });
  it('writes the list of purchases beside the pages, and nothing half written', async () => {
    const folder = workspace(both);
    await run(folder, 'build', '--no-pdf');
    const text = readFileSync(path.join(folder, '_site/yard/purchases.csv'), 'utf8');
    expect(text).toMatch(/^supplier,[^\n]*\r\nacme-parts,Acme,AC-1,/);
  });
});
