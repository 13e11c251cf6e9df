import { describe, expect, it } from 'vitest';
import { readChecked } from '../../src/read/read-entries.ts';
import {
  hullSchema,
  optionFileSchema,
  orderSchema,
  outboardFileSchema,
  yardSchema,
} from '../../src/schema/index.ts';
import { HULL, OPTIONS, ORDER, OUTBOARDS, YARD } from './samples.ts';
import { pointedAt, spots } from './spots.ts';

const order = (text: string) => readChecked(orderSchema, text, 'orders/a.yaml');
const found = (text: string): readonly string[] => spots(order(text).findings, text);
/** The sample order with one thing changed. */
const changed = (from: string, to: string): string => {
  expect(ORDER).toContain(from);
  return ORDER.replace(from, to);
};
const only = (text: string) => {
  const { findings } = order(text);
  expect(findings).toHaveLength(1);
  return findings[0];
};

describe('a sound file', () => {
  it('becomes typed values in SI', () => {
    const { sourced } = order(ORDER);
    expect(sourced?.value.fuel).toBeCloseTo(0.02, 12);
    expect(sourced?.value.boat.people).toBe(3);
    expect(sourced?.value.options).toEqual([
      { option: 'seat', quantity: 1 },
      { option: 'rod-holder', quantity: 4 },
    ]);
  });
  it('knows where each value stands', () => {
    const { sourced } = order(ORDER);
    const [hull] = pointedAt([{ place: sourced?.place(['hull']) } as never], ORDER);
    expect(hull).toBe('tern-400');
    expect(sourced?.file).toBe('orders/a.yaml');
  });
  it('may be of any kind', () => {
    expect(readChecked(yardSchema, YARD, 'y').findings).toEqual([]);
    expect(readChecked(hullSchema, HULL, 'h').findings).toEqual([]);
    expect(readChecked(optionFileSchema, OPTIONS, 'o').findings).toEqual([]);
    expect(readChecked(outboardFileSchema, OUTBOARDS, 'b').findings).toEqual([]);
  });
  it('may hold an order number and a telephone that look like numbers', () => {
    const text = changed('T-1', '0017').replace(
      'name: A Field',
      'phone: 0412345678\n  name: A Field',
    );
    const { sourced } = order(text);
    expect(sourced?.value.number).toBe('0017');
    expect(sourced?.value.customer.phone).toBe('0412345678');
  });
});

