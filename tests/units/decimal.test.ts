import { Decimal as Oracle } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDecimals,
  compareDecimals,
  type Decimal,
  decimalOfMeasure,
  decimalToNumber,
  decimalToShortText,
  decimalToText,
  divideHalfAway,
  multiplyDecimals,
  parseDecimal,
  parsePercent,
  roundDecimal,
  subtractDecimals,
} from '../../src/units/index.ts';

Oracle.set({ precision: 100, rounding: Oracle.ROUND_HALF_UP, toExpNeg: -99, toExpPos: 99 });

const decimal = fc.record({
  amount: fc.bigInt({ min: -(10n ** 24n), max: 10n ** 24n }),
  scale: fc.bigInt({ min: 0n, max: 12n }),
});
const oracle = (value: Decimal): Oracle => new Oracle(decimalToText(value));
const same = (value: Decimal, expected: Oracle): void => {
  expect(oracle(value).equals(expected)).toBe(true);
};

describe('a decimal', () => {
  it('is read as typed, with its scale', () => {
    expect(parseDecimal('12.50')).toEqual({ amount: 1250n, scale: 2n });
    expect(parseDecimal(' -0.005 ')).toEqual({ amount: -5n, scale: 3n });
    expect(parseDecimal('+7')).toEqual({ amount: 7n, scale: 0n });
  });
  it.each(['', '1,5', '1e3', '.5', '5.', '0x1F', '1 000', 'one', '1.1234567890123456789', '٣'])(
    'is not read from %j',
    (text) => {
      expect(parseDecimal(text)).toBeUndefined();
    },
  );
  it('comes back from its own text', () => {
    fc.assert(
      fc.property(decimal, (value) => {
        expect(parseDecimal(decimalToText(value))).toEqual(value);
      }),
    );
  });
  it('adds, subtracts, multiplies and compares exactly', () => {
    fc.assert(
      fc.property(decimal, decimal, (a, b) => {
        same(addDecimals(a, b), oracle(a).plus(oracle(b)));
        same(subtractDecimals(a, b), oracle(a).minus(oracle(b)));
        same(multiplyDecimals(a, b), oracle(a).times(oracle(b)));
        expect(compareDecimals(a, b)).toBe(oracle(a).comparedTo(oracle(b)));
      }),
    );
  });
  it('rounds half away from zero', () => {
    const round = (text: string, places: number): string =>
      decimalToText(roundDecimal(parseDecimal(text) ?? { amount: 0n, scale: 0n }, places));
    expect(['2.5', '-2.5', '2.4999', '-0.5', '0.05'].map((text) => round(text, 0))).toEqual([
      '3',
      '-3',
      '2',
      '-1',
      '0',
    ]);
    expect(round('1.005', 2)).toBe('1.01');
    expect(round('1', 2)).toBe('1.00');
    fc.assert(
      fc.property(decimal, fc.integer({ min: 0, max: 14 }), (value, places) => {
        same(roundDecimal(value, places), oracle(value).toDecimalPlaces(places));
      }),
    );
  });
  it('divides integers half away from zero, whatever the signs', () => {
    fc.assert(
      fc.property(
        fc.bigInt(),
        fc.bigInt().filter((value) => value !== 0n),
        (top, bottom) => {
          const expected = new Oracle(String(top)).div(String(bottom)).toDecimalPlaces(0);
          expect(new Oracle(String(divideHalfAway(top, bottom))).equals(expected)).toBe(true);
        },
      ),
    );
  });
  it('is written short without the zeros at its end', () => {
    const short = (text: string): string =>
      decimalToShortText(parseDecimal(text) ?? { amount: 0n, scale: 0n });
    expect(['12.50', '3.000', '100', '-0.10', '0.00'].map(short)).toEqual([
      '12.5',
      '3',
      '100',
      '-0.1',
      '0',
    ]);
  });
  it('is the nearest number for physics', () => {
    fc.assert(
      fc.property(decimal, (value) => {
        expect(decimalToNumber(value)).toBe(oracle(value).toNumber());
      }),
    );
  });
});

describe('a percentage', () => {
  it('is read with its sign as a fraction', () => {
    expect(parsePercent('12.5 %')).toEqual({ amount: 125n, scale: 3n });
    expect(parsePercent('100%')).toEqual({ amount: 100n, scale: 2n });
  });
  it.each(['12.5', '%', '12,5%', '5%%', '5 % off', ''])('is not read from %j', (text) => {
    expect(parsePercent(text)).toBeUndefined();
  });
});

describe('a measure as a decimal', () => {
  it('is rounded half away from zero as it is written', () => {
    const text = (value: number, places: number): string =>
      decimalToText(decimalOfMeasure(value, places));
    expect(text(1.005, 2)).toBe('1.01');
    expect(text(-1.005, 2)).toBe('-1.01');
    expect(text(2.5, 0)).toBe('3');
    expect(text(0, 3)).toBe('0.000');
    expect(text(12.345678, 4)).toBe('12.3457');
  });
});
