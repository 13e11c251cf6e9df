import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { formatMoney } from '../../src/money/index.ts';
import { lacksOf, type PdfContents, readPdf } from '../print/read-pdf.ts';
import { sharedBrowser } from '../print/shared-browser.ts';
import { builtOnce, filesUnder, PROJECT } from './built.ts';
import { loaded } from '../demonstration/workspace.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const FAMILIES = ['SourceSans3', 'SourceSerif4'];
/** The yard's pages across all orders, and their data. */
const ACROSS = ['yard/methods.html', 'yard/plan.html', 'yard/purchases.html', 'yard/purchases.csv'];
const NOT_PRINTED = /\bNaN\b|\bInfinity\b|\bundefined\b|\bnull\b|\[object Object\]/;

const { orders, issued, overview } = loaded;
const demonstration = builtOnce(() => PROJECT);
const browser = sharedBrowser();
const numbers = orders.map(({ order }) => order.value.number);

/** An enquiry with an open finding of safety: its quote is a page that is not to be sent, without a PDF. */
const UNSENT = 'DC-2608';
const sent = numbers.filter((number) => number !== UNSENT);

/** The PDFs of an order by what they are, each beside its page. */
function pdfsOf(number: string): Readonly<Record<string, string>> {
  const { order, variations } = orders.find((one) => one.order.value.number === number) ?? {};
  const { status = 'closed', acceptance } = order?.value ?? {};
  const revision = acceptance?.revision ?? issued.get(number)?.at(-1)?.revision;
  const suffix = revision === undefined ? '' : `-r${revision}`;
  const half = ['ready', 'handed-over'].includes(status) ? 'customer' : 'yard';
  return {
    quote: `customer/${number}/quote-${number}${suffix}.pdf`,
    sheet: `yard/${number}/build-sheet-${number}.pdf`,
    ...(!['enquiry', 'closed'].includes(status) && {
      handover: `${half}/${number}/handover-${number}.pdf`,
    }),
    ...(variations?.length && { variations: `customer/${number}/variations-${number}.pdf` }),
  };
}

/** The mass of the boat as its quote was sealed, in the first form of its file or the second. */
function sealedMass({ number, revision }: { readonly number: string; readonly revision: number }) {
  const file = path.join(PROJECT, `orders/issued/${number}-r${revision}.json`);
  const { figures } = JSON.parse(readFileSync(file, 'utf8')).content;
  return Number(figures.mass?.ready.mass ?? figures['mass.ready'].value);
}

const pageOf = (number: string, pdf: string): string =>
  pdf.replace(new RegExp(`-${number}(?:-r\\d+)?[.]pdf$`), '.html');
const alreadyRead = new Map<string, PdfContents>();

async function read(file: string): Promise<PdfContents> {
  const pdf = alreadyRead.get(file) ?? (await readPdf(path.join(demonstration.get().out, file)));
  alreadyRead.set(file, pdf);
  return pdf;
}

