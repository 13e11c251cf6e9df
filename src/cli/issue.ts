import { join } from 'node:path';
import { isQuoteView, type QuoteView, quoteView } from '../documents/index.ts';
import { hasErrors } from '../findings/index.ts';
import { type Data, driftOf, freezeQuote, type IssuedQuote } from '../issued/index.ts';
import { digestOf, sealed } from '../read/index.ts';
import { drawingFontCss, writeOnce } from '../site/index.ts';
import type { IsoDate } from '../units/index.ts';
import type { CommandOptions } from './command-line.ts';
import { EXIT } from './exit.ts';
import { allFindings, knowsOrder, loadWorkspace, type LoadedWorkspace } from './load.ts';
import { reportFindings } from './report.ts';
import { today } from './today.ts';

/** Freezes a quote: from then on its numbers are those of the file that this writes, and never change. */
export async function issue({ workspace, rest }: CommandOptions): Promise<number> {
  const [number, ...more] = rest;
  if (number === undefined || more.length > 0)
    return refuse('give the number of one order', EXIT.usage);
  const loaded = loadWorkspace(workspace);
  if (!knowsOrder(loaded, number)) return refuse(`there is no order ${number}`, EXIT.usage);
  const findings = allFindings(loaded, number);
  const entry = loaded.orders.find(({ order }) => order.value.number === number);
  const figures = entry?.quoted;
  if (!entry || !figures || hasErrors(findings)) {
    reportFindings(findings, loaded.sources);
    return refuse(`${number} has errors; mend them first`, EXIT.findings);
  }
  if (figures.build.order.dates.quoted === undefined)
    return refuse(`${number} has no date; write dates: quoted: and status: quoted`, EXIT.findings);
  const before = loaded.issued.get(number)?.at(-1);
  const revision = (before?.revision ?? 0) + 1;
  const day = today();
  const view = quoteView(figures, {
    fontCss: drawingFontCss(),
    revision,
    alternatives: entry.alternatives,
    ...(before && { earlier: { ...before, drift: driftOf(before, figures) } }),
  });
  if (before && saysTheSame(before, view)) {
    process.stdout.write(
      `${number} says what revision ${before.revision} says; nothing to issue\n`,
    );
    return EXIT.fine;
  }
  const content = freezeQuote({
    figures,
    revision,
    issuedOn: day,
    inputs: inputsOf(loaded, entry.order.file),
    view,
  });
  return write(workspace, number, revision, content, day);
}

async function write(
  workspace: string,
  number: string,
  revision: number,
  content: Data,
  day: IsoDate,
): Promise<number> {
  const name = `orders/issued/${number}-r${revision}.json`;
  await writeOnce(join(workspace, name), sealed(content));
  process.stdout.write(`${name} written on ${day}; the quote is printed from it from now on\n`);
  return EXIT.fine;
}

/** Every file that the quote was made of, with its digest, in order of name: the order's own and the catalogue's. */
function inputsOf({ sources }: LoadedWorkspace, order: string) {
  return [...sources]
    .filter(([file]) => file === order || file.startsWith('catalogue/'))
    .map(([file, text]) => ({ file, sha256: digestOf(text) }))
    .toSorted((a, b) => (a.file < b.file ? -1 : 1));
}

/** True when nothing but the number of the revision would be another. */
function saysTheSame({ view: before }: IssuedQuote, view: QuoteView): boolean {
  return isQuoteView(before) && sealed(wordsOf(before)) === sealed(wordsOf(view));
}

function wordsOf(view: QuoteView): Partial<QuoteView> {
  const { document: _document, facts: _facts, changes: _changes, ...words } = view;
  return words;
}

function refuse(message: string, code: number): number {
  process.stderr.write(`orlop issue: ${message}\n`);
  return code;
}
