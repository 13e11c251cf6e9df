import { readFileSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { PDFDocument } from '@cantoo/pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type PrintJob, printPdfs } from '../../src/print/index.ts';
import { lacksOf, readPdf } from './read-pdf.ts';
import { sharedBrowser } from './shared-browser.ts';

const fonts = dirname(
  createRequire(import.meta.url).resolve('@fontsource/source-sans-3/package.json'),
);
const woff = readFileSync(join(fonts, 'files', 'source-sans-3-latin-400-normal.woff2'));
const font = `@font-face{font-family:S;src:url(data:font/woff2;base64,${woff.toString('base64')})}`;

const shared = sharedBrowser();
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'orlop-print-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const SVG = Buffer.from(
  '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><path d="M0 0h9v9z"/></svg>',
).toString('base64');

const html = (
  body: string,
  title = 'A boat',
): string => `<!doctype html><html lang="en-AU"><head><title>${title}</title>
<style>${font} @page{size:A4;margin:20mm;@bottom-right{font-family:S;content:"page " counter(page) " of " counter(pages)}}
body{font-family:S} h1,h2,th{font-weight:400}</style></head><body>${body}</body></html>`;

const SOUND =
  html(`<h1>Quote</h1><img alt="Side view" src="data:image/svg+xml;base64,${SVG}"><h2>Price</h2>
<table><thead><tr><th scope="col">Item</th></tr></thead><tbody><tr><td>Mast</td></tr></tbody></table>
<p style="break-before:page">second sheet</p>`);

const job = (name: string, page: string): PrintJob => ({
  html: page,
  file: join(folder, name),
  shelf: 'yard',
  facts: {
    title: 'A boat',
    author: 'A yard',
    subject: 'A subject',
    keywords: ['one'],
    program: 'Orlop 1.2.3',
    date: new Date('2026-01-02T00:00:00Z'),
  },
});

const print = (...jobs: readonly PrintJob[]) => {
  const { browser, version } = shared.get();
  return printPdfs(jobs, { browser, version });
};

describe('a printed document', () => {
  it('is tagged, titled, bookmarked, with its words, pages, figures and fonts', async () => {
    expect(await print(job('sound.pdf', SOUND))).toEqual({ printed: 1, reused: 0, failed: [] });
    const pdf = await readPdf(join(folder, 'sound.pdf'));
    expect(lacksOf(pdf, ['SourceSans3'])).toEqual([]);
    expect(pdf).toMatchObject({ title: 'A boat', author: 'A yard', lang: 'en-AU', marked: true });
    expect(pdf.outline).toEqual(['Quote']);
    expect(pdf.structure).toContainEqual({ role: 'Figure', alt: 'Side view' });
    expect(pdf.pages[0]).toContain('page 1 of 2');
    expect(pdf.pages[1]).toContain('second sheet');
  });

  it('is told to lack what it lacks', async () => {
    await print(
      job('poor.pdf', html('<h1>A</h1><h1>B</h1><h3>C</h3><p style="font-family:serif">x</p>', '')),
    );
    const lacks = lacksOf(await readPdf(join(folder, 'poor.pdf')), ['SourceSans3']);
    expect(lacks).toContain('skips a level of heading');
    expect(lacks).toContain('has not exactly one heading of level 1');
    expect(lacks.some((lack) => lack.startsWith('has fonts of other families'))).toBe(true);
  });

  it('is the same file when it is printed again, whatever was printed between', async () => {
    await print(job('first.pdf', SOUND));
    await print(job('between.pdf', html('<h1>Other</h1>')));
    await print(job('again.pdf', SOUND), job('beside.pdf', html('<h1>Beside</h1>')));
    const [first, again] = await Promise.all(
      ['first.pdf', 'again.pdf'].map((name) => readFile(join(folder, name))),
    );
    expect(first?.equals(again ?? new Uint8Array())).toBe(true);
  });

  it('carries what is attached to it', async () => {
    const bytes = new TextEncoder().encode('{"a":1}');
    const attachments = [
      { name: 'figures.json', bytes, mime: 'application/json', description: 'Figures' },
    ];
    await print({ ...job('attached.pdf', SOUND), attachments });
    const read = await readPdf(join(folder, 'attached.pdf'));
    expect(read.attachments.get('figures.json')).toEqual(bytes);
    expect(lacksOf(read, ['SourceSans3'])).toEqual([]);
  });

  it.each([
    ['the network', '<img alt="x" src="http://127.0.0.1:9/x.png">'],
    ['a page of this machine', '<iframe title="x" src="file:///etc/hostname"></iframe>'],
    ['a picture of this machine', '<img alt="x" src="file:///etc/x.png">'],
    ['a picture that is none', '<img alt="x" src="data:image/png;base64,AAAA">'],
  ])(
    'is refused when it asks for %s, and leaves no file, while others are printed',
    async (_, body) => {
      const result = await print(
        job('refused.pdf', html(`<h1>A</h1>${body}`)),
        job('beside.pdf', SOUND),
      );
      expect(result).toMatchObject({ printed: 1, failed: [{ file: join(folder, 'refused.pdf') }] });
      expect((await readdir(folder)).filter((name) => name.startsWith('refused'))).toEqual([]);
    },
  );

  it('runs no script', async () => {
    await print(
      job(
        'script.pdf',
        html('<h1>A</h1><script>document.body.append("written by script")</script>'),
      ),
    );
    expect((await readPdf(join(folder, 'script.pdf'))).text).not.toContain('written by script');
  });

  it('is taken from the cache when nothing in it changed, and printed when a word did', async () => {
    const { browser, version } = shared.get();
    const options = { browser, version, cache: join(folder, 'cache') };
    const changed = SOUND.replace('second sheet', 'other sheet');
    expect(await printPdfs([job('one.pdf', SOUND)], options)).toMatchObject({
      printed: 1,
      reused: 0,
    });
    expect(await printPdfs([job('two.pdf', SOUND)], options)).toMatchObject({
      printed: 0,
      reused: 1,
    });
    expect(await printPdfs([job('one.pdf', changed)], options)).toMatchObject({
      printed: 1,
      reused: 0,
    });
    expect((await readPdf(join(folder, 'one.pdf'))).text).toContain('other sheet');
  });

  it('says which version of the program made it', async () => {
    await print(job('made.pdf', SOUND));
    const pdf = await PDFDocument.load(await readFile(join(folder, 'made.pdf')), {
      updateMetadata: false,
    });
    expect([pdf.getProducer(), pdf.getCreator()]).toEqual(['Orlop 1.2.3', 'Orlop 1.2.3']);
  });
});
