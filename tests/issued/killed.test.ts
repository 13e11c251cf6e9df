import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { finishBegun, seal, type Sealing } from '../../src/cli/seal.ts';
import { issuedByNumber } from '../../src/issued/index.ts';
import { headOf, readLedger, readWorkspace } from '../../src/read/index.ts';
import { quoted, sendingShop, type Shop } from './shop.ts';

/** Moments of one issue at which it is killed. */
const MOMENTS = 100;
const AT_ONCE = 4;
const CHILD = path.join(import.meta.dirname, 'seal-and-die.ts');

let base: Shop;
beforeAll(async () => {
  // T-1 with a third revision, whose files are not sealed yet.
  const after = await sendingShop();
  after.write('orders/t-1.yaml', quoted('T-1', '330.00'));
  base = after.copy();
  if ((await after.on('2026-03-27', 'issue', 'T-1')) !== 0) throw new Error(after.said);
  mkdirSync(base.at('to-seal'));
  for (const kind of ['json', 'html', 'pdf'])
    base.write(`to-seal/${kind}`, after.bytes(`orders/issued/T-1-r3.${kind}`));
  const line = { number: 'T-1', revision: 3, day: '2026-03-27', written: '2026-03-27' };
  base.write('to-seal/line.json', JSON.stringify({ line }));
  // One file, so that a process that is to be killed begins at once.
  await build({
    entryPoints: [CHILD],
    outfile: base.at('to-seal/child.mjs'),
    bundle: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'error',
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
  });
  after.remove();
}, 60_000);
afterAll(() => base.remove());

interface Ended {
  readonly killed: boolean;
  readonly said: string;
}

/** Seals in a process that is killed at a step, or so many milliseconds after it begins. */
function sealIn(folder: string, step: number, after?: number): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const program = path.join(folder, 'to-seal/child.mjs');
    const child = spawn(process.execPath, [program, folder, String(step)]);
    let said = '';
    child.stdout.on('data', (chunk) => {
      if (said === '' && after !== undefined) setTimeout(() => child.kill('SIGKILL'), after);
      said += String(chunk);
    });
    child.stderr.on('data', (chunk) => (said += String(chunk)));
    child.on('error', reject);
    child.on('close', (_, signal) => resolve({ killed: signal === 'SIGKILL', said }));
  });
}

/** Seals the same in this process. */
function sealHere(shop: Shop) {
  const read = (kind: string): Buffer => shop.bytes(`to-seal/${kind}`);
  const files = { json: read('json'), html: read('html'), pdf: read('pdf') };
  const { line }: { line: Sealing['line'] } = JSON.parse(shop.read('to-seal/line.json'));
  const head = headOf(readLedger(shop.read('orders/issued/ledger.jsonl')));
  return seal(shop.folder, [{ line, files }], head);
}

/** What a shop holds of the third revision after a crash: nothing or all of it, and nothing in doubt. */
function stateOf(shop: Shop): 'sealed' | 'not sealed' {
  const { issued } = readWorkspace(shop.folder);
  const { byNumber, doubts } = issuedByNumber(issued, new Set(['T-1', 'T-3']));
  expect([issued.faults, [...issued.doubts], [...doubts]]).toEqual([[], [], []]);
  expect(byNumber.get('T-3')).toHaveLength(1);
  const revisions = byNumber.get('T-1')?.length;
  expect([2, 3]).toContain(revisions);
  return revisions === 3 ? 'sealed' : 'not sealed';
}

/** Time passes: a lock that nobody keeps is old. */
function letLockAge(shop: Shop): void {
  const old = new Date(Date.now() - 60_000);
  if (shop.has('orders/issued/.lock')) utimesSync(shop.issued('.lock'), old, old);
}

async function survives(kill: (folder: string) => Promise<Ended>) {
  const shop = base.copy();
  try {
    const { killed, said } = await kill(shop.folder);
    const state = stateOf(shop);
    letLockAge(shop);
    // Whoever issues next tidies up, and nothing that was sealed is lost by it.
    await finishBegun(shop.folder);
    expect(stateOf(shop)).toBe(state);
    letLockAge(shop);
    const again = state === 'sealed' || 'head' in (await sealHere(shop));
    expect(again).toBe(true);
    expect(stateOf(shop)).toBe('sealed');
    expect(readdirSync(shop.at('orders/issued')).filter((name) => name === '.begun')).toEqual([]);
    return { killed, state, said };
  } finally {
    shop.remove();
  }
}

/** Runs jobs, a few side by side. */
async function together<T>(jobs: readonly (() => Promise<T>)[]): Promise<readonly T[]> {
  const waiting = jobs.values();
  const results: T[] = [];
  const work = async (): Promise<void> => {
    for (const job of waiting) results.push(await job());
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  return results;
}

describe(`an issue that is killed with kill -9 at ${MOMENTS} moments`, () => {
  it('has sealed all or nothing, and can be made again', async () => {
    const whole = base.copy();
    const { said } = await sealIn(whole.folder, 0);
    whole.remove();
    const steps = Number(/"step":(\d+)/.exec(said)?.[1]);
    expect(steps, said).toBeGreaterThan(40);
    expect(steps).toBeLessThan(MOMENTS);
    const bySteps = Array.from(
      { length: steps },
      (_, index) => () => survives((folder) => sealIn(folder, index + 1)),
    );
    const byClock = Array.from(
      { length: MOMENTS - steps },
      (_, index) => () => survives((folder) => sealIn(folder, 0, index)),
    );
    const stepped = await together(bySteps);
    expect(stepped.filter(({ killed }) => killed)).toHaveLength(steps);
    const ended = [...stepped, ...(await together(byClock))];
    expect(ended).toHaveLength(MOMENTS);
    const states = ended.map(({ state }) => state);
    expect(states).toContain('sealed');
    expect(states).toContain('not sealed');
  }, 240_000);
});

describe('two at once', () => {
  it('of one order: one is sealed, the other is told', async () => {
    const shop = base.copy();
    const ended = await Promise.all([sealIn(shop.folder, 0), sealIn(shop.folder, 0)]);
    const outcomes = ended.map(({ said }) => (said.includes('"head"') ? 'sealed' : said));
    expect(outcomes.filter((one) => one === 'sealed')).toHaveLength(1);
    expect(outcomes.find((one) => one !== 'sealed')).toMatch(
      /issued meanwhile|is due|is there already/,
    );
    expect(stateOf(shop)).toBe('sealed');
    shop.remove();
  }, 60_000);

  it('while one is at work the other waits, and a lock that was left behind is taken over', async () => {
    const shop = base.copy();
    mkdirSync(shop.issued('.lock'));
    letLockAge(shop);
    expect((await sealIn(shop.folder, 0)).said).toContain('"head"');
    expect(stateOf(shop)).toBe('sealed');
    rmSync(shop.issued('.lock'), { recursive: true, force: true });
    shop.remove();
  }, 60_000);

  it('files that stand there under the name of the next revision are never written over', async () => {
    const shop = base.copy();
    writeFileSync(shop.issued('T-1-r3.pdf'), 'mine');
    const { said } = await sealIn(shop.folder, 0);
    expect(said).toContain('is there already');
    expect(shop.read('orders/issued/T-1-r3.pdf')).toBe('mine');
    shop.remove();
  }, 60_000);
});
