import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { fieldsView } from '../../src/documents/index.ts';
import {
  emitJsonSchemas,
  type FileFields,
  listFields,
  PART_COLUMNS,
  PART_EXTRA_COLUMNS,
} from '../../src/schema/index.ts';
import { renderPages } from '../../src/site/index.ts';
import { loaded } from '../demonstration/workspace.ts';
import { PROJECT } from '../whole/built.ts';
import { brokenIds, headingLevels, tableWidths } from './page-checks.ts';

type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** The paths of the fields that a JSON Schema has, read from its text. */
function pathsOf(node: unknown, at: string): readonly string[] {
  if (!isNode(node)) return [];
  const { properties, items, additionalProperties } = node;
  const own = isNode(properties) ? Object.entries(properties) : [];
  return [
    ...own.flatMap(([key, child]) => {
      const field = at === '' ? key : `${at}.${key}`;
      return [field, ...pathsOf(child, field)];
    }),
    ...pathsOf(items, `${at}[]`),
    ...listOf(items).map((_, index) => `${at}[${index + 1}]`),
    ...pathsOf(additionalProperties, `${at}.*`),
    ...[node['anyOf'], node['oneOf']].flatMap(listOf).flatMap((one) => pathsOf(one, at)),
  ];
}

const files = listFields();
const yard = loaded.catalogue?.yard.value ?? expect.fail('the demonstration has a yard');
const unique = (paths: readonly string[]): readonly string[] => [...new Set(paths)].toSorted();
const pathsIn = ({ fields }: FileFields) => unique(fields.map((field) => field.path));

describe('the list of fields', () => {
  it.each(files.filter(({ id }) => id !== 'parts'))(
    'has every field of the schema: $id',
    (file) => {
      const text = emitJsonSchemas().get(`${file.id}.schema.json`);
      const expected = pathsOf(JSON.parse(text ?? 'null'), '');
      expect(pathsIn(file)).toEqual(unique(expected));
      expect(expected.length).toBeGreaterThan(4);
    },
  );
  it('has every column of a price list', () => {
    const lists = files.filter(({ id }) => id === 'parts').map(pathsIn);
    expect(lists).toEqual([unique([...PART_COLUMNS, ...PART_EXTRA_COLUMNS])]);
  });
  it.each(files)('says of every field what it is and what to write: $id', ({ fields, ...file }) => {
    expect(file.description).toMatch(/\w.*\.$/);
    const silent = fields.filter(({ description }) => !/\w.*\.$/.test(description));
    expect(silent.map((field) => field.path)).toEqual([]);
    expect(fields.filter(({ kind }) => kind === '').map((field) => field.path)).toEqual([]);
  });
  it('says where each file of a workspace stands, and no other place', () => {
    const written = [
      'orders',
      'catalogue',
      'catalogue/hulls',
      'catalogue/options',
      'catalogue/parts',
    ]
      .flatMap((folder) =>
        readdirSync(path.join(PROJECT, folder)).map((name) => path.posix.join(folder, name)),
      )
      .filter((file) => /\.(?:yaml|csv)$/.test(file));
    const placeOf = (file: string): string =>
      files.find((one) => one.file === file || one.file === file.replace(/[^/]+(?=\.\w+$)/, '*'))
        ?.file ?? `no place for ${file}`;
    expect(unique(written.map(placeOf))).toEqual(unique(files.map(({ file }) => file)));
  });
  it('tells unit, limits, default and need apart', () => {
    const find = (id: string, at: string) =>
      files.find((file) => file.id === id)?.fields.filter((field) => field.path === at);
    expect(find('options', 'options[].mass')).toMatchObject([
      {
        kind: 'mass',
        note: 'A bare number is in kg.',
        allowed: 'at least 0 kg and at most 3000 kg',
      },
    ]);
    expect(find('order', 'hull')).toMatchObject([{ from: 'hulls', needed: true }]);
    expect(find('order', 'status')?.[0]?.allowed).toMatch(/^enquiry, .*, closed$/);
    expect(find('order', 'options[].quantity')).toMatchObject([{ usual: 1, needed: false }]);
    expect(find('materials', 'materials[].density')?.map(({ within }) => within)).toEqual([
      ['kind: core'],
      ['kind: catalyst'],
    ]);
    expect(find('order', 'discount.reason')).toMatchObject([{ within: [] }]);
    expect(find('order', 'discount.amount')).toMatchObject([{ within: ['or share'] }]);
  });
});

describe('the page of fields', () => {
  it('shows every field where a search finds it, says nothing twice, and is sound as a page', async () => {
    const view = fieldsView(yard);
    const [page] = await renderPages([{ url: 'yard/fields.html', template: 'fields', view }]);
    const html = page?.html ?? '';
    const shown = [...html.matchAll(/<th scope="row"><code>(.*?)<\/code>/g)].map(([, code = '']) =>
      code.replaceAll(/<[^>]+>/g, ''),
    );
    expect(shown).toEqual(files.flatMap(({ fields }) => fields.map((field) => field.path)));
    for (const { id } of files) expect(html).toContain(`<h2 id="${id}">`);
    expect(html).toContain('<tr id="order.record">');
    expect(html).toContain('<tr id="yard.packages">');
    const rows = view.files.flatMap((file) => file.rows);
    expect(rows.filter(({ description }) => /A bare number|From \d/.test(description))).toEqual([]);
    expect(rows.filter(({ need }) => need.includes('[object'))).toEqual([]);
    expect(brokenIds(html)).toEqual([]);
    expect(headingLevels(html).slice(0, 3)).toEqual([1, 2, 2]);
    expect(tableWidths(html).every((widths) => widths.length === 1)).toBe(true);
  });
});
