import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isKeptQuote, pdfName } from '../documents/index.ts';
import { openIssued } from '../issued/index.ts';
import { headOf, ISSUED, openSealed } from '../read/index.ts';
import type { IsoDate } from '../units/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { loadWorkspace, type LoadedWorkspace } from './load.ts';
import { printSealings, type ToSeal } from './print-documents.ts';
import { refuse } from './refuse.ts';
import { reportFindings } from './report.ts';
import { finishBegun, seal } from './seal.ts';
import { clockDay } from './today.ts';

/** Says which issued quotes stand and why, holds the ledger against a digest kept elsewhere, or takes in older files. */
export async function ledger({
  workspace,
  check,
  'take-in': takeIn,
}: CommandOptions<'ledger'>): Promise<number> {
  if (takeIn) return takeInOlder(workspace);
  const loaded = loadWorkspace(workspace);
  if (check !== undefined) return holdAgainst(check, loaded);
  const { lines } = loaded.ledger;
  const findings = [...new Set(issuedFindings(loaded))];
  for (const line of lines) {
    const { number, revision, day, written, takenIn } = line;
    const stands = loaded.issued.get(number)?.some((one) => one.revision === revision);
    const late = takenIn
      ? `taken in on ${written}: page and PDF printed then from the data that was sent`
      : written === day
        ? ''
        : `written on ${written}`;
    const state = stands ? 'stands: ledger and all three files agree' : 'DOES NOT STAND';
    const words = [`${number}-r${revision}`, day, state, late].filter(Boolean);
    process.stdout.write(`${words.join('  ')}\n`);
  }
  if (lines.length === 0) process.stdout.write('No quote was issued yet.\n');
  else
    process.stdout.write(`Digest of the ledger, ${lines.length} lines: ${headOf(loaded.ledger)}\n`);
  if (findings.length === 0) return EXIT.fine;
  reportFindings(findings, loaded);
  return EXIT.findings;
}

/** Of all that was found what is about issued quotes. */
function issuedFindings({ findings, orders }: LoadedWorkspace) {
  return [...findings, ...orders.flatMap((entry) => entry.findings)].filter(({ code }) =>
    /^(?:ISSUED_|LEDGER_|REVISION_)/.test(code),
  );
}

/** A digest of any line stands for the ledger up to there. */
function holdAgainst(check: string, { ledger: { digests, faults } }: LoadedWorkspace): number {
  const wanted = check.toLowerCase();
  const at = digests.indexOf(wanted);
  if (!/^[0-9a-f]{64}$/.test(wanted))
    return refuse('ledger', '--check takes the 64 letters and digits that ledger and issue print');
  const broken = faults.some(({ line }) => line <= at + 1);
  if (at < 0 || broken)
    return refuse(
      'ledger',
      'the ledger is not the one that this digest was taken of: a line was changed, or lines are missing',
      EXIT.findings,
    );
  const since = digests.length - at - 1;
  process.stdout.write(
    `The first ${at + 1} lines are those that this digest was taken of; ${since} came since.\n`,
  );
  return EXIT.fine;
}

/** Takes in what an earlier version of the program has issued: once, before there is a ledger, and all of it or nothing. */
async function takeInOlder(workspace: string): Promise<number> {
  await finishBegun(workspace);
  const loaded = loadWorkspace(workspace);
  if (loaded.ledger.lines.length > 0 || loaded.ledgerBroken)
    return refuse(
      'ledger',
      'there is a ledger already; older files are taken in once',
      EXIT.findings,
    );
  const written = clockDay();
  const older = loaded.strays.map((name) => olderQuote(workspace, name, written));
  const wrong = older.find((one) => typeof one === 'string');
  if (wrong !== undefined)
    return refuse('ledger', `${wrong} is no quote as it was issued`, EXIT.findings);
  const quotes = older
    .filter((one) => typeof one !== 'string')
    .toSorted((a, b) => a.date.localeCompare(b.date) || a.line.revision - b.line.revision);
  if (quotes.length === 0) return refuse('ledger', 'there is nothing to take in', EXIT.findings);
  const sealings = await printSealings(quotes);
  if (typeof sealings === 'string') return refuse('ledger', sealings, EXIT.findings);
  const done = await seal(workspace, sealings, headOf(loaded.ledger));
  if ('refused' in done) return refuse('ledger', done.refused, EXIT.findings);
  for (const { line } of sealings)
    process.stdout.write(
      `${line.number}-r${line.revision} of ${line.day} taken in; its page and PDF are printed today from the data that was sent\n`,
    );
  process.stdout.write(`Digest of the ledger: ${done.head}\n`);
  return EXIT.fine;
}

/** A quote of before the ledger, its PDF under today's name; the name of a file that is none. */
function olderQuote(workspace: string, name: string, written: IsoDate): ToSeal | string {
  const json = readFileSync(join(workspace, ISSUED, name));
  const quote = openIssued(openSealed(json.toString('utf8')));
  if (!quote || !isKeptQuote(quote.view)) return name;
  const { number, revision, issuedOn: date, view } = quote;
  if (name !== `${number}-r${revision}.json`) return name;
  const document = { ...view.document, pdf: pdfName('quote', number, revision) };
  const line = { number, revision, day: date, written, takenIn: true as const };
  return { view: { ...view, document }, date, line, json };
}
