import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  daysBetween,
  formatDate,
  formatDay,
  formatDayOfMonth,
  type IsoDate,
  parseIsoDate,
} from '../../src/units/index.ts';

const DAY = 86_400_000;
const iso = (time: number): string => new Date(time).toISOString().slice(0, 10);
const first = Date.UTC(1800, 0, 1) / DAY;
const last = Date.UTC(2200, 0, 1) / DAY;
const day = fc.integer({ min: first, max: last });

const dateOf = (text: string): IsoDate => parseIsoDate(text) ?? expect.fail(`${text} is a date`);

describe('a date', () => {
  it('is read when the day exists, on every day of 400 years', () => {
    const days = Array.from({ length: last - first }, (_, index) => iso((first + index) * DAY));
    expect(days.filter((text) => parseIsoDate(text) !== text)).toEqual([]);
  });
  it.each([
    '2026-02-29',
    '1900-02-29',
    '2026-04-31',
    '2026-13-01',
    '2026-00-10',
    '2026-01-00',
    '2026-1-5',
    '14/03/2026',
    '2026-03-14T10:00',
    ' 2026-03-14',
    '',
  ])('is not read from %j', (text) => {
    expect(parseIsoDate(text)).toBeUndefined();
  });
  it('is read in a leap year that the century rule spares', () => {
    expect(parseIsoDate('2000-02-29')).toBe('2000-02-29');
  });
  it('moves by days as the calendar does', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: -150_000, max: 150_000 }), (start, days) => {
        expect(addDays(dateOf(iso(start * DAY)), days)).toBe(iso((start + days) * DAY));
      }),
    );
  });
  it('is as many days from another as the calendar has', () => {
    fc.assert(
      fc.property(day, day, (from, to) => {
        expect(daysBetween(dateOf(iso(from * DAY)), dateOf(iso(to * DAY)))).toBe(to - from);
      }),
    );
  });
  it('is printed in the order of the locale, the same in any time zone', () => {
    expect(formatDate(dateOf('2026-03-14'), 'en-AU')).toBe('14 March 2026');
    expect(formatDate(dateOf('2026-03-14'), 'en-US')).toBe('March 14, 2026');
    expect(formatDay(dateOf('2026-03-14'), 'en-AU')).toBe('Sat 14 Mar');
    expect(formatDay(dateOf('2026-03-14'), 'en-US')).toBe('Sat Mar 14');
    expect(formatDayOfMonth(dateOf('2026-03-14'), 'en-AU')).toBe('14 Mar');
  });
});
