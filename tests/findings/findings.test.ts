import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  describePlace,
  FINDING_CODES,
  type FindingCode,
  finding,
  hasErrors,
  nearestName,
  positionAt,
  renderFinding,
  seenBy,
  toldToCustomer,
} from '../../src/findings/index.ts';

const codes = Object.keys(FINDING_CODES) as FindingCode[];

describe('a code', () => {
  it.each(codes)('%s says what it means and how to remedy it, for a person', (code) => {
    const { severity, means, remedy } = FINDING_CODES[code];
    expect(['error', 'warning', 'note']).toContain(severity);
    for (const sentence of [means, remedy]) {
      expect(sentence).toMatch(/^[A-Z].{3,}[^.!?\s]$/);
      expect(sentence).not.toMatch(/undefined|null|NaN|\n/);
    }
    expect(code).toMatch(/^[A-Z]+(_[A-Z]+)*$/);
  });
  it('means something that no other code means', () => {
    const meanings = codes.map((code) => FINDING_CODES[code].means);
    expect(new Set(meanings).size).toBe(codes.length);
  });
});

describe('a finding', () => {
  const place = { file: 'orders/a.yaml', range: [8, 13] } as const;
  it('has the severity of its code, and its mending sentence unless one is given', () => {
    expect(finding('UNKNOWN_ID', place, { received: 'x' })).toEqual({
      code: 'UNKNOWN_ID',
      severity: 'error',
      place,
      received: 'x',
      remedy: FINDING_CODES.UNKNOWN_ID.remedy,
    });
    expect(finding('TRAILER_LENGTH', place, { received: 'x', remedy: 'Do' })).toMatchObject({
      severity: 'warning',
      remedy: 'Do',
    });
  });
  it('stops a document only when it is an error', () => {
    const warning = finding('PART_PRICE_OLD', place, { received: 'x' });
    expect(hasErrors([warning])).toBe(false);
    expect(hasErrors([warning, finding('UNKNOWN_ID', place, { received: 'x' })])).toBe(true);
    expect(hasErrors([])).toBe(false);
  });
});

describe('who is told', () => {
  const told = (code: FindingCode, expected?: string) =>
    toldToCustomer({ code, received: '40 L', ...(expected !== undefined && { expected }) });
  it('is the customer of little, the workshop of more and the office of all', () => {
    const seen = (code: FindingCode) =>
      (['customer', 'workshop', 'office'] as const).filter((reader) => seenBy({ code }, reader));
    expect(seen('FOAM_SHORT')).toEqual(['customer', 'workshop', 'office']);
    expect(seen('LAYUP_MASS_OFF')).toEqual(['workshop', 'office']);
    expect(seen('MARGIN_BELOW_FLOOR')).toEqual(['office']);
  });
  it('reads the figures of a finding after its words, where it has them and they are fit to be told', () => {
    const { toCustomer } = FINDING_CODES.FOAM_SHORT;
    expect(told('FOAM_SHORT', '$& 50 L')).toEqual([toCustomer, '40 L. Needed: $& 50 L']);
    expect(told('FOAM_SHORT')).toEqual([toCustomer]);
    expect(told('FLOAT_SWAMPED', '50 L')).toHaveLength(1);
    expect(told('MARGIN_BELOW_FLOOR', '20 %')).toEqual([]);
  });
});

describe('a position', () => {
  it('is the line and column of an offset, both from one', () => {
    const text = 'ab\ncd\n\ne';
    expect([0, 1, 3, 4, 6, 7, 8].map((offset) => positionAt(text, offset))).toEqual([
      { line: 1, column: 1 },
      { line: 1, column: 2 },
      { line: 2, column: 1 },
      { line: 2, column: 2 },
      { line: 3, column: 1 },
      { line: 4, column: 1 },
      { line: 4, column: 2 },
    ]);
  });
  it('counts CRLF as one line end', () => {
    expect(positionAt('a\r\nb', 3)).toEqual({ line: 2, column: 1 });
  });
  it('leads back to the offset', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('a', '\n', 'é', '\r\n')), fc.nat(), (pieces, at) => {
        const text = pieces.join('');
        const offset = at % (text.length + 1);
        const { line, column } = positionAt(text, offset);
        const before = text.split('\n').slice(0, line - 1);
        expect(before.reduce((sum, one) => sum + one.length + 1, 0) + column - 1).toBe(offset);
      }),
    );
  });
  it('stands after the file; the file stands alone without range or text', () => {
    expect(describePlace({ file: 'a.yaml', range: [3, 4] }, 'ab\ncd')).toBe('a.yaml:2:1');
    expect(describePlace({ file: 'a.yaml' }, 'ab')).toBe('a.yaml');
    expect(describePlace({ file: 'a.yaml', range: [3, 4] }, undefined)).toBe('a.yaml');
  });
});

