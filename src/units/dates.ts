/** A calendar date, `YYYY-MM-DD` (ISO 8601), checked to exist. Comparing two as text compares them as dates. */
export type IsoDate = string & { readonly isoDate: true };

/** Reads a date; undefined when it is not written YYYY-MM-DD or no such day exists. */
export function parseIsoDate(text: string): IsoDate | undefined {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined;
  const days = dayNumber(text);
  return textOfDay(days) === text ? (text as IsoDate) : undefined;
}

/** The date a number of days later (earlier when negative). */
export function addDays(date: IsoDate, days: number): IsoDate {
  return textOfDay(dayNumber(date) + days) as IsoDate;
}

/** Days from one date to another: positive when `to` is later. */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return dayNumber(to) - dayNumber(from);
}

/** The day of the week, 1 Monday to 7 Sunday (ISO 8601). */
export function weekdayOf(date: IsoDate): number {
  // 1970-01-01 was a Thursday.
  const sinceMonday = (dayNumber(date) + 3) % 7;
  return ((sinceMonday + 7) % 7) + 1;
}

/** "14 March 2026" in the locale's own order, for a reader of the document. */
export function formatDate(date: IsoDate, locale: string): string {
  const format = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
  return format.format(dayNumber(date) * 86_400_000);
}

/** "Wed 25 Nov" in the locale's own order and words, for a sheet whose year is plain. */
export function formatDay(date: IsoDate, locale: string): string {
  return shortDay(date, locale, { weekday: 'short', day: 'numeric', month: 'short' });
}

/** "25 Nov" in the locale's own order and words. */
export function formatDayOfMonth(date: IsoDate, locale: string): string {
  return shortDay(date, locale, { day: 'numeric', month: 'short' });
}

function shortDay(date: IsoDate, locale: string, parts: Intl.DateTimeFormatOptions): string {
  const format = new Intl.DateTimeFormat(locale, { ...parts, timeZone: 'UTC' });
  return format.format(dayNumber(date) * 86_400_000).replace(',', '');
}

/**
 * Days since 1970-01-01 in the proleptic Gregorian calendar.
 *
 * @source derived: years counted from March make the leap day the last of the year, months then follow
 * the 153-days-in-5-months pattern; 400 years have 146,097 days.
 */
function dayNumber(text: string): number {
  const [year = 0, month = 1, day = 1] = text.split('-').map(Number);
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}

function textOfDay(days: number): string {
  const shifted = days + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1;
  const month = shiftedMonth + (shiftedMonth < 10 ? 3 : -9);
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`;
}

const pad = (value: number, width: number): string => String(value).padStart(width, '0');
