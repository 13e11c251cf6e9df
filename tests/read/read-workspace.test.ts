import { mkdirSync, rmSync, symlinkSync } from 'node:fs';
import path from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { describePlace } from '../../src/findings/index.ts';
import { readWorkspace, type Workspace } from '../../src/read/index.ts';
import {
  CHARGES,
  type Files,
  HULL,
  OPTIONS,
  ORDER,
  OUTBOARDS,
  PARTS,
  SOUND,
  TRAILERS,
  workspaceOf as makeWorkspace,
  YARD,
} from './samples.ts';

const made: string[] = [];

/** A workspace that is gone after the test. */
function workspaceOf(changes: Files = {}): string {
  const folder = makeWorkspace(changes);
  made.push(folder);
  return folder;
}

const spots = ({ findings, sources }: Workspace): readonly string[] =>
  findings.map(({ code, place }) => `${code} ${describePlace(place, sources.get(place.file))}`);

const readWith = (changes: Files): Workspace => readWorkspace(workspaceOf(changes));

afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true });
});

describe('a sound workspace', () => {
  it('is read whole, without a finding', () => {
    const { catalogue, orders, findings, brokenOrders, brokenIds, sources } = readWith({});
    expect(findings).toEqual([]);
    expect(orders.map(({ value }) => value.number)).toEqual(['T-1']);
    expect([...(catalogue?.hulls.keys() ?? [])]).toEqual(['tern-400']);
    expect([...(catalogue?.options.keys() ?? [])]).toEqual(['seat', 'rod-holder']);
    expect(catalogue?.options.get('seat')).toMatchObject({ group: 'Seats', groupOrder: 1 });
    expect([...(catalogue?.outboards.keys() ?? [])]).toEqual(['outboard-20']);
    expect([...(catalogue?.trailers.keys() ?? [])]).toEqual(['trailer-750']);
    expect([...(catalogue?.charges.keys() ?? [])]).toEqual(['boat-registration']);
    expect(catalogue?.parts.get('AC-2')?.supplier).toBe('acme-parts');
    expect([...brokenOrders, ...brokenIds]).toEqual([]);
    expect([...sources.keys()].toSorted()).toEqual(Object.keys(SOUND).toSorted());
  });
  it('knows the place of an entry within a list, by a name with forward slashes', () => {
    const { catalogue, sources } = readWith({});
    const place = catalogue?.options.get('rod-holder')?.place(['name']);
    expect(place && describePlace(place, sources.get(place.file))).toBe(
      'catalogue/options/seats.yaml:5:29',
    );
  });
  it('may name its files .yml, and is read in order of name', () => {
    const { orders, findings } = readWith({
      'catalogue/yard.yaml': undefined,
      'catalogue/yard.yml': YARD,
      'orders/b.yml': ORDER.replace('T-1', 'T-2'),
      'orders/a.YAML': ORDER.replace('T-1', 'T-3'),
      'orders/notes.txt': 'not an order',
      'orders/.#b.yml': 'an editor’s own file',
      'orders/old/c.yaml': 'not looked into',
    });
    expect(findings).toEqual([]);
    expect(orders.map(({ file }) => file)).toEqual([
      'orders/a.YAML',
      'orders/b.yml',
      'orders/t-1.yaml',
    ]);
  });
  it('gives only the orders that are asked for', () => {
    const folder = workspaceOf({
      'orders/t-2.yaml': ORDER.replace('T-1', 'T-2'),
      'orders/t-3.yaml': ORDER.replace('T-1', 'T-3').replace('enquiry', 'bad'),
    });
    const { orders, findings } = readWorkspace(folder, {
      orders: ({ number }) => number === 'T-2',
    });
    expect(orders.map(({ value }) => value.number)).toEqual(['T-2']);
    expect(findings).toEqual([]);
  });
});

describe('a workspace that lacks something', () => {
  it('names the yard file when it is missing', () => {
    const name = 'catalogue/yard.yaml';
    expect(spots(readWith({ [name]: undefined }))).toEqual([`FILE_MISSING ${name}`]);
  });
  it.each([
    'catalogue/options/seats.yaml',
    'catalogue/outboards.yaml',
    'catalogue/trailers.yaml',
    'catalogue/charges.yaml',
  ])('does without what a shop may not sell: %s', (name) => {
    const { catalogue, findings } = readWith({ [name]: undefined });
    expect(findings).toEqual([]);
    expect(catalogue?.hulls.size).toBe(1);
  });
  it.each([
    ['catalogue/hulls', 'catalogue/hulls/tern-400.yaml'],
    ['catalogue/parts', 'catalogue/parts/acme-parts.csv'],
    ['orders', 'orders/t-1.yaml'],
  ])('names the folder that is missing: %s', (folder, file) => {
    expect(spots(readWith({ [file]: undefined }))).toEqual([`FILE_MISSING ${folder}`]);
  });
  it('is one finding when there is no such folder at all', () => {
    const { findings, catalogue } = readWorkspace(path.join(workspaceOf(), 'nowhere'));
    expect(findings.map(({ code }) => code)).toEqual(['FILE_MISSING']);
    expect(catalogue).toBeUndefined();
  });
  it('has no catalogue without a yard, and still reads the orders', () => {
    const { catalogue, orders } = readWith({ 'catalogue/yard.yaml': YARD.replace('10%', '10') });
    expect(catalogue).toBeUndefined();
    expect(orders).toHaveLength(1);
  });
});

