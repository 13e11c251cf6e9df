import { join } from 'node:path';
import { cacheFolder, openBrowser, printBytes, type PrintJob, printPdfs } from '../print/index.ts';
import type { KeptQuote } from '../documents/index.ts';
import type { IsoDate } from '../units/index.ts';
import { type RenderedDocument, renderQuotes } from './pages.ts';
import { programName } from './program.ts';
import { startProgress } from './progress.ts';
import type { Sealing } from './seal.ts';

/**
 * Prints the documents into a folder and says how it goes.
 *
 * @returns those that are there now; undefined when there is no browser
 */
export async function printDocuments(
  documents: readonly RenderedDocument[],
  out: string,
): Promise<readonly RenderedDocument[] | undefined> {
  const opened = await openBrowser();
  if (!opened.browser) {
    process.stderr.write(`The pages are made, the PDFs are not. ${opened.reason}\n`);
    return undefined;
  }
  for (const warning of opened.warnings) process.stderr.write(`Passed over: ${warning}\n`);
  const progress = startProgress('PDF', process.stderr);
  try {
    const program = programName();
    const jobs = documents.map((document) => ({
      ...printJob(document, program),
      file: join(out, document.pdf),
    }));
    const { printed, reused, failed } = await printPdfs(jobs, {
      browser: opened.browser,
      version: opened.version,
      cache: cacheFolder(),
      onDone: (done, total, file) => progress.step(done, total, file.slice(out.length + 1)),
    });
    progress.end();
    for (const { file, reason } of failed)
      process.stderr.write(`${file} is not printed: ${reason}\n`);
    process.stdout.write(`${printed} PDFs printed, ${reused} unchanged\n`);
    const missing = new Set(failed.map(({ file }) => file));
    return documents.filter(({ pdf }) => !missing.has(join(out, pdf)));
  } finally {
    progress.end();
    await opened.browser.close();
  }
}

/** What a quote is sealed from: what it says, and its data. */
export interface ToSeal {
  readonly view: KeptQuote;
  readonly date: IsoDate;
  readonly line: Sealing['line'];
  readonly json: Uint8Array;
}

/**
 * Makes the page and the PDF of each quote; why not, when there is no browser.
 *
 * @throws Error when one cannot be made
 */
export async function printSealings(
  quotes: readonly ToSeal[],
): Promise<readonly Sealing[] | string> {
  const opened = await openBrowser();
  if (!opened.browser) return `a quote is sealed with its PDF. ${opened.reason}`;
  const { browser } = opened;
  try {
    const program = programName();
    const sealings: Sealing[] = [];
    for (const page of await renderQuotes(quotes)) {
      const pdf = await printBytes(browser, printJob(page, program));
      const { line, json, html } = page;
      sealings.push({ line, files: { json, html: Buffer.from(html), pdf } });
    }
    return sealings;
  } finally {
    await browser.close();
  }
}

function printJob(
  { url, html, head, date }: RenderedDocument,
  program: string,
): Omit<PrintJob, 'file'> {
  return {
    html,
    shelf: url.startsWith('yard/') ? 'yard' : 'customer',
    facts: {
      title: head.title,
      author: head.author,
      subject: head.subject,
      keywords: [head.reference],
      program,
      date: new Date(`${date}T00:00:00Z`),
    },
  };
}
