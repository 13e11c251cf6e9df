import { type Finding, finding } from '../findings/index.ts';
import { openIssued } from './freeze.ts';
import type { IssuedQuote } from './types.ts';

/** A file of issued quotes as the reader gives it. */
interface IssuedFile {
  readonly file: string;
  readonly number: string;
  readonly revision: number;
  readonly content: unknown;
}

export interface IssuedQuotes {
  /** By number, first revision first; never an empty list. */
  readonly byNumber: ReadonlyMap<string, readonly IssuedQuote[]>;
  readonly findings: readonly Finding[];
}

/**
 * Opens issued quotes and sorts them by number and revision.
 *
 * @param known - numbers of all orders, broken ones too: an issued quote of another is an error
 */
export function issuedByNumber(
  files: readonly IssuedFile[],
  known: ReadonlySet<string>,
): IssuedQuotes {
  const findings: Finding[] = [];
  const byNumber = new Map<string, readonly IssuedQuote[]>();
  for (const { file, number, revision, content } of files) {
    const quote = openIssued(content);
    if (!quote || quote.number !== number || quote.revision !== revision) {
      const received = quote ? `${quote.number}, revision ${quote.revision}` : 'another format';
      findings.push(finding('ISSUED_ALTERED', { file }, { received }));
    } else if (!known.has(number)) {
      findings.push(finding('ISSUED_OF_OTHER_ORDER', { file }, { received: number }));
    } else {
      const quotes = [...(byNumber.get(number) ?? []), quote];
      byNumber.set(
        number,
        quotes.toSorted((a, b) => a.revision - b.revision),
      );
    }
  }
  return { byNumber, findings };
}
