import { bareWords } from './word-rules.ts';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { projectFiles, type ProjectFile } from './project-files.ts';
import {
  exportedFunctions,
  importsWithoutExtension,
  LONGEST_FILE,
  MAX_FILES_SIDE_BY_SIDE,
  MAX_FILES_THAT_THROW,
  silencedWithoutReason,
  tooFull,
  tooLong,
  tooManyThrow,
  unitsByHand,
  withoutDocstring,
  withoutSource,
} from './source-rules.ts';
import { ofOneMachine, unescaped, withoutSchemaLine } from './text-rules.ts';

const file = (path: string, text: string): ProjectFile => ({ path, text });
const room = (text: string): ProjectFile => file('src/float/lever.ts', text);
const page = (text: string): ProjectFile => file('templates/quote.njk', text);

describe('the docstring rule', () => {
  it.each([
    ['a function', 'export function gm(): number { return 1; }'],
    ['an arrow', 'export const gm = (): number => 1;'],
    ['an arrow in parentheses', 'export const gm = (() => 1) satisfies Lever;'],
    ['a function exported below', 'function gm() { return 1; }\nexport { gm };'],
    ['a docstring without words', '/** */\nexport function gm() { return 1; }'],
    ['a comment that is no docstring', '// metres, always\nexport function gm() { return 1; }'],
  ])('finds %s', (_, text) => {
    expect(withoutDocstring(room(text))).toHaveLength(1);
  });

  it.each([
    ['a documented function', '/** Metacentric height, m. */\nexport function gm() { return 1; }'],
    ['a documented arrow', '/** Metacentric height, m. */\nexport const gm = () => 1;'],
    [
      'overloads of which one is documented',
      '/** Metacentric height, m. */\nexport function gm(a: 1): 1;\nexport function gm(a: number) { return a; }',
    ],
    ['a function of its own', 'function gm() { return 1; }'],
    ['a value', 'export const gm = 1;'],
    ['a face', "export { gm } from './gm.ts';"],
  ])('leaves %s alone', (_, text) => {
    expect(withoutDocstring(room(text))).toEqual([]);
  });

  it('tells the line and the name', () => {
    const [found] = exportedFunctions(room('\n\nexport const gm = () => 1;'));
    expect(found).toMatchObject({ name: 'gm', line: 3 });
  });
});

describe('the source rule', () => {
  const unsourced = '/** Metacentric height, m. */\nexport const gm = () => 1;';
  const empty = '/**\n * Metacentric height, m.\n * @source\n */\nexport const gm = () => 1;';
  const sourced =
    '/**\n * Metacentric height, m.\n * @source derived\n */\nexport const gm = () => 1;';

  it('finds a method that does not say where it comes from', () => {
    expect(withoutSource(room(unsourced))).toHaveLength(1);
    expect(withoutSource(room(empty))).toHaveLength(1);
    expect(withoutSource(room(sourced))).toEqual([]);
  });

  it('holds for the rooms only', () => {
    expect(withoutSource(file('src/units/format.ts', unsourced))).toEqual([]);
  });
});

describe('the length rule', () => {
  const lines = (count: number): string => 'line\n'.repeat(count);

  it('finds a file one line too long', () => {
    expect(tooLong(room(lines(LONGEST_FILE)))).toEqual([]);
    expect(tooLong(room(lines(LONGEST_FILE + 1)))).toHaveLength(1);
  });

  it('leaves tables of data alone', () => {
    expect(tooLong(file('src/electrics/wire-table.ts', lines(900)))).toEqual([]);
  });
});

describe('the folder rule', () => {
  const inOne = (folder: string, count: number): readonly ProjectFile[] =>
    Array.from({ length: count }, (_, index) => file(`${folder}/f${index}.ts`, ''));

  it('finds a folder with one file too many, and counts no folder inside it', () => {
    const full = inOne('src/float', MAX_FILES_SIDE_BY_SIDE);
    expect(tooFull([...full, ...inOne('src/float/hull', 5)])).toEqual([]);
    const [found] = tooFull([...full, file('src/float/one-more.ts', '')]);
    expect(found).toContain(`src/float: ${MAX_FILES_SIDE_BY_SIDE + 1} files`);
  });

  it('leaves golden values and fixtures alone', () => {
    const many = MAX_FILES_SIDE_BY_SIDE + 1;
    expect(tooFull(inOne('tests/figures/golden', many))).toEqual([]);
    expect(tooFull(inOne('tests/fixtures/wrong-order/orders', many))).toEqual([]);
  });
});

