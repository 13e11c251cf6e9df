import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type Figures, figuresData, toData } from '../figures/index.ts';
import { hasErrors } from '../findings/index.ts';
import { accountFacts } from '../issued/index.ts';
import { sealedBytes, type SealedKind } from '../read/index.ts';
import { writeAtomically } from '../site/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { allFindings, noSuchOrder, loadWorkspace, type LoadedWorkspace } from './load.ts';
import { renderSite, type SealedDocument } from './pages.ts';
import { printDocuments } from './print-documents.ts';
import { refuse } from './refuse.ts';
import { reportFindings } from './report.ts';

/** Makes every document: pages, PDFs and figures. What is wrong with one order stops only that order's. */
export async function build({
  workspace,
  out,
  only,
  'no-pdf': noPdf,
}: CommandOptions<'build'>): Promise<number> {
  const pdf = !noPdf;
  const loaded = loadWorkspace(workspace);
  const unknown = noSuchOrder(loaded, only);
  if (unknown !== undefined) return refuse('build', unknown);
  const findings = allFindings(loaded, only);
  reportFindings(findings, loaded);
  const made = new Set<string>();
  const write = async (url: string, content: string | Uint8Array): Promise<void> => {
    await writeAtomically(join(out, url), content);
    made.add(url);
  };
  const site = await renderSite(loaded, { pdf, ...(only !== undefined && { only }) });
  for (const { url, html } of site.pages) await write(url, html);
  for (const { url, text } of site.data) await write(url, text);
  for (const figures of site.figures)
    await write(`yard/${figures.build.order.number}/figures.json`, figuresText(figures, loaded));
  let copied = true;
  for (const document of site.sealed)
    copied = (await copySealed(workspace, document, write)) && copied;
  await withdraw(out, made, only, new Set(site.documents.map((document) => document.pdf)));
  if (!loaded.catalogue) return EXIT.findings;
  const orders = site.figures.length;
  process.stdout.write(
    `${site.pages.length} pages of ${orders} ${orders === 1 ? 'order' : 'orders'} in ${out}\n`,
  );
  const printed = pdf ? await printDocuments(site.documents, out) : [];
  for (const document of printed ?? []) made.add(document.pdf);
  await withdraw(out, made, only);
  const all = copied && (!pdf || printed?.length === site.documents.length);
  return all && !hasErrors(findings) ? EXIT.fine : EXIT.findings;
}

/** The text of an order's figures.json, with what was agreed. */
export function figuresText(figures: Figures, { overview }: LoadedWorkspace): string {
  const account = overview.orders.find(({ entry }) => entry.figures === figures)?.account;
  const data = {
    ...figuresData(figures),
    ...(account && toData(accountFacts(account), figures.build.yard)),
  };
  return `${JSON.stringify(data, undefined, 2)}\n`;
}

/** Copies a quote as it was sent; false for one that was changed since it was read a moment ago. */
async function copySealed(
  workspace: string,
  { line, url, pdf }: SealedDocument,
  write: (url: string, bytes: Uint8Array) => Promise<void>,
): Promise<boolean> {
  const files: readonly (readonly [string, SealedKind])[] = [
    [url, 'html'],
    [pdf, 'pdf'],
  ];
  for (const [to, kind] of files) {
    const bytes = sealedBytes(workspace, line, kind);
    if (typeof bytes === 'string') {
      process.stderr.write(`${to} is not made: ${bytes}\n`);
      return false;
    }
    await write(to, bytes);
  }
  return true;
}

/** The names of what the program makes for an order. */
const OWN =
  /^(?:quote|handover|variations|build-sheet|order|figures)(?:-[A-Za-z0-9-]+)?\.(?:html|pdf|json)$/;

/**
 * Takes out what an earlier build made of an order and this one did not: a stale quote is worse than none.
 *
 * @param only - the order that was made; left out: all, and those that are no more are taken out too
 * @param coming - what is still being made, and stays until that is done
 */
async function withdraw(
  out: string,
  made: ReadonlySet<string>,
  only: string | undefined,
  coming: ReadonlySet<string> = new Set(),
): Promise<void> {
  for (const half of ['yard', 'customer']) {
    const folders = await readdir(join(out, half), { withFileTypes: true }).catch(() => []);
    for (const folder of folders) {
      if (!folder.isDirectory() || (only !== undefined && folder.name !== only)) continue;
      const files = await readdir(join(out, half, folder.name));
      const stale = files.filter((name) => {
        const url = `${half}/${folder.name}/${name}`;
        return OWN.test(name) && !made.has(url) && !coming.has(url);
      });
      for (const name of stale) await rm(join(out, half, folder.name, name), { force: true });
    }
  }
}
