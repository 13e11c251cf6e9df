import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { methodsView } from '../../src/documents/index.ts';
import { allFacts, METHODS, METHODS_BY_SUBJECT } from '../../src/figures/index.ts';
import { renderPages } from '../../src/site/index.ts';
import { catalogue, figured, ROOT } from '../demonstration/workspace.ts';
import { rowsOf, wordsOf } from './letters.ts';
import { brokenIds, headingLevels, tableWidths, withoutStyles } from './page-checks.ts';

const facts = figured.flatMap((figures) => allFacts(figures));
const view = methodsView(catalogue.yard.value);
const ids = Object.keys(METHODS_BY_SUBJECT);

describe('the page of methods', () => {
  let html = '';
  beforeAll(async () => {
    const page = {
      url: 'yard/methods.html',
      template: 'page',
      view,
    } as const;
    html = withoutStyles((await renderPages([page])).map((one) => one.html).join(''));
  });

  it('has every method by which a figure of an order was found, each once', () => {
    const rows = view.parts.flatMap(({ id }) => rowsOf(view, id));
    const used = [...new Set(facts.map(({ method }) => method))];
    expect(used.length).toBeGreaterThan(30);
    for (const id of used) {
      const { title, how, source } = METHODS[id];
      const own = rows.filter(({ cells }) => cells[0] === title);
      expect(own, id).toHaveLength(1);
      expect(own[0]?.cells).toEqual(expect.arrayContaining([how, source]));
    }
    expect(rows).toHaveLength(Object.keys(METHODS).length);
  });

  it('says of every subject what to know, and leads to it', () => {
    expect(view.parts.map(({ id }) => id)).toEqual(ids);
    for (const id of ids) {
      expect(wordsOf(view, id).length, id).toBeGreaterThan(0);
      expect(html).toContain(`<a href="#${id}">`);
    }
    const said = ids.flatMap((id) => wordsOf(view, id));
    expect(new Set(said).size).toBe(said.length);
  });

  it('can be read by whoever hears it, and calls no boat "she"', () => {
    expect(html).not.toMatch(/\b(?:she|her|hers)\b/i);
    expect(html).not.toMatch(/NaN|undefined|\[object|<tbody>\s*<\/tbody>/);
    expect(brokenIds(html)).toEqual([]);
    expect(new Set(headingLevels(html))).toEqual(new Set([1, 2]));
    for (const widths of tableWidths(html)) expect(widths).toHaveLength(1);
  });
});

it('the methods of a customer’s figures name nothing that only the shop may see', () => {
  const shown = facts.filter(({ for: who }) => who === 'customer');
  for (const { method } of shown) {
    const { title, how } = METHODS[method];
    expect(`${title} ${how}`, method).not.toMatch(/margin|overhead|wage|labour/i);
  }
});

it('README has a row for every subject, in the same words and order', () => {
  const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
  const [, table = ''] = /\| what is computed .*\n\|[ :|-]+\n((?:\|.*\n)+)/.exec(readme) ?? [];
  const rows = table.trimEnd().split('\n');
  const cells = rows.map((row) => row.split('|').map((cell) => cell.trim()));
  expect(cells.map(([, subject]) => subject)).toEqual(view.parts.map(({ heading }) => heading));
  for (const row of cells) expect(row.slice(1, -1).filter((cell) => cell !== '')).toHaveLength(4);
});