describe('the rule of units', () => {
  const said = (text: string) => unitsByHand(file('src/documents/words.ts', text));

  it.each([
    ['a unit behind a value', 'const a = `${mass} kg`;'],
    ['one at the value', 'const a = `${length}mm long`;'],
    ['one behind a no-break space', 'const a = `${pitch}\u00A0in`;'],
    ['one behind the constant', 'const a = `${pitch}${NO_BREAK}in, at full throttle`;'],
    ['an angle', 'const a = `at most ${trim}°`;'],
    ['a percent sign', 'const a = `${share} %.`;'],
    ['a unit added', "const a = speed + ' kn';"],
    ['a unit of US customary units', 'const a = `${volume} US gal of fuel`;'],
    ['a unit in a heading', "const a = text('Thickness, mm');"],
    ['a unit as a heading', "const a = text('or mL');"],
  ])('finds %s', (_, text) => {
    expect(said(text)).toHaveLength(1);
  });

  it.each([
    ['English', 'const a = `${count} in the boat, ${name}s, ${from} A to B`;'],
    ['a word', 'const a = `${turns} rpm, ${count} hours, ${mass} more`;'],
    ['a comparison', "const a = unit === 'kg';"],
  ])('leaves %s alone', (_, text) => {
    expect(said(text)).toEqual([]);
  });

  it('lets the formatter be', () => {
    expect(unitsByHand(file('src/units/format.ts', 'const a = `${mass} kg`;'))).toEqual([]);
  });
});

describe('the throw rule', () => {
  const throwing = (count: number): readonly ProjectFile[] =>
    Array.from({ length: count }, (_, index) =>
      file(`src/cli/c${index}.ts`, "// throw\nif (Math.PI < 3) throw new Error('throw');"),
    );

  it('lists every file that throws once they are too many', () => {
    expect(tooManyThrow(throwing(MAX_FILES_THAT_THROW))).toEqual([]);
    const found = tooManyThrow(throwing(MAX_FILES_THAT_THROW + 1));
    expect(found).toHaveLength(MAX_FILES_THAT_THROW + 1);
    expect(found[0]).toBe('src/cli/c0.ts:2');
  });

  it('does not count the word in comments and text', () => {
    const quiet = Array.from({ length: 20 }, () => room("// throw\nconst word = 'throw';"));
    expect(tooManyThrow(quiet)).toEqual([]);
  });
});

describe('the import rule', () => {
  it.each(["import './lever'", "export * from './lever.js'", "await import('../mass/index')"])(
    'finds %s',
    (text) => expect(importsWithoutExtension(room(text))).toHaveLength(1),
  );

  it('leaves packages and named files alone', () => {
    const text =
      "import 'zod'; import './a.ts'; import data from './b.json' with { type: 'json' };";
    expect(importsWithoutExtension(room(text))).toEqual([]);
  });
});

describe('the silence rule', () => {
  const silence = ['oxlint', 'disable-next-line no-shadow'].join('-');

  it('finds a silenced line without a reason', () => {
    expect(silencedWithoutReason(room(`// ${silence}\n`))).toHaveLength(1);
    expect(silencedWithoutReason(room(`// ${silence} --\n`))).toHaveLength(1);
    expect(silencedWithoutReason(room(`// ${silence} -- the same word in two senses\n`))).toEqual(
      [],
    );
  });
});

