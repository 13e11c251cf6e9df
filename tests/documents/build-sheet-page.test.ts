import { beforeAll, describe, expect, it } from 'vitest';
import { buildSheetView, handoverView } from '../../src/documents/index.ts';
import { customerFigures } from '../../src/figures/index.ts';
import { finding } from '../../src/findings/index.ts';
import { renderPages } from '../../src/site/index.ts';
import { fittedFigures } from './fitted-build.ts';
import { SECRETS } from './invented-build.ts';
import { brokenIds, headingLevels, tableWidths, withoutStyles } from './page-checks.ts';

const pages = new Map<string, string>();
const page = (name: string): string => pages.get(name) ?? '';

beforeAll(async () => {
  const place = { file: 'orders/2026-001.yaml' };
  const figures = fittedFigures({
    items: { 'House battery': { serial: true, placed: false } },
    order: { record: { serials: [{ item: 'Sounder', serial: 'S-1' }] } },
    findings: [finding('MASS_OUT_OF_GATE', place, { received: '80 kg', expected: '70 kg' })],
    yard: { handoverChecks: ['Bungs in'], care: ['Rinse her'] },
  });
  const rendered = await renderPages([
    {
      url: 'yard/2026-001/build-sheet.html',
      template: 'build-sheet',
      view: buildSheetView(figures, { fontCss: '' }),
    },
    {
      url: 'customer/2026-001/handover.html',
      template: 'letter',
      view: handoverView(customerFigures(figures), { fontCss: '' }),
    },
  ]);
  for (const { url, html } of rendered) {
    pages.set(/[\w-]+(?=\.html)/.exec(url)?.[0] ?? url, html);
  }
});

describe.each(['build-sheet', 'handover'])('the page of a %s', (name) => {
  it('has one first heading and skips no level below it', () => {
    const levels = headingLevels(withoutStyles(page(name)));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, index) =>
      expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1),
    );
  });

  it('has tables whose rows are of one width and whose headings have a scope', () => {
    const html = withoutStyles(page(name));
    const widths = tableWidths(html);
    expect(widths.length).toBeGreaterThan(3);
    expect(widths.filter((different) => different.length !== 1)).toEqual([]);
    expect(html.match(/<th(?![^>]*scope=)[ >]/g)).toBeNull();
  });

  it('names its sections by headings that are there, each once', () => {
    expect(brokenIds(page(name))).toEqual([]);
  });

  it('prints the order’s number at the foot of every sheet, and of the later ones at the head', () => {
    expect(page(name)).toMatch(/@top-right \{ content: "[^"]*2026-001/);
    expect(page(name)).toMatch(/@bottom-left \{ content: "[^"]*2026-001/);
  });
});

describe('the page of a build sheet alone', () => {
  it('has the number huge, boxes to tick and fields to write in', () => {
    const html = withoutStyles(page('build-sheet'));
    expect(html).toContain('<span class="order-number">2026-001</span>');
    expect(html.match(/class="box"/g)?.length).toBeGreaterThan(10);
    expect(html).toContain('signed off by');
  });

  it('shows no money', () => {
    expect(withoutStyles(page('build-sheet'))).not.toMatch(/[$€£]\s?\d|AUD/);
  });

  it('has no ink lighter than #444 and no rule thinner than half a point, for the photocopier', () => {
    const sheet = /\/\* The shop floor’s sheet[^]*?<\/style>/.exec(
      page('build-sheet').replaceAll("floor's", 'floor’s'),
    )?.[0];
    const colours = [...(sheet ?? '').matchAll(/#([0-9a-f])[0-9a-f]{2}\b/g)].map(([, red]) => red);
    expect(colours.length).toBeGreaterThan(5);
    expect(colours.filter((red) => Number.parseInt(red ?? 'f', 16) > 4)).toEqual([]);
    const rules = [...(sheet ?? '').matchAll(/border[\w-]*:\s*([\d.]+)mm/g)].map(([, mm]) => mm);
    expect(rules.length).toBeGreaterThan(5);
    // Half a point is 0.1764 mm.
    expect(rules.filter((mm) => Number(mm) < 0.1764)).toEqual([]);
  });
});

describe('the page of a handover pack alone', () => {
  it('has no byte of what is for the yard only', () => {
    expect(SECRETS.filter((secret) => page('handover').includes(secret))).toEqual([]);
  });

  it('leaves blanks where nothing is recorded and prints what is', () => {
    const html = withoutStyles(page('handover'));
    expect(html.match(/class="line"/g)?.length).toBeGreaterThan(5);
    expect(html).toContain('S-1');
    expect(html).toContain('Preview: filled in at handover');
  });
});
