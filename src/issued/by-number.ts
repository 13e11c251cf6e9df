import { type Finding, finding } from '../findings/index.ts';
import type { IssuedFiles, SealedQuote } from '../read/index.ts';
import type { IssuedQuote } from './form/form.ts';
import { openIssued } from './form/open.ts';

export interface IssuedQuotes {
  /** By number, first revision first; never an empty list, and none of an order about which there is a doubt. */
  readonly byNumber: ReadonlyMap<string, readonly IssuedQuote[]>;
  /** What is wrong with those of the other orders, by number. */
  readonly doubts: ReadonlyMap<string, readonly Finding[]>;
}

/**
 * Opens sealed quotes and sorts them by number.
 *
 * @param known - numbers of all orders, broken ones too: an issued quote of another is an error
 */
export function issuedByNumber(
  { sealed, doubts: read }: Pick<IssuedFiles, 'sealed' | 'doubts'>,
  known: ReadonlySet<string>,
): IssuedQuotes {
  const doubts = new Map(read);
  const byNumber = new Map<string, IssuedQuote[]>();
  for (const one of sealed) {
    const { number } = one.line;
    const quote = openIssued(one.content);
    const found = quote ? doubtOf(quote, one, known) : unreadable(one);
    if (found) doubts.set(number, [...(doubts.get(number) ?? []), found]);
    else if (quote) byNumber.set(number, [...(byNumber.get(number) ?? []), quote]);
  }
  return {
    byNumber: new Map([...byNumber].filter(([number]) => !doubts.has(number))),
    doubts,
  };
}

function unreadable({ file }: SealedQuote): Finding {
  return finding('ISSUED_ALTERED', { file }, { received: 'data that this program cannot read' });
}

function doubtOf(
  { number, revision, issuedOn }: IssuedQuote,
  { file, line }: SealedQuote,
  known: ReadonlySet<string>,
): Finding | undefined {
  const [received, expected] = [
    `${number}, revision ${revision}, of ${issuedOn}`,
    `${line.number}, revision ${line.revision}, of ${line.day}`,
  ];
  if (received !== expected) return finding('ISSUED_ALTERED', { file }, { received, expected });
  if (known.has(number)) return undefined;
  return finding('ISSUED_OF_OTHER_ORDER', { file }, { received: number });
}