describe('the template rule', () => {
  it.each([
    '{{ note | safe }}',
    '{{ note|upper|safe }}',
    '{{ svg | safe }}',
    '{{ profile | svg }} {{ note | safe }}',
    '{% set text = note | safe %}',
    '{% autoescape false %}{{ note }}{% endautoescape %}',
  ])('finds %s', (text) => expect(unescaped(page(text))).toHaveLength(1));

  it.each([
    '{{ note }}',
    '{{ profile | svg | safe }}',
    "{{ profile | svg('wide', 400) | safe }}",
    '{{ "print" | css | safe }}',
    '{# never write note | safe #}',
    '{{ note | safety }}',
  ])('leaves %s alone', (text) => expect(unescaped(page(text))).toEqual([]));

  it('tells the line', () => {
    expect(unescaped(page('\n{# a\nb #}\n{{ note | safe }}'))[0]).toContain('quote.njk:4');
  });
});

describe('the machine rule', () => {
  const path = (...parts: readonly string[]): string => ['', ...parts, ''].join('/');

  it.each([
    `see ${path('work', 'main')}`,
    `"${path('root', 'notes')}"`,
    `file://${path('home', 'someone')}x`,
    `cd ${path('Users', 'someone')}`,
    ['C:', 'Users', 'someone'].join('\\'),
    `https://${['registry', 'npmjs', 'org'].join('.')}/zod`,
    JSON.stringify({ resolved: 'https://packages.example/zod.tgz' }, null, 1),
  ])('finds %s', (text) => expect(ofOneMachine(file('README.md', text))).toHaveLength(1));

  it.each(['./work/list.ts', 'https://example.org/work/list', 'the root of x/roots/', 'a home/ b'])(
    'leaves %s alone',
    (text) => expect(ofOneMachine(file('README.md', text))).toEqual([]),
  );
});

describe('the schema line rule', () => {
  const order = (text: string): ProjectFile => file('orders/2601.yaml', text);
  const exists = (path: string): boolean => path === 'catalogue/schema/order.json';

  it.each([
    ['no first line', 'number: 2601\n'],
    [
      'the line in second place',
      '# x\n# yaml-language-server: $schema=../catalogue/schema/order.json',
    ],
    ['an empty name', '# yaml-language-server: $schema=\n'],
    [
      'a schema that is not there',
      '# yaml-language-server: $schema=../catalogue/schema/ordr.json\n',
    ],
  ])('finds %s', (_, text) => expect(withoutSchemaLine(order(text), exists)).toHaveLength(1));

  it('leaves a file alone that leads to its schema', () => {
    const text = '# yaml-language-server: $schema=../catalogue/schema/order.json\nnumber: 2601\n';
    expect(withoutSchemaLine(order(text), exists)).toEqual([]);
  });
});

describe('the list of files', () => {
  it('is the same without git: ours, text only, nothing that is installed or built', () => {
    const root = mkdtempSync(join(tmpdir(), 'orlop-files-'));
    for (const folder of ['src/a', 'node_modules/b', '_site']) {
      mkdirSync(join(root, folder), { recursive: true });
      writeFileSync(join(root, folder, 'x.ts'), '1');
    }
    writeFileSync(join(root, 'picture.png'), new Uint8Array([1, 0, 2]));
    const found = projectFiles(root);
    rmSync(root, { recursive: true });
    expect(found).toEqual([{ path: 'src/a/x.ts', text: '1' }]);
  });
});

describe('the rule of words', () => {
  const said = (text: string, path = 'src/documents/words.ts') => bareWords(file(path, text));

  it.each([
    ['in a sentence', "const a = 'out of the mould';"],
    ['as a heading', "const a = 'Draught';"],
    ['in a template', 'const a = `${name}: tyres`;'],
  ])('finds a word of one edition %s', (_, text) => {
    expect(said(text)).toHaveLength(1);
  });

  it.each([
    ['one in braces', "const a = 'out of the {mould}, {Draught}';"],
    ['a name', "const a = stages['mould-preparation'] ?? 'mould';"],
    ['an import', "import { mould } from './mould.ts';"],
  ])('leaves %s alone', (_, text) => {
    expect(said(text)).toEqual([]);
  });

  it('reads what a template says, and leaves its tags and its readers alone', () => {
    expect(said('<p class="colour">{{ view.mould }}</p>', 'templates/a.njk')).toEqual([]);
    expect(said('<p>The mould</p>', 'templates/a.njk')).toHaveLength(1);
    expect(said("const a = 'The mould.';", 'src/read/a.ts')).toEqual([]);
  });
});
