import { createHash } from 'node:crypto';
import { copyFile, mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Browser } from 'puppeteer';
import { finishPdf } from './finish-pdf.ts';
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
  const waiting = jobs.values();
  const failed: { file: string; reason: string }[] = [];
  let [printed, reused, done] = [0, 0, 0];
  const work = async (): Promise<void> => {
    for (const job of waiting) {
      try {
        if (await printJob(job, options)) reused += 1;
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
  return { printed, reused, failed };
}

/** True when the document was reused. */
async function printJob(
  job: PrintJob,
  { browser, version, cache }: PrintOptions,
): Promise<boolean> {
  const kept =
    cache === undefined ? undefined : join(cache, 'pdf', `${digestOf(job, version)}.pdf`);
  await mkdir(dirname(job.file), { recursive: true });
  if (kept !== undefined && (await reuse(kept, job.file))) return true;
  const pdf = await finishPdf(await printPage(browser, job.html), job.facts, job.attachments ?? []);
  await writeWhole(job.file, pdf);
  if (kept !== undefined) {
    await mkdir(dirname(kept), { recursive: true });
    await writeWhole(kept, pdf);
  }
  return false;
}

function digestOf({ html, facts, attachments = [] }: PrintJob, version: string): string {
  const hash = createHash('sha256').update(JSON.stringify([FORMAT, version, html, facts]));
  for (const { name, bytes, mime, description } of attachments)
    hash.update(JSON.stringify([name, mime, description])).update(bytes);
  return hash.digest('hex');
}

async function reuse(kept: string, file: string): Promise<boolean> {
  const own = temporaryName(file);
  try {
    await copyFile(kept, own);
    await rename(own, file);
    return true;
  } catch {
    await rm(own, { force: true });
    return false;
  }
}

async function writeWhole(file: string, bytes: Uint8Array): Promise<void> {
  const own = temporaryName(file);
  try {
    await writeFile(own, bytes);
    await rename(own, file);
  } catch (error) {
    await rm(own, { force: true });
    throw error;
  }
}

let names = 0;
function temporaryName(file: string): string {
  names += 1;
  return `${file}.${process.pid}-${names}.tmp`;
}
