import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import { z } from 'zod';
import { ORDER_NUMBER } from '../schema/index.ts';
import { parseIsoDate } from '../units/index.ts';

/** Where sealed quotes stand, relative to the workspace. */
export const ISSUED = 'orders/issued';
export const LEDGER = `${ISSUED}/ledger.jsonl`;
/** Where the files of an issue are written first; what stands here counts once the ledger names it. */
export const BEGUN = `${ISSUED}/.begun`;

/** What is sealed of a quote: its data, its page and its PDF. */
export const SEALED_KINDS = ['json', 'html', 'pdf'] as const;
export type SealedKind = (typeof SEALED_KINDS)[number];

/** What the first line gives as the digest of the line before. */
const NOTHING_BEFORE = '0'.repeat(64);

const digest = z.string().regex(/^[0-9a-f]{64}$/);
const day = z.string().transform((text, context) => {
  const date = parseIsoDate(text);
  if (date) return date;
  context.addIssue({ code: 'custom', message: 'a day written YYYY-MM-DD' });
  return z.NEVER;
});

const lineSchema = z.strictObject({
  number: z.string().regex(ORDER_NUMBER),
  revision: z.int().min(1),
  /** The day that it was issued on. */
  day,
  /** The day of the machine that wrote the line. */
  written: day,
  /** True for a quote that was issued before there was a ledger. */
  takenIn: z.literal(true).optional(),
  /** SHA-256 of each file. */
  files: z.strictObject({ json: digest, html: digest, pdf: digest }),
  /** SHA-256 of the line before, without its line end. */
  before: digest,
});

/** One issue of a quote, as the ledger keeps it. */
export type LedgerLine = z.output<typeof lineSchema>;

/** What is wrong at one line. */
interface LedgerFault {
  /** 1 for the first. */
  readonly line: number;
  readonly received: string;
  readonly expected: string;
  /** Orders that can no longer be trusted because of it. */
  readonly numbers: readonly string[];
}

export interface Ledger {
  readonly lines: readonly LedgerLine[];
  readonly faults: readonly LedgerFault[];
  /** SHA-256 of every line, in order: each stands for all up to its own. */
  readonly digests: readonly string[];
}

/** SHA-256, hexadecimal. */
export function digestOf(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}

/**
 * A value as text in canonical form.
 *
 * @source RFC 8785, JSON Canonicalization Scheme
 */
export function canonicalText(value: unknown): string {
  return canonicalize(value) ?? 'null';
}

/** `DC-2601-r1.pdf` */
export function sealedName(
  { number, revision }: Pick<LedgerLine, 'number' | 'revision'>,
  kind: SealedKind,
): string {
  return `${number}-r${revision}.${kind}`;
}

/** The digest that stands for a whole ledger: that of its last line. */
export const headOf = ({ digests }: Ledger): string => digests.at(-1) ?? NOTHING_BEFORE;

/** The text of a ledger with more lines, each holding the digest of the one before. */
export function withLines(
  text: string,
  added: readonly Omit<LedgerLine, 'before'>[],
): { readonly text: string; readonly head: string } {
  let whole = text;
  let before = headOf(readLedger(text));
  for (const line of added) {
    const next = canonicalText({ ...line, before });
    whole += `${next}\n`;
    before = digestOf(next);
  }
  return { text: whole, head: before };
}

/**
 * Reads a ledger and holds every line against the one before.
 *
 * @returns the lines that can be read, and what is wrong: a line that was changed, taken out or put in, a revision
 * that is missing or stands twice, a day that goes back
 */
export function readLedger(text: string): Ledger {
  const texts = text === '' ? [] : text.replace(/\n$/, '').split('\n');
  const digests = texts.map((line) => digestOf(line));
  const parsed = texts.map((line) => parseLine(line));
  const faults = parsed.flatMap((line, index) => {
    const before = { line: parsed[index - 1], digest: digests[index - 1] ?? NOTHING_BEFORE };
    return faultOf(line, before, revisionBefore(line, parsed.slice(0, index))).map((fault) => ({
      line: index + 1,
      ...fault,
    }));
  });
  const torn = text !== '' && !text.endsWith('\n');
  return {
    lines: parsed.filter((line) => line !== undefined),
    digests,
    faults: torn ? [...faults, tornTail(texts.length, parsed.at(-1))] : faults,
  };
}

function parseLine(text: string): LedgerLine | undefined {
  try {
    const { data } = lineSchema.safeParse(JSON.parse(text));
    return data && canonicalText(data) === text ? data : undefined;
  } catch {
    return undefined;
  }
}

function revisionBefore(
  line: LedgerLine | undefined,
  earlier: readonly (LedgerLine | undefined)[],
): number {
  return earlier.findLast((one) => one?.number === line?.number)?.revision ?? 0;
}

function faultOf(
  line: LedgerLine | undefined,
  before: { readonly line: LedgerLine | undefined; readonly digest: string },
  revision: number,
): readonly Omit<LedgerFault, 'line'>[] {
  if (!line)
    return [
      { received: 'text that is no line', expected: 'a line as it was written', numbers: [] },
    ];
  const { number } = line;
  const faults: Omit<LedgerFault, 'line'>[] = [];
  if (line.before !== before.digest)
    faults.push({
      received:
        'it does not follow from the line before: one of the two was changed, or one between was taken out',
      expected: `the digest ${before.digest.slice(0, 12)}... of the line before`,
      numbers: [number, ...(before.line ? [before.line.number] : [])],
    });
  if (line.revision !== revision + 1)
    faults.push({
      received: `${number}, revision ${line.revision}`,
      expected: `${number}, revision ${revision + 1}`,
      numbers: [number],
    });
  const { day: issued, written } = line;
  const [lastDay, lastWritten] = [before.line?.day ?? issued, before.line?.written ?? written];
  if (issued < lastDay || written < lastWritten || issued > written)
    faults.push({
      received: `issued on ${issued}, written on ${written}`,
      expected: `not before the line above, ${lastDay}, and issued no later than written`,
      numbers: [number],
    });
  return faults;
}

const tornTail = (line: number, last: LedgerLine | undefined): LedgerFault => ({
  line,
  received: 'a last line without its end',
  expected: 'a line that ends with a line feed',
  numbers: last ? [last.number] : [],
});
