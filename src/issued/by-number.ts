import { type Finding, finding } from '../findings/index.ts';
import type { SealedQuote } from '../read/index.ts';
import { openIssued } from './freeze.ts';
import type { IssuedQuote } from './types.ts';

export interface IssuedQuotes {
  /** By number, first revision first; never an empty list. */
  readonly byNumber: ReadonlyMap<string, readonly IssuedQuote[]>;
  /** What is wrong with those that are not given, by number. */
  readonly doubts: ReadonlyMap<string, readonly Finding[]>;
}

/**
 * Opens sealed quotes and sorts them by number.
 *
 * @param sealed - in the order of the ledger, so that the first revision comes first
 * @param known - numbers of all orders, broken ones too: an issued quote of another is an error
 */
export function issuedByNumber(
  sealed: readonly SealedQuote[],
  known: ReadonlySet<string>,
): IssuedQuotes {
  const doubts = new Map<string, Finding[]>();
  const byNumber = new Map<string, IssuedQuote[]>();
  for (const { line, content } of sealed) {
    const { number } = line;
    const quote = openIssued(content);
    const found = quote ? doubtOf(quote, line, known) : unreadable(line);
    if (found) doubts.set(number, [...(doubts.get(number) ?? []), found]);
    else if (quote) byNumber.set(number, [...(byNumber.get(number) ?? []), quote]);
  }
  return { byNumber, doubts };
}

type Line = SealedQuote['line'];

const place = ({ number, revision }: Line): Finding['place'] => ({
  file: `orders/issued/${number}-r${revision}.json`,
});

const unreadable = (line: Line): Finding =>
  finding('ISSUED_ALTERED', place(line), { received: 'data that this program cannot read' });

function doubtOf(
  { number, revision, issuedOn }: IssuedQuote,
  line: Line,
  known: ReadonlySet<string>,
): Finding | undefined {
  const [received, expected] = [
    `${number}, revision ${revision}, of ${issuedOn}`,
    `${line.number}, revision ${line.revision}, of ${line.day}`,
  ];
  if (received !== expected) return finding('ISSUED_ALTERED', place(line), { received, expected });
  if (known.has(number)) return undefined;
  return finding('ISSUED_OF_OTHER_ORDER', place(line), { received: number });
}