describe('a rendered finding', () => {
  const text = 'number: 1\nstatus: quotd\nhull: a\n';
  const sources = new Map([['a.yaml', text]]);
  const at = (start: number, end: number) => ({ file: 'a.yaml', range: [start, end] }) as const;

  it('shows place, code, line, caret, what was found, expected, and how to remedy it', () => {
    const one = finding('WRONG_VALUE', at(18, 23), {
      received: '"quotd"',
      expected: 'one of quoted, accepted',
      remedy: 'Did you mean "quoted"?',
    });
    expect(renderFinding(one, sources).split('\n')).toEqual([
      `a.yaml:2:9: error: ${FINDING_CODES.WRONG_VALUE.means} [WRONG_VALUE]`,
      '> 2 | status: quotd',
      '    |         ^^^^^',
      '  Found: "quotd"',
      '  Expected: one of quoted, accepted',
      '  Fix: Did you mean "quoted"?',
    ]);
  });
  it('puts the caret under the first line of a block, and under one character at least', () => {
    const caret = (start: number, end: number): string | undefined =>
      renderFinding(finding('UNKNOWN_KEY', at(start, end), { received: 'x' }), sources).split(
        '\n',
      )[2];
    expect(caret(10, 30)).toBe('    | ^^^^^^^^^^^^^');
    expect(caret(18, 18)).toBe('    |         ^');
    expect(caret(23, 24)).toBe('    |              ^');
  });
  it('shows the right line of a file with other line ends', () => {
    const strange = 'a: 1\u2028b\r\nstatus: quotd\r\n';
    const start = strange.indexOf('quotd');
    const lines = renderFinding(
      finding('WRONG_VALUE', at(start, start + 5), { received: 'x' }),
      new Map([['a.yaml', strange]]),
    ).split('\n');
    expect(lines.slice(1, 3)).toEqual(['> 2 | status: quotd', '    |         ^^^^^']);
  });
  it('leaves out the line when it is longer than can be read, or not at hand', () => {
    const long = new Map([['a.yaml', 'x'.repeat(5000)]]);
    const one = finding('UNKNOWN_KEY', at(4000, 4001), { received: 'x' });
    expect(renderFinding(one, long).split('\n')).toHaveLength(3);
    expect(renderFinding(one, new Map()).split('\n')).toHaveLength(3);
  });
  it('holds no character that would move a cursor', () => {
    const hostile = new Map([['a.yaml', 'a: \u001B[2J\u202Eb\n']]);
    const one = finding('YAML_SYNTAX', at(0, 1), { received: '\u001B]0;x\u0007' });
    const units = renderFinding(one, hostile)
      .split('')
      .map((unit) => unit.charCodeAt(0));
    expect(units.filter((code) => (code < 32 && code !== 10) || code === 0x202e)).toEqual([]);
  });
  it('is rendered for any text and range without failing', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }),
        fc.nat(50),
        fc.nat(50),
        (source, start, length) => {
          const range = [
            Math.min(start, source.length),
            Math.min(start + length, source.length),
          ] as const;
          const one = finding('YAML_SYNTAX', { file: 'a', range }, { received: 'x' });
          expect(renderFinding(one, new Map([['a', source]]))).toContain('[YAML_SYNTAX]');
        },
      ),
    );
  });
});

describe('the nearest name', () => {
  const known = ['seat', 'deck-foam', 'battery-agm-100', 'battery-lifepo4-100', 'at', 'as', 'note'];
  it.each([
    ['saet', 'seat'],
    ['Seat', 'seat'],
    ['deckfoam', 'deck-foam'],
    ['battery-agm-10', 'battery-agm-100'],
    ['battery-agm', 'battery-agm-100'],
    ['notes', 'note'],
    ['an', 'at'],
  ])('of %s is %s', (typed, name) => {
    expect(nearestName(typed, known)).toBe(name);
  });
  it.each(['windlass', 'xy', 'battery', '', 'no'])('of %j is none', (typed) => {
    expect(nearestName(typed, known)).toBeUndefined();
  });
  it('is quick in a long list', () => {
    const many = Array.from({ length: 20_000 }, (_, index) => `part-${index}`);
    const started = performance.now();
    nearestName('x'.repeat(2000), many);
    expect(performance.now() - started).toBeLessThan(500);
  });
});
