import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import { finding } from '../findings/index.ts';
import { filesIn, isFolder, type Reading } from './folder.ts';
import path from 'node:path';
import { readText } from './read-text.ts';

/** A file of `orders/issued/` that is what it was when it was written. */
export interface IssuedFile {
  /** Relative to the workspace, with forward slashes. */
  readonly file: string;
  readonly number: string;
  readonly revision: number;
  /** As parsed from JSON. */
  readonly content: unknown;
}

const FOLDER = 'orders/issued';
const NAME = /^(.+)-r([1-9]\d*)\.json$/;
/** Bytes: a quote with its drawing has some 200,000. */
const LONGEST_ISSUED = 4 * 1024 * 1024;

/** SHA-256 of a text, hexadecimal. */
export function digestOf(text: string): string {
  return createHash('sha256').update(text, 'utf8').digest('hex');
}

/**
 * The text of an issued quote's file: its content in canonical form, with the digest of that.
 *
 * @source RFC 8785, JSON Canonicalization Scheme
 */
export function sealed(content: unknown): string {
  const canonical = canonicalOf(content);
  return `{"sha256":"${digestOf(canonical)}",\n"content":${canonical}}\n`;
}

/** The issued quotes of a workspace; one that was changed since it was written is an error, and is not given. */
export function readIssued(reading: Reading): readonly IssuedFile[] {
  if (!isFolder(path.join(reading.workspace, FOLDER))) return [];
  return filesIn(reading, FOLDER, /\.json$/).flatMap((file) => {
    const issued = readOne(reading, file);
    return issued ? [issued] : [];
  });
}

function readOne(reading: Reading, file: string): IssuedFile | undefined {
  const refuse = (received: string): undefined => {
    reading.findings.push(finding('ISSUED_ALTERED', { file }, { received }));
    return undefined;
  };
  const [, number, revision] = NAME.exec(file.slice(FOLDER.length + 1)) ?? [];
  if (number === undefined) return refuse('a name that is not <number>-r<revision>.json');
  const rules = { most: LONGEST_ISSUED, badText: 'ISSUED_ALTERED' } as const;
  const { text, finding: failed } = readText(reading.workspace, file, rules);
  if (text === undefined) {
    reading.findings.push(failed);
    return undefined;
  }
  const parsed = parse(text);
  if (!parsed) return refuse('text that is not as it was written');
  if (digestOf(canonicalOf(parsed.content)) !== parsed.sha256)
    return refuse('content that does not give its digest');
  return { file, number, revision: Number(revision), content: parsed.content };
}

function parse(text: string): { readonly sha256: string; readonly content: unknown } | undefined {
  try {
    const parsed: unknown = JSON.parse(text);
    if (typeof parsed !== 'object' || parsed === null) return undefined;
    if (!('sha256' in parsed) || !('content' in parsed)) return undefined;
    return { sha256: String(parsed.sha256), content: parsed.content };
  } catch {
    return undefined;
  }
}

function canonicalOf(content: unknown): string {
  return canonicalize(content) ?? 'null';
}
