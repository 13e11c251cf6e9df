import { rmSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { readWorkspace } from '../../src/read/index.ts';
import { type Catalogue, emitJsonSchemas, orderSchema, STAGES } from '../../src/schema/index.ts';
import {
  CHARGES,
  HULL,
  OPTIONS,
  ORDER,
  OUTBOARDS,
  TRAILERS,
  workspaceOf,
  YARD,
} from '../read/samples.ts';

function smallCatalogue(): Catalogue {
  const folder = workspaceOf();
  const { catalogue } = readWorkspace(folder);
  rmSync(folder, { recursive: true });
  return catalogue ?? expect.fail('the sample catalogue is sound');
}
const catalogue = smallCatalogue();

type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Every node of a JSON value with the keys that lead to it. */
function* nodesOf(value: unknown, path = ''): Generator<readonly [string, Node]> {
  if (isNode(value)) yield [path, value];
  if (typeof value !== 'object' || value === null) return;
  for (const [key, child] of Object.entries(value)) yield* nodesOf(child, `${path}/${key}`);
}

const parsed = (from?: Catalogue): ReadonlyMap<string, Node> =>
  new Map([...emitJsonSchemas(from)].map(([name, text]) => [name, JSON.parse(text) as Node]));
const NAMES = [
  'order',
  'yard',
  'hull',
  'options',
  'outboards',
  'trailers',
  'charges',
  'materials',
  'stock',
].map((name) => `${name}.schema.json`);

/** What a reference stands for; a failure when nothing is there. */
function referred(schema: Node | undefined, ref: unknown): Node {
  const place = String(ref).replace(/^#/, '');
  const found = [...nodesOf(schema)].find(([path]) => path === place)?.[1];
  if (!found) throw new Error(`${String(ref)} is not there`);
  return found;
}

/** The facts of a place, by the keys that lead there, with those that it refers to. */
function factsAt(schema: Node | undefined, place: string): Node | undefined {
  const found = [...nodesOf(schema)].find(([path]) => path === place)?.[1];
  const all: unknown = found?.['allOf'];
  if (!Array.isArray(all)) return found;
  const others = all.map((one: unknown) => (isNode(one) ? referred(schema, one['$ref']) : {}));
  return Object.assign({ ...found }, ...others);
}

/** The values that an editor offers at a place. */
const offered = (schema: Node | undefined, place: string): unknown =>
  factsAt(schema, place)?.['enum'];

describe('the JSON Schemas for an editor', () => {
  it('are one for each kind of file', () => {
    expect([...emitJsonSchemas().keys()]).toEqual(NAMES);
  });
  it.each(NAMES)('are draft-07 with the block itself at the top: %s', (name) => {
    const schema = parsed().get(name);
    expect(schema).toMatchObject({
      $schema: 'http://json-schema.org/draft-07/schema#',
      type: 'object',
      additionalProperties: false,
    });
    for (const key of ['title', 'description']) expect(schema?.[key]).toMatch(/./);
    expect(schema).not.toHaveProperty('$ref');
  });
  it.each(NAMES)('say what every field is: %s', (name) => {
    const silent: string[] = [];
    let count = 0;
    for (const [path, node] of nodesOf(parsed().get(name))) {
      if (!isNode(node['properties'])) continue;
      for (const [key, field] of Object.entries(node['properties'])) {
        count += 1;
        const said = isNode(field) ? field['description'] : undefined;
        if (typeof said !== 'string' || !/\w.*\.$/.test(said)) silent.push(`${path}/${key}`);
      }
    }
    expect(silent).toEqual([]);
    expect(count).toBeGreaterThan(4);
  });
  it('let a field be left out that has a value of its own then', () => {
    expect(parsed().get('order.schema.json')?.['required']).toEqual([
      'number',
      'status',
      'dates',
      'customer',
      'boat',
      'hull',
    ]);
  });
  it('take a number as well as a text for a quantity, and a block or a name for an option', () => {
    const order = parsed().get('order.schema.json');
    const [, fuel] = [...nodesOf(order)].find(([path]) => path === '/properties/fuel') ?? [];
    expect(fuel?.['type']).toEqual(['string', 'number']);
    expect(offered(order, '/properties/status')).toEqual(orderSchema.shape.status.options);
    expect(
      offered(order, '/properties/extras/items/properties/hours/items/properties/stage'),
    ).toEqual([...STAGES]);
  });
  it('give as default only what may be typed', () => {
    for (const [name, schema] of parsed()) {
      for (const [path, node] of nodesOf(schema)) {
        const value = node['default'];
        const isShare = isNode(value) && 'share' in value;
        const nested = isNode(value) ? Object.values(value).some(isNode) : false;
        expect(isShare || nested, `${name} ${path}`).toBe(false);
      }
    }
  });
  it('are the same text on every run, and end with a line end', () => {
    expect([...emitJsonSchemas()]).toEqual([...emitJsonSchemas()]);
    for (const text of emitJsonSchemas().values()) expect(text).toMatch(/^\{\n {2}"[^]*\n\}\n$/);
  });
  it('hold no mark of ours, with or without a catalogue', () => {
    for (const texts of [emitJsonSchemas(), emitJsonSchemas(catalogue)]) {
      for (const text of texts.values()) expect(text).not.toContain('x-names');
    }
  });
});

describe('a file against the JSON Schema that its first line names', () => {
  const schemas = parsed(catalogue);
  const accepts = (name: string, text: string): boolean => {
    const schema = schemas.get(`${name}.schema.json`) ?? expect.fail(name);
    return z.fromJSONSchema(schema).safeParse(parse(text)).success;
  };
  const samples = [
    ['order', ORDER, 'people: 3', 'peopel: 3'],
    ['yard', YARD, 'pricesInclude: true', 'pricesInclude: often'],
    ['hull', HULL, 'shaft: long', 'shaft: lengthy'],
    ['options', OPTIONS, 'name: Seat', 'name: [Seat]'],
    ['outboards', OUTBOARDS, 'steering: tiller', 'steering: rope'],
    ['trailers', TRAILERS, 'part: AC-3', 'part: AC-9'],
    ['charges', CHARGES, 'when: always', 'when: never'],
  ] as const;
  it.each(samples)(
    'is taken when it is sound, and not with a mistake: %s',
    (name, text, from, to) => {
      expect(accepts(name, text)).toBe(true);
      expect(text).toContain(from);
      expect(accepts(name, text.replace(from, to))).toBe(false);
    },
  );
});

describe('the JSON Schemas of a catalogue', () => {
  const order = parsed(catalogue).get('order.schema.json');

  it('offer its hulls, options, outboards, trailers and charges by id', () => {
    expect(offered(order, '/properties/hull')).toEqual(['tern-400']);
    expect(offered(order, '/properties/options/items/anyOf/0')).toEqual(['seat', 'rod-holder']);
    expect(offered(order, '/properties/options/items/anyOf/1/properties/option')).toEqual([
      'seat',
      'rod-holder',
    ]);
    expect(offered(order, '/properties/outboard/properties/model')).toEqual(['outboard-20']);
    expect(offered(order, '/properties/trailer')).toEqual(['trailer-750']);
    expect(offered(order, '/properties/leaveOutCharges/items/properties/charge')).toEqual([
      'boat-registration',
    ]);
  });
  it('say what each name stands for', () => {
    expect(factsAt(order, '/properties/hull')?.['enumDescriptions']).toEqual(['Tern 400']);
  });
  it('say each list once, refer to nothing that is not there, and define nothing that is not used', () => {
    for (const [name, schema] of parsed(catalogue)) {
      const refs = [...nodesOf(schema)].flatMap(([, node]) =>
        typeof node['$ref'] === 'string' ? [node['$ref']] : [],
      );
      for (const ref of refs) expect(referred(schema, ref)['enum'], name).toBeInstanceOf(Array);
      const defined = isNode(schema['definitions']) ? Object.keys(schema['definitions']) : [];
      expect([...new Set(refs)].toSorted(), name).toEqual(
        defined.map((one) => `#/definitions/${one}`).toSorted(),
      );
      const lists = [...nodesOf(schema)].filter(([, node]) => 'enumDescriptions' in node);
      expect(lists, name).toHaveLength(defined.length);
    }
  });
  it('have nothing beside a reference, which a validator would pass over', () => {
    const nodes = [...parsed(catalogue).values()].flatMap((schema) => [...nodesOf(schema)]);
    const references = nodes.flatMap(([, node]) => ('$ref' in node ? [Object.keys(node)] : []));
    expect(references.length).toBeGreaterThan(20);
    expect(references.filter((keys) => keys.length > 1)).toEqual([]);
  });
  it('offer part codes and classes of margin and material', () => {
    const options = parsed(catalogue).get('options.schema.json');
    const at = '/properties/options/items/properties';
    expect(offered(options, `${at}/parts/items/properties/part`)).toEqual(['AC-1', 'AC-2', 'AC-3']);
    expect(offered(options, `${at}/class`)).toEqual(['hull', 'fit-out']);
    expect(offered(options, `${at}/requires/items/anyOf/0`)).toEqual(['seat', 'rod-holder']);
  });
  it('do not offer the name of an entry where it is given', () => {
    const options = parsed(catalogue).get('options.schema.json');
    expect(offered(options, '/properties/options/items/properties/id')).toBeUndefined();
  });
  it('offer nothing, rather than forbid everything, for a list that is empty', () => {
    const empty = parsed({ ...catalogue, trailers: new Map() }).get('order.schema.json');
    expect(offered(empty, '/properties/trailer')).toBeUndefined();
  });
});