describe('one bad file', () => {
  it('leaves the other orders, and is known by its number when that can be read', () => {
    const workspace = readWith({
      'orders/a.yaml': ORDER.replace('T-1', 'T-2').replace('people: 3', 'people: many'),
      'orders/b.yaml': 'number: [\n',
      'orders/c.yaml': '',
    });
    expect(workspace.orders.map(({ value }) => value.number)).toEqual(['T-1']);
    expect(workspace.brokenOrders).toEqual([
      { file: 'orders/a.yaml', number: 'T-2' },
      { file: 'orders/b.yaml' },
      { file: 'orders/c.yaml' },
    ]);
    expect(spots(workspace)).toEqual([
      'WRONG_TYPE orders/a.yaml:9:11',
      'YAML_SYNTAX orders/b.yaml:2:1',
      'WRONG_TYPE orders/c.yaml:1:1',
    ]);
  });
  it('of options leaves its sound entries and the other files, and the broken id is known', () => {
    const { catalogue, brokenIds } = readWith({
      'catalogue/options/seats.yaml': OPTIONS.replace('name: Seat', 'nam: Seat'),
      'catalogue/options/more.yaml':
        'group: More\norder: 2\noptions: [{ id: lamp, name: Lamp, class: fit-out }]\n',
    });
    expect([...(catalogue?.options.keys() ?? [])]).toEqual(['lamp', 'rod-holder']);
    expect([...brokenIds]).toEqual(['seat']);
  });
  it('of options without a heading breaks all its entries, and their ids are known', () => {
    const { catalogue, brokenIds } = readWith({
      'catalogue/options/seats.yaml': OPTIONS.replace('order: 1\n', ''),
    });
    expect([...(catalogue?.options.keys() ?? [])]).toEqual([]);
    expect([...brokenIds].toSorted()).toEqual(['rod-holder', 'seat']);
  });
  it('with an alias in one entry breaks that entry only', () => {
    const text = `${OPTIONS}  - { id: lamp, name: *x, class: fit-out }\n`;
    const workspace = readWith({ 'catalogue/options/seats.yaml': text });
    expect(spots(workspace)).toEqual(['YAML_NOT_ALLOWED catalogue/options/seats.yaml:6:23']);
    expect([...(workspace.catalogue?.options.keys() ?? [])]).toEqual(['seat', 'rod-holder']);
    expect([...workspace.brokenIds]).toEqual(['lamp']);
  });
  it('of a hull, an outboard, a trailer, a charge or a part leaves its id known', () => {
    const { brokenIds, findings } = readWith({
      'catalogue/hulls/tern-400.yaml': HULL.replace('beam: 1.7 m', 'beam: 17 m'),
      'catalogue/outboards.yaml': OUTBOARDS.replace('20 kW\n    s', '20 kg\n    s'),
      'catalogue/trailers.yaml': TRAILERS.replace('axles: 1', 'axles: 9'),
      'catalogue/charges.yaml': CHARGES.replace('always', 'sometimes'),
      'catalogue/parts/acme-parts.csv': PARTS.replace('6.80', '6.8.0'),
    });
    expect([...brokenIds].toSorted()).toEqual(
      ['tern-400', 'outboard-20', 'trailer-750', 'boat-registration', 'AC-1'].toSorted(),
    );
    expect(findings).toHaveLength(5);
  });
  it('that is not UTF-8, or is too large, is told', () => {
    const workspace = readWith({
      'orders/latin.yaml': Uint8Array.from([0x61, 0x3a, 0x20, 0xe9, 0x0a]),
      'orders/large.yaml': 'x'.repeat(512 * 1024 + 1),
      'catalogue/parts/acme-parts.csv': Uint8Array.from([0xff, 0xfe, 0x61, 0x00]),
    });
    expect(spots(workspace).toSorted()).toEqual([
      'CSV_ROW catalogue/parts/acme-parts.csv',
      'FILE_TOO_LARGE orders/large.yaml',
      'YAML_SYNTAX orders/latin.yaml',
    ]);
  });
});

