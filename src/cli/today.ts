import { type IsoDate, parseIsoDate } from '../units/index.ts';

/** This day where the user is; ORLOP_TODAY (YYYY-MM-DD) stands in for it, so that a build can be made again. */
export function today(
  env: Readonly<Record<string, string | undefined>> = process.env,
  now: Date = new Date(),
): IsoDate {
  const named = env['ORLOP_TODAY'];
  const text = named ?? `${now.getFullYear()}-${pad(now.getMonth() + 1)}-${pad(now.getDate())}`;
  const day = parseIsoDate(text);
  if (!day) throw new Error(`ORLOP_TODAY is "${text}", which is not a day written YYYY-MM-DD`);
  return day;
}

const pad = (value: number): string => String(value).padStart(2, '0');
