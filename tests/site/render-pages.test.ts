import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import type { YardPage } from '../../src/documents/index.ts';
import { type Page, renderPages } from '../../src/site/index.ts';

const HERE = process.cwd();
afterEach(() => process.chdir(HERE));

const page = (url: string, lead: string): Page & { readonly view: YardPage } => {
  const view = {
    document: { title: 'Checks <b>', lang: 'en-AU', subject: 'A test', author: 'The shop' },
    heading: 'Checks',
    lead,
    links: [],
    hasContents: false,
    parts: [],
  };
  return { url, template: 'page', view };
};

describe('rendering pages', () => {
  it('gives one page for each that is asked for, in their order, with text escaped', async () => {
    const pages = await renderPages([
      page('yard/index.html', 'second {{ 6 * 7 }}'),
      page('yard/a.html', '<i>first</i>'),
    ]);
    expect(pages.map(({ url }) => url)).toEqual(['yard/index.html', 'yard/a.html']);
    expect(pages[0]?.html).toContain('second {{ 6 * 7 }}');
    expect(pages[1]?.html).toContain('&lt;i&gt;first&lt;/i&gt;');
    expect(pages[1]?.html).toContain('<title>Checks &lt;b&gt;</title>');
  });

  it('makes pages that carry their styles and fonts and ask for nothing', async () => {
    const [made] = await renderPages([page('yard/a.html', 'x')]);
    const html = made?.html ?? '';
    expect(html).toContain('data:font/woff2;base64,');
    expect(html).toContain('--accent');
    expect(html).not.toMatch(/<(?:script|link)\b|@import|url\((?!data:)/);
  });

  it('works from any folder, twice in one process, and writes nothing', async () => {
    const elsewhere = await mkdtemp(join(tmpdir(), 'orlop-site-'));
    try {
      process.chdir(elsewhere);
      const once = await renderPages([page('yard/a.html', 'x')]);
      const twice = await renderPages([page('yard/a.html', 'x')]);
      expect(twice).toEqual(once);
      expect(await readdir(elsewhere)).toEqual([]);
    } finally {
      process.chdir(HERE);
      await rm(elsewhere, { recursive: true });
    }
  });

  it('names the page and the template when a view lacks what the template prints', async () => {
    const { lead: _, ...view } = page('yard/a.html', '').view;
    const lacking = [{ ...page('yard/a.html', ''), view }];
    await expect(renderPages(lacking)).rejects.toThrow(
      /yard\/a\.html with templates\/page\.njk: .*null or undefined/,
    );
  });

  it('asks Eleventy nothing when there is no page to make', async () => {
    expect(await renderPages([])).toEqual([]);
  });
});