describe('a mistake in a file', () => {
  it('is placed at the key when the key is not known, with the nearest known one', () => {
    const text = changed('fuel: 20 L', 'fuell: 20 L');
    expect(found(text)).toEqual(['UNKNOWN_KEY 15:1']);
    expect(only(text)?.remedy).toContain('"fuel:"');
    expect(only(text)?.expected).toContain('outboard');
  });
  it('is told once when a field that must be there is misspelt', () => {
    expect(found(changed('status:', 'statsu:'))).toEqual(['UNKNOWN_KEY 2:1']);
  });
  it('is told for each unknown key in a block', () => {
    const text = changed('people: 3', 'people: 3\n  colour: red\n  length: 4 m');
    expect(found(text)).toEqual(['UNKNOWN_KEY 10:3', 'UNKNOWN_KEY 11:3']);
  });
  it('is placed at the key of the block that lacks a field, and says what the field is', () => {
    const text = changed('  enquiry: 2026-03-14\n', '  quoted: 2026-03-14\n');
    expect(found(text)).toEqual(['MISSING_KEY 3:1']);
    expect(only(text)?.received).toBe('no "enquiry:"');
    expect(only(text)?.expected).toContain('First contact.');
  });
  it('is placed at the first key of the file when a field of the file is missing', () => {
    expect(found(changed('hull: tern-400\n', ''))).toEqual(['MISSING_KEY 1:1']);
  });
  it('is a missing quantity, not a wrong one, when nothing is written', () => {
    const text = HULL.replace('  deadrise: 12 deg\n', '');
    expect(spots(readChecked(hullSchema, text, 'h').findings, text)).toEqual(['MISSING_KEY 4:1']);
  });
  it('is placed at the key when nothing stands after it', () => {
    expect(found(changed('hull: tern-400', 'hull:'))).toEqual(['MISSING_KEY 10:1']);
    const left = changed('fuel: 20 L', 'fuel:');
    expect(found(left)).toEqual(['WRONG_TYPE 15:1']);
    expect(only(left)?.remedy).toContain('take the line out');
  });
  it('is an empty file', () => {
    for (const text of ['', '# to do\n']) expect(found(text)).toEqual(['WRONG_TYPE 1:1']);
  });
  it('is a value where a block should be', () => {
    const text = changed('boat:\n  use: Sampling on a shallow lake.\n  people: 3', 'boat: big');
    expect(found(text)).toEqual(['WRONG_TYPE 7:7']);
    expect(only(text)?.expected).toContain('a block of fields');
  });
  it('is true where text should be, and says how to write it as text', () => {
    const text = changed('A Field Station', 'true');
    expect(found(text)).toEqual(['WRONG_TYPE 6:9']);
    expect(only(text)?.remedy).toContain('quotes');
  });
  it('is a list where a quantity should be', () => {
    expect(found(changed('20 L', '[20, L]'))).toEqual(['WRONG_TYPE 15:7']);
  });
  it('is a value that is not one of those named, with the nearest', () => {
    const text = changed('status: enquiry', 'status: acepted');
    expect(found(text)).toEqual(['WRONG_VALUE 2:9']);
    expect(only(text)?.remedy).toContain('"accepted"');
  });
  it('is a unit of another kind, an unknown unit, or an amount out of range', () => {
    expect(found(changed('20 L', '20 kg'))).toEqual(['UNIT_KIND 15:7']);
    expect(found(changed('20 L', '20 firkins'))).toEqual(['UNIT_UNKNOWN 15:7']);
    expect(found(changed('20 L', '20 m3'))).toEqual(['OUT_OF_RANGE 15:7']);
    expect(only(changed('20 L', '20 m3'))?.expected).toContain('at most 1000 L');
    expect(found(changed('20 L', '20,5 L'))).toEqual(['WRONG_TYPE 15:7']);
  });
  it('is a date that does not exist', () => {
    expect(found(changed('2026-03-14', '2026-02-29'))).toEqual(['WRONG_TYPE 4:12']);
  });
  it('is an empty text, and one that is too long', () => {
    expect(found(changed('A Field Station', '""'))).toEqual(['WRONG_TYPE 6:9']);
    expect(found(changed('A Field Station', 'x'.repeat(2001)))).toEqual(['OUT_OF_RANGE 6:9']);
  });
  it('is an e-mail address or an id that is not written as one', () => {
    const mail = changed('name: A Field', 'email: nobody\n  name: A Field');
    expect(found(mail)).toEqual(['WRONG_TYPE 6:10']);
    expect(found(changed('hull: tern-400', 'hull: Tern 400'))).toEqual(['WRONG_TYPE 10:7']);
  });
  it('is a list with too few entries', () => {
    const text = YARD.replace('[Pay on time.]', '[]');
    const { findings } = readChecked(yardSchema, text, 'y');
    expect(pointedAt(findings, text)).toEqual(['[]']);
    expect(findings.map(({ code }) => code)).toEqual(['OUT_OF_RANGE']);
  });
  it('is a name in a table that is not written as one, placed at the name', () => {
    const text = YARD.replace('  fabric: 10%', '  Glass Fabric: 10%');
    const { findings } = readChecked(yardSchema, text, 'y');
    expect(findings.map(({ code }) => code)).toEqual(['WRONG_TYPE']);
    expect(pointedAt(findings, text)).toEqual(['Glass Fabric']);
  });
  it('is a stage that is not known, and one whose rate is missing', () => {
    const text = YARD.replace('  wiring: 50', '  painting: 50');
    const { findings } = readChecked(yardSchema, text, 'y');
    expect(findings.map(({ code }) => code).toSorted()).toEqual(['MISSING_KEY', 'UNKNOWN_KEY']);
    expect(findings.find(({ code }) => code === 'UNKNOWN_KEY')?.expected).toContain('laminate');
    expect(findings.find(({ code }) => code === 'MISSING_KEY')?.received).toBe('no "wiring:"');
  });
  it('is payments that do not make the whole', () => {
    const text = YARD.replace('share: 60%', 'share: 50%');
    const { findings } = readChecked(yardSchema, text, 'y');
    expect(findings.map(({ code, received }) => `${code} ${received}`)).toEqual([
      'WRONG_VALUE shares that make 90 %',
    ]);
  });
  it('is a locale or a currency that does not exist', () => {
    for (const [from, to] of [
      ['en-AU', 'english_'],
      ['currency: AUD', 'currency: XQX'],
      ['currency: AUD', 'currency: MGA'],
    ] as const) {
      const { findings } = readChecked(yardSchema, YARD.replace(from, to), 'y');
      expect(findings.map(({ code }) => code)).toEqual(['WRONG_VALUE']);
    }
  });
});

