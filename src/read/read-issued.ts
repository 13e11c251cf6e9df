import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { type Finding, finding } from '../findings/index.ts';
import type { Reading } from './folder.ts';
import {
  BEGUN,
  canonicalText,
  digestOf,
  ISSUED,
  type Ledger,
  LEDGER,
  type LedgerLine,
  readLedger,
  SEALED_KINDS,
  type SealedKind,
  sealedName,
} from './ledger.ts';

/** A quote that is what it was when it was sealed. */
export interface SealedQuote {
  readonly line: LedgerLine;
  /** Where its data stands, relative to the workspace. */
  readonly file: string;
  /** The data, as parsed from JSON. */
  readonly content: unknown;
}

/** The issued quotes of a workspace, and what can no longer be trusted. */
export interface IssuedFiles {
  readonly sealed: readonly SealedQuote[];
  readonly ledger: Ledger;
  /** What is wrong with the quotes of an order, by its number: none of it is to be shown. */
  readonly doubts: ReadonlyMap<string, readonly Finding[]>;
  /** What is wrong with the ledger itself. */
  readonly faults: readonly Finding[];
  /** Names of files that the ledger does not name. */
  readonly strays: readonly string[];
}

const NAME = /^(.+)-r([1-9]\d*)\.(?:json|html|pdf)$/;
const MAX_LEDGER = 16 * 1024 * 1024;
const MAX_SEALED = 32 * 1024 * 1024;

/** A quote's data as its file has it: the content in canonical form, with the digest of that. */
export function canonicalWithDigest(content: unknown): string {
  const canonical = canonicalText(content);
  return `{"sha256":"${digestOf(canonical)}",\n"content":${canonical}}\n`;
}

/** What `canonicalWithDigest` was made from; undefined for a text that does not give its own digest. */
export function openSealed(text: string): unknown {
  const parsed = parse(text);
  return parsed && digestOf(canonicalText(parsed.content)) === parsed.sha256
    ? parsed.content
    : undefined;
}

function parse(text: string): { readonly sha256: unknown; readonly content: unknown } | undefined {
  try {
    const parsed: unknown = JSON.parse(text);
    if (typeof parsed !== 'object' || parsed === null) return undefined;
    return 'sha256' in parsed && 'content' in parsed ? parsed : undefined;
  } catch {
    return undefined;
  }
}

/**
 * The bytes of a sealed file; a sentence when they are not those that were sealed.
 *
 * While an issue is being written its files stand beside; they count from the moment that the ledger names them.
 */
export function sealedBytes(
  workspace: string,
  line: LedgerLine,
  kind: SealedKind,
): Uint8Array | string {
  const name = sealedName(line, kind);
  const places = [`${ISSUED}/${name}`, `${BEGUN}/${name}`].map((file) =>
    path.join(workspace, file),
  );
  const place = places.find((file) => lstatSync(file, { throwIfNoEntry: false }) !== undefined);
  if (place === undefined) return 'no such file';
  const bytes = regularBytes(place, MAX_SEALED);
  if (typeof bytes === 'string') return bytes;
  return digestOf(bytes) === line.files[kind] ? bytes : 'bytes that do not give the sealed digest';
}