describe('names that must be theirs alone', () => {
  it('are found twice across files, at the second, with the place of the first', () => {
    const workspace = readWith({
      'catalogue/options/z.yaml':
        'group: More\norder: 2\noptions: [{ id: seat, name: Other, class: fit-out }]\n',
      'catalogue/hulls/z.yaml': HULL,
    });
    expect(spots(workspace)).toEqual([
      'DUPLICATE_ID catalogue/hulls/z.yaml:1:5',
      'DUPLICATE_ID catalogue/options/z.yaml:3:17',
    ]);
    expect(workspace.findings[1]?.received).toContain('catalogue/options/seats.yaml:4:11');
    expect(workspace.catalogue?.options.get('seat')?.value.name).toBe('Seat');
  });
  it('are found twice in one list and across price lists', () => {
    const yard = YARD.replace(
      '  acme-parts:',
      '  zeta: { name: Zeta, leadDays: 7 }\n  acme-parts:',
    );
    const workspace = readWith({
      'catalogue/yard.yaml': yard,
      'catalogue/parts/acme-parts.csv': `${PARTS}AC-2,Again,outboard,each,1,AUD,1,2026-02-02\n`,
      'catalogue/parts/zeta.csv': PARTS,
    });
    expect(spots(workspace)).toEqual([
      'DUPLICATE_ID catalogue/parts/acme-parts.csv:5:1',
      'DUPLICATE_ID catalogue/parts/zeta.csv:2:1',
      'DUPLICATE_ID catalogue/parts/zeta.csv:3:1',
      'DUPLICATE_ID catalogue/parts/zeta.csv:4:1',
    ]);
  });
  it('of orders do not differ by capitals only', () => {
    const workspace = readWith({ 'orders/u.yaml': ORDER.replace('T-1', 't-1') });
    expect(spots(workspace)).toEqual(['DUPLICATE_ID orders/u.yaml:1:9']);
    expect(workspace.orders.map(({ file }) => file)).toEqual(['orders/t-1.yaml']);
    expect(workspace.brokenOrders).toEqual([{ file: 'orders/u.yaml', number: 't-1' }]);
  });
});

describe('a price list against the yard', () => {
  it('must be of a supplier that the yard names', () => {
    const workspace = readWith({
      'catalogue/parts/acme-parts.csv': undefined,
      'catalogue/parts/acme-part.csv': PARTS,
    });
    expect(spots(workspace)).toEqual(['UNKNOWN_ID catalogue/parts/acme-part.csv']);
    expect(workspace.findings[0]?.remedy).toContain('"acme-parts"');
  });
  it('must be in the currency of the yard', () => {
    const workspace = readWith({ 'catalogue/parts/acme-parts.csv': PARTS.replace('AUD', 'NZD') });
    expect(spots(workspace)).toEqual(['WRONG_VALUE catalogue/parts/acme-parts.csv:2:39']);
  });
});

describe('links and what is no file', () => {
  it('are not followed out of the workspace', () => {
    const outside = workspaceOf();
    const folder = workspaceOf();
    symlinkSync(path.join(outside, 'orders/t-1.yaml'), path.join(folder, 'orders/x.yaml'));
    symlinkSync(path.join(folder, 'orders/none.yaml'), path.join(folder, 'orders/y.yaml'));
    symlinkSync(path.join(folder, 'orders/z.yaml'), path.join(folder, 'orders/z.yaml'));
    const workspace = readWorkspace(folder);
    expect(spots(workspace)).toEqual([
      'FILE_MISSING orders/x.yaml',
      'FILE_MISSING orders/y.yaml',
      'FILE_MISSING orders/z.yaml',
    ]);
    expect([...workspace.sources.keys()]).not.toContain('orders/x.yaml');
  });
  it('are followed within it', () => {
    const folder = workspaceOf({ 'drafts/u.yaml': ORDER.replace('T-1', 'T-2') });
    symlinkSync('../drafts/u.yaml', path.join(folder, 'orders/u.yaml'));
    expect(readWorkspace(folder).orders.map(({ value }) => value.number)).toEqual(['T-1', 'T-2']);
  });
  it('are told when a folder stands where a file should', () => {
    const folder = workspaceOf({ 'catalogue/charges.yaml': undefined });
    mkdirSync(path.join(folder, 'catalogue/charges.yaml'));
    expect(spots(readWorkspace(folder))).toEqual(['FILE_MISSING catalogue/charges.yaml']);
  });
});
