import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createCalendar, type WorkCalendar } from '../../src/plan/index.ts';
import { type IsoDate, weekdayOf } from '../../src/units/index.ts';
import { CALENDAR, day } from './shop.ts';

const made = createCalendar(CALENDAR);
const calendar = made as WorkCalendar;

describe('the day of the week', () => {
  it.each([
    ['1970-01-01', 4],
    ['2000-02-29', 2],
    ['2026-03-02', 1],
    ['1969-12-28', 7],
  ])('of %s is %d', (date, weekday) => expect(weekdayOf(date as IsoDate)).toBe(weekday));
});

describe('the shop’s calendar', () => {
  it('starts work at seven, and goes on the next morning what is not over at three', () => {
    expect(calendar.nextWork(0)).toBe(7);
    expect(calendar.finish(7, 8)).toBe(15);
    expect(calendar.finish(7, 9)).toBe(24 + 8);
    expect(calendar.nextWork(15)).toBe(24 + 7);
  });

  it('rests at the weekend and over Easter', () => {
    const friday = 4 * 24;
    expect(calendar.finish(friday + 14, 2)).toBe(7 * 24 + 8);
    const maundyThursday = 31 * 24;
    expect(calendar.dateOf(maundyThursday + 12)).toBe('2026-04-02');
    expect(calendar.nextWork(maundyThursday + 15)).toBe(calendar.hourOf(day(36)) + 7);
    expect(day(36)).toBe('2026-04-07');
  });

  it('counts midnight to the day that ends', () => {
    expect(calendar.dateOf(24)).toBe(day(0));
    expect(calendar.dateOf(25)).toBe(day(1));
    expect(calendar.dateOf(0)).toBe(day(0));
  });

  it('takes exactly as many hours of work as are asked, wherever they start', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 2000 }),
        fc.integer({ min: 0, max: 90 }),
        (at, hours) => {
          const start = calendar.nextWork(at);
          const first = calendar.finish(start, hours);
          expect(calendar.finish(calendar.nextWork(first), 3)).toBe(
            calendar.finish(start, hours + 3),
          );
        },
      ),
    );
  });

  it('is none when nobody would ever work', () => {
    for (const bad of [
      { workdays: [] },
      { workdays: [8] },
      { workdays: [1.5, Number.NaN] },
      { hoursADay: 0 },
      { startsAt: 20 },
      { hoursADay: Number.NaN },
    ]) {
      expect(createCalendar({ ...CALENDAR, ...bad })).toHaveProperty('notComputed');
    }
  });
});
