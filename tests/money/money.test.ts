import { Decimal as Oracle } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addMoney,
  currencyOf,
  type Currency,
  divideToMinorUnit,
  formatMoney,
  minorUnits,
  type Money,
  moneyOf,
  moneyToText,
  parseMoney,
  roundToMinorUnit,
  subtractMoney,
  sumMoney,
  timesDecimal,
  zeroMoney,
} from '../../src/money/index.ts';
import { type Decimal, decimalToText, ONE, parseDecimal } from '../../src/units/index.ts';

Oracle.set({ precision: 120, rounding: Oracle.ROUND_HALF_UP, toExpNeg: -99, toExpPos: 99 });

function currency(code: string): Currency {
  const found = currencyOf(code);
  if (!found) expect.fail(`${code} is a currency`);
  return found;
}
const AUD = currency('AUD');
const JPY = currency('JPY');
const KWD = currency('KWD');

const aud = (text: string): Money => parseMoney(text, AUD) ?? expect.fail(`${text} is an amount`);
const decimalOf = (text: string): Decimal => parseDecimal(text) ?? expect.fail(text);

const decimal = fc.record({
  amount: fc.bigInt({ min: -(10n ** 20n), max: 10n ** 20n }),
  scale: fc.bigInt({ min: 0n, max: 8n }),
});
const oracle = (value: Decimal): Oracle => new Oracle(decimalToText(value));

describe('money', () => {
  it('keeps what was typed until it is rounded, half away from zero', () => {
    const rounded = (text: string): string => moneyToText(roundToMinorUnit(aud(text)));
    expect(['1.005', '-1.005', '1.0049', '2.675', '-0.005', '12', '0.1'].map(rounded)).toEqual([
      '1.01',
      '-1.01',
      '1.00',
      '2.68',
      '-0.01',
      '12.00',
      '0.10',
    ]);
  });
  it('has the minor units of its currency', () => {
    expect(minorUnits(aud('12.345'))).toBe(1235n);
    expect(minorUnits(parseMoney('1250.5', JPY) ?? zeroMoney(JPY))).toBe(1251n);
    expect(minorUnits(parseMoney('1.2345', KWD) ?? zeroMoney(KWD))).toBe(1235n);
  });
  it('is not read from anything but a plain decimal', () => {
    for (const text of ['$5', '1,250.00', '1e3', '', 'five']) {
      expect(parseMoney(text, AUD)).toBeUndefined();
    }
  });
  it('is in a currency that exists and that counts in tenths', () => {
    for (const code of ['XQX', 'aud', 'constructor', '', 'MGA', 'MRU']) {
      expect(currencyOf(code)).toBeUndefined();
    }
  });
  it('adds, subtracts and multiplies exactly, and rounds once', () => {
    fc.assert(
      fc.property(decimal, decimal, (a, b) => {
        const cents = (value: Oracle): string =>
          value
            .toDecimalPlaces(2)
            .toFixed(2)
            .replace(/^-(0\.00)$/, '$1');
        const [x, y] = [moneyOf(a, AUD), moneyOf(b, AUD)];
        expect(moneyToText(addMoney(x, y))).toBe(cents(oracle(a).plus(oracle(b))));
        expect(moneyToText(subtractMoney(x, y))).toBe(cents(oracle(a).minus(oracle(b))));
        expect(moneyToText(timesDecimal(x, b))).toBe(cents(oracle(a).times(oracle(b))));
      }),
    );
  });
  it('divides to the minor unit, half away from zero', () => {
    expect(moneyToText(divideToMinorUnit(aud('100'), decimalOf('0.72')))).toBe('138.89');
    expect(moneyToText(divideToMinorUnit(aud('0.01'), decimalOf('2')))).toBe('0.01');
    expect(moneyToText(divideToMinorUnit(aud('-0.01'), decimalOf('2')))).toBe('-0.01');
    fc.assert(
      fc.property(
        decimal,
        decimal.filter(({ amount }) => amount !== 0n),
        (a, b) => {
          const expected = oracle(a).div(oracle(b)).times(100).toDecimalPlaces(0);
          const cents = minorUnits(divideToMinorUnit(moneyOf(a, AUD), b));
          expect(new Oracle(String(cents)).equals(expected)).toBe(true);
        },
      ),
    );
  });
  it('sums to zero of its currency when there is none', () => {
    expect(moneyToText(sumMoney([], AUD))).toBe('0.00');
    expect(moneyToText(sumMoney([aud('0.10'), aud('0.20'), aud('-0.3')], AUD))).toBe('0.00');
  });
  it('is unchanged by one', () => {
    expect(moneyToText(timesDecimal(aud('19.99'), ONE))).toBe('19.99');
  });
});

describe('printed money', () => {
  it('is in the form of the locale', () => {
    expect(formatMoney(aud('61234.5'), 'en-AU')).toBe('$61,234.50');
    expect(formatMoney(aud('-0.005'), 'en-AU')).toBe('−$0.01');
    expect(formatMoney(parseMoney('1250', JPY) ?? zeroMoney(JPY), 'en-AU')).toBe('¥1,250');
  });
  it('is exact to the cent however large it is', () => {
    expect(formatMoney(aud('123456789012345678901234567890.12'), 'en-AU')).toBe(
      '$123,456,789,012,345,678,901,234,567,890.12',
    );
    fc.assert(
      fc.property(fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n }), (amount) => {
        const printed = formatMoney(moneyOf({ amount, scale: 2n }, AUD), 'en-AU');
        expect(BigInt(printed.replaceAll(/[$,.]/g, '').replace('−', '-'))).toBe(amount);
      }),
    );
  });
});
