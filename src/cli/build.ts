import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type Figures, figuresData } from '../figures/index.ts';
import { hasErrors } from '../findings/index.ts';
import { cacheFolder, openBrowser, type PrintJob, printPdfs } from '../print/index.ts';
import { writeAtomically } from '../site/index.ts';
import type { CommandOptions } from './command-line.ts';
import { EXIT } from './exit.ts';
import { allFindings, knowsOrder, loadWorkspace, type LoadedWorkspace, numbersOf } from './load.ts';
import { type RenderedDocument, renderSite } from './pages.ts';
import { startProgress } from './progress.ts';
import { refuse } from './refuse.ts';
import { reportFindings } from './report.ts';

/** Makes every document: pages, PDFs and figures. What is wrong with one order stops only that order's. */
export async function build({ workspace, out, only, pdf }: CommandOptions): Promise<number> {
  const loaded = loadWorkspace(workspace);
  if (only !== undefined && !knowsOrder(loaded, only))
    return refuse('build', `there is no order ${only} in ${workspace}`);
  const findings = allFindings(loaded, only);
  reportFindings(findings, loaded.sources);
  await removeMisleading(loaded, out);
  if (!loaded.catalogue) return EXIT.findings;
  const site = await renderSite(loaded, {
    pdf,
    ...(only !== undefined && { only }),
  });
  for (const { url, html } of site.pages) await writeAtomically(join(out, url), html);
  for (const { url, text } of site.data) await writeAtomically(join(out, url), text);
  for (const figures of site.figures) await writeFigures(out, figures);
  const orders = site.figures.length;
  process.stdout.write(
    `${site.pages.length} pages of ${orders} ${orders === 1 ? 'order' : 'orders'} in ${out}\n`,
  );
  const printed = pdf ? await printDocuments(site.documents, out) : true;
  return printed && !hasErrors(findings) ? EXIT.fine : EXIT.findings;
}

async function writeFigures(out: string, figures: Figures): Promise<void> {
  const file = join(out, 'yard', figures.build.order.number, 'figures.json');
  await writeAtomically(file, `${JSON.stringify(figuresData(figures), undefined, 2)}\n`);
}

/** An order with errors has no documents but the quote that was sent: those of an earlier build would mislead, so they go. */
async function removeMisleading(
  { orders, brokenOrders, issued }: LoadedWorkspace,
  out: string,
): Promise<void> {
  const numbers = [
    ...orders.filter(({ figures }) => !figures).map(({ order }) => order.value.number),
    ...numbersOf(brokenOrders),
  ];
  for (const number of numbers) {
    const yard = ['order.html', 'build-sheet.html', 'build-sheet.pdf', 'figures.json'].map((name) =>
      join(out, 'yard', number, name),
    );
    const quotes = issued.has(number) ? [] : ['quote.html', 'quote.pdf'];
    const customer = [
      ...quotes,
      'handover.html',
      'handover.pdf',
      'variations.html',
      'variations.pdf',
    ].map((name) => join(out, 'customer', number, name));
    await Promise.all([...yard, ...customer].map((file) => rm(file, { force: true })));
  }
}

/** Prints the documents; false when some could not be. */
async function printDocuments(
  documents: readonly RenderedDocument[],
  out: string,
): Promise<boolean> {
  const opened = await openBrowser();
  if (!opened.browser) {
    process.stderr.write(`The pages are made, the PDFs are not. ${opened.reason}\n`);
    return false;
  }
  for (const warning of opened.warnings) process.stderr.write(`Passed over: ${warning}\n`);
  const progress = startProgress('PDF', process.stderr);
  try {
    const jobs = documents.map((document) => printJob(document, out));
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
    return failed.length === 0;
  } finally {
    progress.end();
    await opened.browser.close();
  }
}

function printJob({ url, html, head, date }: RenderedDocument, out: string): PrintJob {
  return {
    html,
    file: join(out, url.replace(/\.html$/, '.pdf')),
    facts: {
      title: head.title,
      author: head.author,
      subject: head.subject,
      keywords: [head.reference],
      date: new Date(`${date}T00:00:00Z`),
    },
  };
}