describe('the demonstration workspace', () => {
  it('builds without an error, every document of every order and nothing else', () => {
    const { code, out, said } = demonstration.get();
    expect(said).toContain('0 errors');
    expect(code).toBe(0);
    const expected = numbers.flatMap((number) => {
      const pdfs = Object.values(pdfsOf(number));
      return [
        ...pdfs.filter((file) => !file.startsWith(`customer/${UNSENT}`)),
        ...pdfs.map((file) => pageOf(number, file)),
        `yard/${number}/figures.json`,
        `yard/${number}/order.html`,
      ];
    });
    expect(filesUnder(out)).toEqual(
      [
        ...expected,
        'yard/index.html',
        'yard/checks.html',
        'yard/fields.html',
        ...ACROSS,
      ].toSorted(),
    );
  });

  it('prints no word of the program in the place of a figure', () => {
    const { out } = demonstration.get();
    for (const file of filesUnder(out).filter((name) => /\.(?:html|json)$/.test(name))) {
      const text = readFileSync(path.join(out, file), 'utf8').replaceAll(/data:[^"')]+/g, '');
      expect(NOT_PRINTED.exec(text)?.[0], file).toBeUndefined();
    }
  });

  it('makes no PDF of a quote with an open finding of safety, and bands its page', () => {
    const page = readFileSync(
      path.join(demonstration.get().out, `customer/${UNSENT}/quote.html`),
      'utf8',
    );
    expect(page).toContain('<strong>Draft: not to be sent.</strong>');
    expect(page).not.toContain('Open as PDF');
    expect(page.indexOf('What stands in the way')).toBeLessThan(page.indexOf('Drive-away price'));
  });

  it.each(sent)(
    '%s: its PDFs are tagged, titled, with bookmarks and their own fonts',
    async (number) => {
      for (const file of Object.values(pdfsOf(number))) {
        const pdf = await read(file);
        expect(lacksOf(pdf, FAMILIES), file).toEqual([]);
        expect(pdf.title, file).toContain(number);
        expect([pdf.lang, pdf.author], file).toEqual(['en-AU', 'Dunlin Creek Boatworks']);
        expect(pdf.text, file).not.toMatch(NOT_PRINTED);
        pdf.pages.forEach((text, index) => {
          expect(text, `${file}, page ${index + 1}`).toContain(number);
          expect(text.replaceAll(/\s+/g, ' '), file).toContain(
            `Page ${index + 1} of ${pdf.pages.length}`,
          );
        });
      }
    },
  );

  it.each(sent)('%s: the same price and mass stand wherever they stand', async (number) => {
    const state = overview.orders.find(({ entry }) => entry.order.value.number === number);
    const { figures, quoted } = state?.entry ?? {};
    if (!state || !figures || !quoted) throw new Error(`${number} has no figures`);
    const { locale } = figures.build.yard;
    const { price } = state.issued ?? quoted;
    const massText = (mass: number): string => `${Math.round(mass).toLocaleString(locale)} kg`;
    const files = pdfsOf(number);
    const [quote, sheet, handover] = await Promise.all(
      [files['quote'], files['sheet'], files['handover']].map(async (file) => file && read(file)),
    );
    if (!quote || !sheet) throw new Error(`${number} lacks a document`);
    expect(quote.pages[0], 'page one').toContain(formatMoney(price.driveAway, locale));
    expect(quote.text).toContain(
      massText(state.issued ? sealedMass(state.issued) : quoted.mass.ready.mass),
    );
    for (const pdf of [sheet, ...(handover ? [handover] : [])])
      expect(pdf.text).toContain(massText(figures.mass.ready.mass));
    const index = readFileSync(path.join(demonstration.get().out, 'yard/index.html'), 'utf8');
    expect(index).toContain(formatMoney(state.account?.total ?? price.driveAway, locale));
    expect(sheet.text).not.toContain('$');
  });
});

interface Opened {
  readonly complaints: readonly string[];
  readonly requests: readonly string[];
  readonly violations: readonly string[];
}

/** Opens a page as a person would; with `audit`, asks axe-core what is wrong with it. */
async function open(file: string, audit: boolean): Promise<Opened> {
  const page = await browser.get().browser.newPage();
  const url = pathToFileURL(path.join(demonstration.get().out, file)).href;
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warn'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('request', (request) => {
    if (request.url() !== url && !request.url().startsWith('data:')) requests.push(request.url());
  });
  await page.goto(url);
  const violations: string[] = [];
  if (audit) {
    await page.evaluate(AXE);
    const found: unknown = await page.evaluate(
      "axe.run({ resultTypes: ['violations'] }).then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html))",
    );
    if (Array.isArray(found)) violations.push(...found.map(String));
  }
  await page.close();
  return { complaints, requests, violations };
}

describe('every page in a real browser', () => {
  // One order of each kind of document: an enquiry with previews, and a boat handed over with its record.
  const audited = new Set(
    ['enquiry', 'handed-over'].map(
      (status) => orders.find(({ order }) => order.value.status === status)?.order.value.number,
    ),
  );

  it('asks for nothing and complains of nothing; axe-core finds no violation', async () => {
    const { out } = demonstration.get();
    for (const file of filesUnder(out).filter((name) => name.endsWith('.html'))) {
      const [, number = ''] = /(?:yard|customer)\/([^/]+)\//.exec(file) ?? [];
      const opened = await open(file, number === '' || audited.has(number));
      expect(opened, file).toEqual({ complaints: [], requests: [], violations: [] });
    }
  }, 120_000);
});
