import { addDays, daysBetween, type IsoDate, weekdayOf, type NotComputed } from '../units/index.ts';

const HOURS_IN_A_DAY = 24;
/** Two times nearer than this, in hours, are the same. */
const SAME = 1e-9;

/** When the shop works. */
export interface CalendarSettings {
  /** Day from whose midnight the plan counts its hours. */
  readonly origin: IsoDate;
  /** 1 Monday to 7 Sunday. */
  readonly workdays: readonly number[];
  /** Hour of the day at which work starts. */
  readonly startsAt: number;
  readonly hoursADay: number;
  readonly holidays: readonly IsoDate[];
}

/** Hours are counted from midnight of the plan's first day, nights and weekends included. */
export interface WorkCalendar {
  readonly hoursADay: number;
  /** The earliest moment at or after a moment at which somebody works. */
  readonly nextWork: (hour: number) => number;
  /** The start of work on the first workday after the day of a moment. */
  readonly nextDay: (hour: number) => number;
  /** The end of so many hours of work that start at a moment of work. */
  readonly finish: (start: number, hours: number) => number;
  /** Hours of work left in the day of a moment of work. */
  readonly leftToday: (hour: number) => number;
  /** The day in which a moment lies; midnight belongs to the day that ends. */
  readonly dateOf: (hour: number) => IsoDate;
  /** Midnight at the start of a day. */
  readonly hourOf: (date: IsoDate) => number;
}

/**
 * The shop's calendar.
 *
 * @returns the calendar; `notComputed` when nobody would ever work
 */
export function createCalendar(settings: CalendarSettings): WorkCalendar | NotComputed {
  const { origin, startsAt, hoursADay } = settings;
  const workdays = new Set(settings.workdays.filter((day) => [1, 2, 3, 4, 5, 6, 7].includes(day)));
  const holidays = new Set<string>(settings.holidays);
  if (!(startsAt >= 0 && hoursADay > 0 && startsAt + hoursADay <= HOURS_IN_A_DAY)) {
    return { notComputed: 'the working day must lie within one day' };
  }
  if (workdays.size === 0) return { notComputed: 'no day of the week is a workday' };

  const known = new Map<number, boolean>();
  const works = (day: number): boolean => {
    const before = known.get(day);
    if (before !== undefined) return before;
    const date = addDays(origin, day);
    const answer = workdays.has(weekdayOf(date)) && !holidays.has(date);
    known.set(day, answer);
    return answer;
  };
  const opensOn = (from: number): number => {
    let day = from;
    while (!works(day)) day += 1;
    return day * HOURS_IN_A_DAY + startsAt;
  };
  const closes = (hour: number): number => dayOf(hour) * HOURS_IN_A_DAY + startsAt + hoursADay;
  const nextDay = (hour: number): number => opensOn(dayOf(hour) + 1);
  const nextWork = (hour: number): number => {
    const opens = opensOn(dayOf(hour));
    if (opens >= hour) return opens;
    return hour < closes(hour) - SAME ? hour : nextDay(hour);
  };
  const finish = (start: number, hours: number): number => {
    let at = start;
    let left = hours;
    for (let room = closes(at) - at; left > room + SAME; room = closes(at) - at) {
      left -= room;
      at = nextWork(closes(at));
    }
    return at + left;
  };
  return {
    hoursADay,
    nextWork,
    nextDay,
    finish,
    leftToday: (hour) => closes(hour) - hour,
    dateOf: (hour) => addDays(origin, Math.max(0, dayOf(hour - SAME))),
    hourOf: (date) => daysBetween(origin, date) * HOURS_IN_A_DAY,
  };
}

const dayOf = (hour: number): number => Math.floor(hour / HOURS_IN_A_DAY);
