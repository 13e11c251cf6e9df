import { rmSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadWorkspace } from '../../src/cli/load.ts';
import { buildSheetView, handoverView, quoteView } from '../../src/documents/index.ts';
import { customerFigures } from '../../src/figures/index.ts';
import { planOrderOf, practiceOf } from '../../src/plan/index.ts';
import type { IsoDate } from '../../src/units/index.ts';
import { renderPages } from '../../src/site/index.ts';
import { HULL, ORDER, workspaceOf } from '../read/samples.ts';
import { headingsIn, picturesOf, tablesOf } from './letters.ts';
import { withoutStyles } from './page-checks.ts';

/** A shop that sells one hull and nothing beside it, and lays nothing up. */
function bareBoat() {
  const folder = workspaceOf({
    'catalogue/options/seats.yaml': undefined,
    'catalogue/outboards.yaml': undefined,
    'catalogue/trailers.yaml': undefined,
    'catalogue/charges.yaml': undefined,
    'catalogue/hulls/tern-400.yaml': HULL.replace('stage: laminate', 'stage: fit-out'),
    'orders/t-1.yaml': ORDER.replace(/options:\n(?: {2}.*\n)+/, '').replace('fuel: 20 L\n', ''),
  });
  const { computed, findings } = loadWorkspace(folder);
  rmSync(folder, { recursive: true });
  const [entry] = computed;
  if (!entry?.figures) throw new Error(findings.map(({ received }) => received).join());
  return { ...entry, figures: entry.figures };
}

const bare = bareBoat();
const { figures } = bare;
const pages = new Map<string, string>();

beforeAll(async () => {
  const options = { fontCss: '' };
  const rendered = await renderPages([
    { url: 'a/quote.html', template: 'letter', view: quoteView(customerFigures(figures), options) },
    {
      url: 'a/handover.html',
      template: 'letter',
      view: handoverView(customerFigures(figures), options),
    },
    { url: 'a/build-sheet.html', template: 'build-sheet', view: buildSheetView(figures, options) },
  ]);
  for (const { url, html } of rendered) pages.set(url, withoutStyles(html));
});

describe('the papers of a bare boat', () => {
  it('have no table without rows and no hole', () => {
    expect(pages.size).toBe(3);
    for (const html of pages.values()) {
      expect(html).not.toMatch(/<tbody>\s*<\/tbody>|<ul[^>]*>\s*<\/ul>|<p[^>]*>\s*<\/p>/);
      expect(html).not.toMatch(/NaN|undefined|\[object/);
    }
  });
  it('place nothing where nothing is ordered', () => {
    const view = buildSheetView(figures, { fontCss: '' });
    expect(
      picturesOf(view, 'placing')
        .map(({ alt }) => alt)
        .join(),
    ).not.toContain('Where items go');
    expect(tablesOf(view, 'placing')).toEqual([]);
  });
  it('say nothing of fuses to whoever has no wire', () => {
    const headings = headingsIn(
      handoverView(customerFigures(figures), { fontCss: '' }),
      'cautions',
    );
    expect(headings).not.toContain('Wiring and fuses');
    expect(headings).toContain('Load and stability');
  });
});

describe('the plan of a bare boat', () => {
  it('waits for no cure where nothing is laid up', () => {
    const practice = practiceOf(figures.build.yard);
    const { stages } = planOrderOf(bare, practice, '2026-03-14' as IsoDate);
    expect(stages.find(({ id }) => id === 'cure')?.hours).toBe(0);
  });
});
