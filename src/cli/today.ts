import { type IsoDate, parseIsoDate } from '../units/index.ts';

/** The day of this machine's clock where the user is. */
export function clockDay(now: Date = new Date()): IsoDate {
  const text = `${now.getFullYear()}-${pad(now.getMonth() + 1)}-${pad(now.getDate())}`;
  const day = parseIsoDate(text);
  if (!day) throw new Error(`The clock of this machine says ${text}, which is no day`);
  return day;
}

/** This day; ORLOP_TODAY (YYYY-MM-DD) stands in for it, so that a build can be made again. Nothing is issued by it. */
export function today(
  env: Readonly<Record<string, string | undefined>> = process.env,
  now: Date = new Date(),
): IsoDate {
  const named = env['ORLOP_TODAY'];
  if (named === undefined) return clockDay(now);
  const day = parseIsoDate(named);
  if (!day) throw new Error(`ORLOP_TODAY is "${named}", which is not a day written YYYY-MM-DD`);
  return day;
}

const pad = (value: number): string => String(value).padStart(2, '0');