describe('a mistake in a line of options', () => {
  it('is told of the block when a block is written', () => {
    const text = changed('    quantity: 4', '    quantty: 4');
    expect(found(text)).toEqual(['UNKNOWN_KEY 14:5']);
    expect(only(text)?.remedy).toContain('"quantity:"');
    expect(found(changed('quantity: 4', 'quantity: four'))).toEqual(['WRONG_TYPE 14:15']);
    expect(found(changed('  - option: rod-holder', '  - note: rod-holder'))).toEqual([
      'MISSING_KEY 13:5',
    ]);
  });
  it('is told of the name when a name is written', () => {
    const text = changed('  - seat', '  - The Seat');
    expect(found(text)).toEqual(['WRONG_TYPE 12:5']);
    expect(only(text)?.expected).toContain('small letters, digits and hyphens');
  });
  it('is told of both when it is neither', () => {
    const text = changed('  - seat', '  - true');
    expect(found(text)).toEqual(['WRONG_TYPE 12:5']);
    expect(only(text)?.expected).toContain('a block of fields');
    expect(found(changed('  - seat', '  -'))).toEqual(['WRONG_TYPE 12:4']);
  });
  it('is told of a position within it', () => {
    const at = (x: string): string => changed('quantity: 4', `at: { x: ${x}, z: 0 }`);
    expect(found(at('60 % length'))).toEqual([]);
    expect(found(at('-5% length'))).toEqual([]);
    expect(found(at('1.5 m'))).toEqual([]);
    expect(found(at('60 % lenght'))).toEqual(['WRONG_VALUE 14:14']);
    expect(found(at('60 % beam'))).toEqual(['WRONG_VALUE 14:14']);
    expect(only(at('60 % beam'))?.expected).toContain('60 % length');
    expect(found(at('20 kg'))).toEqual(['UNIT_KIND 14:14']);
    expect(found(at('16 m'))).toEqual(['OUT_OF_RANGE 14:14']);
    expect(found(changed('quantity: 4', 'at: { x: 1 }'))).toEqual(['MISSING_KEY 14:5']);
  });
});

describe('a mistake in a discount', () => {
  const with_ = (discount: string): string => `${ORDER}discount: ${discount}\n`;
  it('is told of the kind of discount that is nearest to what is written', () => {
    expect(found(with_('{ share: 5%, reason: Friend }'))).toEqual([]);
    expect(found(with_('{ amount: 500, reason: Friend }'))).toEqual([]);
    expect(found(with_('{ share: 5, reason: Friend }'))).toEqual(['WRONG_TYPE 16:20']);
    expect(found(with_('{ amount: 5x, reason: Friend }'))).toEqual(['WRONG_TYPE 16:21']);
    expect(found(with_('{ share: 5% }'))).toEqual(['MISSING_KEY 16:1']);
    expect(found(with_('{ share: 150%, reason: Friend }'))).toEqual(['OUT_OF_RANGE 16:20']);
  });
});

describe('many mistakes', () => {
  it('are all told at once, in the text and in the values', () => {
    const text = `number: T 1
status: quotd
dates:
  enquiry: 14/03/2026
customer: &c
  name: A
boat:
  use: Fishing
  people: 300
  people: 3
hull: tern-400
colour: red
`;
    expect(found(text).toSorted()).toEqual([
      'DUPLICATE_KEY 10:3',
      'OUT_OF_RANGE 9:11',
      'UNKNOWN_KEY 12:1',
      'WRONG_TYPE 1:9',
      'WRONG_TYPE 4:12',
      'WRONG_VALUE 2:9',
      'YAML_NOT_ALLOWED 6:3',
    ]);
  });
  it('never hold a word of the machine', () => {
    const text =
      'number:\nstatus: true\ndates: []\ncustomer: {}\nboat:\noptions: {}\nextras: [~]\ndiscount: {}\n';
    for (const { received, expected, remedy } of order(text).findings) {
      const said = `${received} ${expected ?? ''} ${remedy}`;
      expect(said).not.toMatch(/NaN|Infinity|undefined|null|\[object|Invalid/);
    }
  });
  it('keep what is received short', () => {
    const { findings } = order(changed('hull: tern-400', `hull: ${'X'.repeat(5000)}`));
    expect(findings[0]?.received.length).toBeLessThan(120);
    const { findings: quantity } = order(changed('20 L', 'X'.repeat(5000)));
    expect(quantity[0]?.received.length).toBeLessThan(120);
  });
});
