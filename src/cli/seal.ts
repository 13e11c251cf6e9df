import { existsSync, readFileSync } from 'node:fs';
import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { lock } from 'proper-lockfile';
import {
  BEGUN,
  digestOf,
  headOf,
  ISSUED,
  LEDGER,
  type LedgerLine,
  readLedger,
  SEALED_KINDS,
  type SealedKind,
  sealedName,
  withLines,
} from '../read/index.ts';

/** A quote to be sealed: its line but for the digests, and the bytes of its files. */
export interface Sealing {
  readonly line: Omit<LedgerLine, 'files' | 'before'>;
  readonly files: Readonly<Record<SealedKind, Uint8Array>>;
}

/** Milliseconds after which a lock is that of a program that was killed. */
const STALE = 10_000;

/**
 * Seals quotes: all of them or none.
 *
 * The files are written beside first, then the ledger is renamed into place, and from that moment on they count; at
 * last they are moved to where they belong. A program that is killed leaves nothing, or all.
 *
 * @param head - what the ledger's digest must be, so that nobody else has issued since it was read
 * @returns the ledger's new digest; or why nothing was sealed: somebody else was first, a file is there already, or a
 * line would not follow from those before
 */
export async function seal(
  workspace: string,
  sealings: readonly Sealing[],
  head: string,
): Promise<{ readonly head: string } | { readonly refused: string }> {
  return alone(workspace, async () => {
    const ledger = join(workspace, LEDGER);
    const begun = join(workspace, BEGUN);
    const text = existsSync(ledger) ? readFileSync(ledger, 'utf8') : '';
    if (headOf(readLedger(text)) !== head)
      return { refused: 'another quote was issued meanwhile; run it again' };
    const lines = sealings.map(({ line, files }) => ({ ...line, files: digestsOf(files) }));
    const names = lines.flatMap((line) => SEALED_KINDS.map((kind) => sealedName(line, kind)));
    const taken = names.find((name) => existsSync(join(workspace, ISSUED, name)));
    if (taken !== undefined && !sealings.some(({ line }) => line.takenIn))
      return { refused: `${ISSUED}/${taken} is there already` };
    const next = withLines(text, lines);
    const [fault] = readLedger(next.text).faults;
    if (fault) return { refused: `${fault.received}, where ${fault.expected} is due` };
    await mkdir(begun, { recursive: true });
    for (const { line, files } of sealings)
      for (const kind of SEALED_KINDS)
        await writeFile(join(begun, sealedName(line, kind)), files[kind], { flush: true });
    await writeFile(join(begun, 'ledger'), next.text, { flush: true });
    await rename(join(begun, 'ledger'), ledger);
    await finish(workspace);
    return { head: next.head };
  });
}

/** Brings an issue that was broken off to its end: what the ledger names is moved into place, the rest is thrown away. */
export async function finishBegun(workspace: string): Promise<void> {
  if (existsSync(join(workspace, BEGUN))) await alone(workspace, async () => undefined);
}

/** Runs one program at a time, on what an earlier one has left in order. */
async function alone<T>(workspace: string, work: () => Promise<T>): Promise<T> {
  const folder = join(workspace, ISSUED);
  await mkdir(folder, { recursive: true });
  const release = await lock(folder, {
    lockfilePath: join(folder, '.lock'),
    stale: STALE,
    retries: { retries: 20, minTimeout: 50, maxTimeout: 1000 },
  });
  try {
    await finish(workspace);
    return await work();
  } finally {
    await release();
  }
}

async function finish(workspace: string): Promise<void> {
  const begun = join(workspace, BEGUN);
  if (!existsSync(begun)) return;
  const ledger = join(workspace, LEDGER);
  const { lines } = readLedger(existsSync(ledger) ? readFileSync(ledger, 'utf8') : '');
  const wanted = new Map(
    lines.flatMap((line) =>
      SEALED_KINDS.map((kind) => [sealedName(line, kind), line.files[kind]] as const),
    ),
  );
  for (const name of await readdir(begun)) {
    const [from, to] = [join(begun, name), join(workspace, ISSUED, name)];
    if (!existsSync(to) && digestOf(readFileSync(from)) === wanted.get(name))
      await rename(from, to);
  }
  await rm(begun, { recursive: true, force: true });
}

const digestsOf = (files: Sealing['files']): LedgerLine['files'] => ({
  json: digestOf(files.json),
  html: digestOf(files.html),
  pdf: digestOf(files.pdf),
});