/** Reads the ledger and everything that it names. Nothing counts but what the ledger names and still has its digest. */
export function readIssued({ workspace, findings }: Reading): IssuedFiles {
  const folder = path.join(workspace, ISSUED);
  const names = namesIn(folder);
  if (!names)
    return { ...empty(), faults: [broken('no folder, or one that may not be read', ISSUED)] };
  const text = ledgerText(folder);
  const ledger = readLedger(text ?? '');
  const doubts = new Map<string, Finding[]>();
  const doubt = (number: string, one: Finding): void => {
    doubts.set(number, [...(doubts.get(number) ?? []), one]);
  };
  const faults = ledger.faults.map(({ line, received, expected, numbers }) => {
    const place = { file: LEDGER };
    for (const number of new Set(numbers))
      doubt(number, finding('LEDGER_IN_DOUBT', place, { received: `${number}, line ${line}` }));
    return finding('LEDGER_BROKEN', place, { received: `line ${line}: ${received}`, expected });
  });
  if (text === undefined)
    faults.push(broken('something that is no plain file, or is too large', LEDGER));
  const sealed = ledger.lines.flatMap((line) => {
    const found = wrongFiles(workspace, line);
    for (const one of found) doubt(line.number, one);
    const data = found.length === 0 && sealedBytes(workspace, line, 'json');
    return data instanceof Uint8Array
      ? // The ledger has vouched for the whole file.
        [
          {
            line,
            file: fileOf(line, 'json'),
            content: parse(Buffer.from(data).toString('utf8'))?.content,
          },
        ]
      : [];
  });
  const known = new Set(
    ledger.lines.flatMap((l) => SEALED_KINDS.map((kind) => sealedName(l, kind))),
  );
  const strays = names.filter((one) => !known.has(one)).toSorted();
  for (const name of strays) {
    const stray = strayFile(name, text === '');
    const [, number] = NAME.exec(name) ?? [];
    if (number === undefined) findings.push(stray);
    else doubt(number, stray);
  }
  return { sealed, ledger, doubts, faults, strays };
}

/** What there is without a workspace to read. */
export const empty = (): IssuedFiles => ({
  sealed: [],
  ledger: readLedger(''),
  doubts: new Map(),
  faults: [],
  strays: [],
});

/** Names of the files that a quote could have; undefined for what is no plain folder. */
function namesIn(folder: string): readonly string[] | undefined {
  try {
    const facts = lstatSync(folder, { throwIfNoEntry: false });
    if (!facts) return [];
    if (!facts.isDirectory()) return undefined;
    return readdirSync(folder).filter((name) => /\.(?:json|html|pdf)$/.test(name));
  } catch {
    return undefined;
  }
}

const fileOf = (line: LedgerLine, kind: SealedKind): string =>
  `${ISSUED}/${sealedName(line, kind)}`;

function wrongFiles(workspace: string, line: LedgerLine): readonly Finding[] {
  return SEALED_KINDS.flatMap((kind) => {
    const bytes = sealedBytes(workspace, line, kind);
    if (typeof bytes !== 'string') return [];
    const file = fileOf(line, kind);
    const code = bytes === 'no such file' ? 'ISSUED_MISSING' : 'ISSUED_ALTERED';
    return [finding(code, { file }, { received: bytes })];
  });
}

function strayFile(name: string, noLedger: boolean): Finding {
  return finding(
    'ISSUED_NOT_IN_LEDGER',
    { file: `${ISSUED}/${name}` },
    {
      received: name,
      ...(noLedger && {
        remedy:
          'If it was issued by an earlier version of the program, run once: npm run orlop -- ledger --take-in. Otherwise bring ledger.jsonl back from a copy',
      }),
    },
  );
}

/** The ledger's text, empty when there is none; undefined when what stands there cannot be it. */
function ledgerText(folder: string): string | undefined {
  const file = path.join(folder, path.basename(LEDGER));
  if (lstatSync(file, { throwIfNoEntry: false }) === undefined) return '';
  const bytes = regularBytes(file, MAX_LEDGER);
  return typeof bytes === 'string' ? undefined : Buffer.from(bytes).toString('utf8');
}

/** The bytes of a plain file; why there are none for a link, a folder, or what is too large or may not be read. */
function regularBytes(file: string, most: number): Uint8Array | string {
  try {
    const facts = lstatSync(file);
    if (facts.isSymbolicLink()) return 'a link, where the file itself must be';
    if (!facts.isFile()) return 'something that is no file';
    return facts.size > most ? 'more than a quote can have' : readFileSync(file);
  } catch {
    return 'a file that may not be read';
  }
}

const broken = (received: string, file: string): Finding =>
  finding('LEDGER_BROKEN', { file }, { received });
