import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readYaml } from '../../src/read/index.ts';
import { CONTROL } from '../../src/read/words.ts';
import { pointedAt, spots } from './spots.ts';

const read = (text: string) => readYaml(text, 'orders/a.yaml');
/** What a YAML text is made of, to be put together in any order. */
const PIECES = `a|:| |\n|- |{|}|[|]|"|'|&x |*x|!t |%|---\n|<<|\t|>|#|,|?|\0|\r|1`
  .split('|')
  .concat('|');

const found = (text: string): readonly string[] => spots(read(text).findings, text);

describe('the plain value of a YAML text', () => {
  it('keeps a number as the text that was typed', () => {
    const text = 'a: 0017\nb: 1e3\nc: 12.50\nd: 0x1F\ne: 12345678901234567890\nf: .5\ng: -1.10\n';
    expect(read(text).value).toEqual({
      a: '0017',
      b: '1e3',
      c: '12.50',
      d: '0x1F',
      e: '12345678901234567890',
      f: '.5',
      g: '-1.10',
    });
  });
  it('keeps booleans, and takes yes, no, dates and versions as text', () => {
    expect(read('a: true\nb: yes\nc: 2026-03-14\nd: 1.2.3\ne: 60 % length\n').value).toEqual({
      a: true,
      b: 'yes',
      c: '2026-03-14',
      d: '1.2.3',
      e: '60 % length',
    });
  });
  it('holds null for a key with nothing after it', () => {
    expect(read('a:\nb: ~\n').value).toEqual({ a: null, b: null });
  });
  it('is null for an empty file and for one of comments only', () => {
    expect(read('').value).toBeNull();
    expect(read('# nothing\n').value).toBeNull();
  });
  it('reads CRLF lines, a byte order mark and letters of any language', () => {
    const text =
      '\uFEFFname: Te Aroha Mākutu\r\nnotes:\r\n  - 𠮷 🚤\r\n  - |\r\n    two\r\n    lines\r\n';
    const { value, findings } = read(text);
    expect(findings).toEqual([]);
    expect(value).toEqual({ name: 'Te Aroha Mākutu', notes: ['𠮷 🚤', 'two\nlines\n'] });
  });
  it('takes keys that are also names of JavaScript as any other', () => {
    const { value } = read('constructor: 1\ntoString: x\nhasOwnProperty: y\n');
    expect(Object.entries(value as object)).toEqual([
      ['constructor', '1'],
      ['toString', 'x'],
      ['hasOwnProperty', 'y'],
    ]);
  });
  it('gives back any text, list and block written as JSON', () => {
    const { tree } = fc.letrec((tie) => ({
      tree: fc.oneof(
        { maxDepth: 4 },
        fc.string({ unit: 'grapheme' }).filter((text) => !CONTROL.test(text)),
        fc.boolean(),
        fc.array(tie('tree'), { maxLength: 4 }),
        fc.dictionary(fc.stringMatching(/^[a-z]{1,6}$/), tie('tree'), {
          maxKeys: 4,
          noNullPrototype: true,
        }),
      ),
    }));
    fc.assert(
      fc.property(tree, (value) => {
        const { value: back, findings } = read(JSON.stringify(value, undefined, 1));
        expect(findings).toEqual([]);
        expect(back).toEqual(value);
      }),
    );
  });
  it('never throws, and places every finding inside the text', () => {
    const piece = fc.constantFrom(...PIECES);
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
        const text = pieces.join('');
        for (const { place } of read(text).findings) {
          expect(place.range?.[0]).toBeGreaterThanOrEqual(0);
          expect(place.range?.[0]).toBeLessThanOrEqual(text.length);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('what is refused, at its place', () => {
  it('finds every syntax error, not only the first', () => {
    expect(found('a: b: c\nd: [1\ne: "x\n')).toEqual([
      'YAML_SYNTAX 1:4',
      'YAML_SYNTAX 3:1',
      'YAML_SYNTAX 4:1',
    ]);
    expect(found('ok: 1\nat: @x\nlist: `y`\n')).toEqual(['YAML_SYNTAX 2:5', 'YAML_SYNTAX 3:7']);
  });
  it('names a tab in the indentation, and says to use spaces', () => {
    const text = 'a:\n\tb: 1\n';
    expect(found(text)).toEqual(['YAML_SYNTAX 2:1']);
    expect(read(text).findings[0]?.remedy).toMatch(/spaces/);
  });
  it('has no value when the syntax is wrong', () => {
    expect(read('a: [1\n').value).toBeUndefined();
  });
  it('finds a field that stands twice, at the second', () => {
    const text = 'a: 1\nb:\n  c: 1\n  "c": 2\na: 2\n';
    expect(found(text)).toEqual(['DUPLICATE_KEY 4:3', 'DUPLICATE_KEY 5:1']);
    expect(pointedAt(read(text).findings, text)).toEqual(['"c"', 'a']);
    expect(read(text).value).toEqual({ a: '1', b: { c: '1' } });
  });
  it.each([
    ['an anchor', 'a: &x 1\n', 'YAML_NOT_ALLOWED 1:7'],
    ['an alias', 'a: 1\nb: *x\n', 'YAML_NOT_ALLOWED 2:4'],
    ['a tag', 'a: !!str 5\n', 'YAML_NOT_ALLOWED 1:10'],
    ['a tag that is not known', 'a: !boat 5\n', 'YAML_NOT_ALLOWED 1:10'],
    ['a set', 'a: !!set {b}\n', 'YAML_NOT_ALLOWED 1:10'],
    ['binary', 'a: !!binary aGk=\n', 'YAML_NOT_ALLOWED 1:13'],
    ['a version directive', '%YAML 1.1\n---\na: yes\n', 'YAML_NOT_ALLOWED 1:1'],
    ['a tag directive', '# x\n%TAG !e! tag:x,2000:\n---\na: 1\n', 'YAML_NOT_ALLOWED 2:1'],
    ['a directive that is not known', '%BOAT x\n---\na: 1\n', 'YAML_NOT_ALLOWED 1:1'],
    ['a merge key', 'a:\n  <<: {b: 1}\n', 'YAML_NOT_ALLOWED 2:3'],
    ['a second document', 'a: 1\n---\nb: 2\n', 'YAML_NOT_ALLOWED 2:1'],
    ['a key that is a number', 'a: 1\n17: 2\n', 'YAML_NOT_ALLOWED 2:1'],
    ['a key that is a list', '? [a]\n: 1\n', 'YAML_NOT_ALLOWED 1:3'],
    ['an empty key', 'a: 1\n: 2\n', 'YAML_NOT_ALLOWED 2:1'],
    ['__proto__', 'a:\n  __proto__: {x: 1}\n', 'YAML_NOT_ALLOWED 2:3'],
    ['a control character by escape', 'a: "x\\0y"\n', 'YAML_NOT_ALLOWED 1:4'],
    ['a NUL byte', 'a: b\nc: \0d\n', 'YAML_SYNTAX 2:4'],
    ['an escape character', 'a: \u001B[2J\n', 'YAML_SYNTAX 1:4'],
    ['a carriage return alone', 'a: b\rc: d\n', 'YAML_SYNTAX 1:5'],
  ])('refuses %s', (_, text, spot) => {
    expect(found(text)).toEqual([spot]);
  });
  it('leaves the prototype of objects as it is', () => {
    const { value } = read('__proto__: {polluted: yes}\na: 1\n');
    expect(value).toEqual({ a: '1' });
    expect(Object.getPrototypeOf(value)).toBe(Object.prototype);
    expect('polluted' in {}).toBe(false);
  });
  it('refuses an alias bomb without unfolding it', () => {
    const names = 'a b c d e f g h i'.split(' ');
    const lines = names.map((name, index) => {
      const below = names[index - 1];
      const items = below ? Array.from({ length: 9 }, () => `*${below}`) : ['x'];
      return `${name}: &${name} [${items.join(', ')}]`;
    });
    const started = performance.now();
    const { findings } = read(lines.join('\n'));
    expect(new Set(findings.map(({ code }) => code))).toEqual(new Set(['YAML_NOT_ALLOWED']));
    expect(findings).toHaveLength(names.length);
    expect(performance.now() - started).toBeLessThan(500);
  });
  it('refuses blocks within blocks beyond fifty, and stays on its feet at any depth', () => {
    const nested = (depth: number): string => `a: ${'['.repeat(depth)}${']'.repeat(depth)}\n`;
    expect(found(nested(49))).toEqual([]);
    expect(found(nested(51))).toEqual(['YAML_NOT_ALLOWED 1:54']);
    for (const opening of ['[', '- ', '{a: ', '? ']) {
      const codes = read(opening.repeat(100_000)).findings.map(({ code }) => code);
      expect(codes).toEqual(['YAML_SYNTAX']);
    }
  });
  it('refuses a text over 512 KiB unread', () => {
    expect(found(`a: ${'x'.repeat(512 * 1024)}\n`)).toEqual(['FILE_TOO_LARGE']);
    expect(found(`a: ${'x'.repeat(512 * 1024 - 4)}\n`)).toEqual([]);
    expect(found(`a: ${'é'.repeat(256 * 1024)}\n`)).toEqual(['FILE_TOO_LARGE']);
  });
});

describe('the place of a path', () => {
  const text =
    'dates:\n  enquiry: 2026-03-14\noptions:\n  - seat\n  - option: rod\n    quantity: 2\nempty:\n';
  const source = read(text);
  const at = (range: readonly [number, number] | undefined) => range && text.slice(...range);

  it('is the value', () => {
    expect(at(source.place(['dates', 'enquiry']).range)).toBe('2026-03-14');
    expect(at(source.place(['options', 1, 'quantity']).range)).toBe('2');
    expect(at(source.place(['options', 0]).range)).toBe('seat');
  });
  it('is the key of the nearest block for what is not written', () => {
    expect(at(source.place(['dates', 'quoted']).range)).toBe('dates');
    expect(at(source.place(['dates', 'quoted', 'more']).range)).toBe('dates');
    expect(at(source.place(['hull']).range)).toBe('dates');
    expect(at(source.place(['options', 1, 'note']).range)).toBe('option');
    expect(at(source.place(['options', 7]).range)).toBe('options');
  });
  it('is the value for a part of a value that is no block', () => {
    expect(at(source.place(['options', 0, 'option']).range)).toBe('seat');
  });
  it('is the key for a key with nothing after it', () => {
    expect(at(source.place(['empty']).range)).toBe('empty');
  });
  it('of a key is the key', () => {
    expect(at(source.placeOfKey(['dates', 'enquiry']).range)).toBe('enquiry');
    expect(at(source.placeOfKey(['options']).range)).toBe('options');
  });
});
