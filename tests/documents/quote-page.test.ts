import { beforeAll, describe, expect, it } from 'vitest';
import { quoteView } from '../../src/documents/index.ts';
import { customerFigures } from '../../src/figures/index.ts';
import { renderPages } from '../../src/site/index.ts';
import { inventedFigures, SECRETS } from './invented-build.ts';

let html = '';
beforeAll(async () => {
  const view = quoteView(customerFigures(inventedFigures()), { fontCss: '' });
  const [page] = await renderPages([
    { url: 'customer/2026-001/quote.html', template: 'letter', view },
  ]);
  html = (page?.html ?? '').replaceAll(/<style>[^]*?<\/style>/g, '');
});

describe('the page of a quote', () => {
  it('has one first heading and skips no level below it', () => {
    const levels = [...html.matchAll(/<h([1-6])/g)].map(([, level]) => Number(level));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, index) =>
      expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1),
    );
  });

  it('gives every heading of a table its scope and every table rows of one width', () => {
    expect(html.match(/<th(?![^>]*scope=)[ >]/g)).toBeNull();
    for (const [table] of html.matchAll(/<table[^]*?<\/table>/g)) {
      const widths = [...table.matchAll(/<tr[^]*?<\/tr>/g)].map(([row]) =>
        [...row.matchAll(/<t[hd]([^>]*)>/g)]
          .map(([, attributes]) => Number(/colspan="(\d)"/.exec(attributes ?? '')?.[1] ?? 1))
          .reduce((all, one) => all + one, 0),
      );
      expect(new Set(widths).size).toBe(1);
    }
  });

  it('prints the drive-away price, the tax in it and the way to the PDF', () => {
    expect(html).toContain('<p class="amount">$20,598.02</p>');
    expect(html).toContain('GST of $1,848.59');
    expect(html).toContain('href="quote-2026-001.pdf"');
  });

  it('has no byte of what is for the yard only', () => {
    expect(SECRETS.filter((secret) => html.includes(secret))).toEqual([]);
  });
});
