import { createHash } from 'node:crypto';
import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Browser } from 'puppeteer';
import { finishPdf } from './finish-pdf.ts';
import { openPdfCache, type PdfCache, writeWhole } from './pdf-cache.ts';
import { printPage } from './print-page.ts';
import type { PrintJob } from './types.ts';

/** Raised when the way a PDF is made changes, so that nothing of the old way is reused. */
const FORMAT = 1;

export interface PrintOptions {
  readonly browser: Browser;
  readonly version: string;
  /** Where printed documents are kept, to be reused when nothing in them changed; left out: none are kept. */
  readonly cache?: string;
  /** Pages printed side by side. */
  readonly tabs?: number;
  readonly onDone?: (done: number, total: number, file: string) => void;
}

export interface PrintResult {
  readonly printed: number;
  readonly reused: number;
  /** Documents that could not be printed, and why; the others are there. */
  readonly failed: readonly { readonly file: string; readonly reason: string }[];
}

/**
 * Prints every job, several side by side in one browser. A file appears whole or not at all.
 *
 * A document that is unchanged, in words, looks, facts and browser, is taken from the cache.
 */
export async function printPdfs(
  jobs: readonly PrintJob[],
  options: PrintOptions,
): Promise<PrintResult> {
  const cache = options.cache === undefined ? undefined : await openPdfCache(options.cache);
  const waiting = jobs.values();
  const failed: { file: string; reason: string }[] = [];
  let [printed, reused, done] = [0, 0, 0];
  const work = async (): Promise<void> => {
    for (const job of waiting) {
      try {
        if (await printJob(job, options, cache)) reused += 1;
        else printed += 1;
      } catch (error) {
        failed.push({
          file: job.file,
          reason: error instanceof Error ? error.message : String(error),
        });
      }
      done += 1;
      options.onDone?.(done, jobs.length, job.file);
    }
  };
  await Promise.all(Array.from({ length: options.tabs ?? 4 }, work));
  await cache?.prune();
  return { printed, reused, failed };
}

/** A finished PDF; nothing is written. */
export async function printBytes(
  browser: Browser,
  { html, facts, attachments = [] }: Omit<PrintJob, 'file'>,
): Promise<Uint8Array> {
  return finishPdf(await printPage(browser, html), facts, attachments);
}

/** True when the document was reused. */
async function printJob(
  job: PrintJob,
  { browser, version }: PrintOptions,
  cache: PdfCache | undefined,
): Promise<boolean> {
  const name = digestOf(job, version);
  await mkdir(dirname(job.file), { recursive: true });
  const kept = await cache?.get(job.shelf, name);
  const pdf = kept ?? (await printBytes(browser, job));
  await writeWhole(job.file, pdf);
  if (!kept) await cache?.keep(job.shelf, name, pdf);
  return kept !== undefined;
}

function digestOf({ html, facts, attachments = [] }: PrintJob, version: string): string {
  const hash = createHash('sha256').update(JSON.stringify([FORMAT, version, html, facts]));
  for (const { name, bytes, mime, description } of attachments)
    hash.update(JSON.stringify([name, mime, description])).update(bytes);
  return hash.digest('hex');
}
