import { formatDay, type IsoDate } from '../units/index.ts';

/** First and last day of each stage that is planned. */
export type PlannedDays = ReadonlyMap<string, { readonly starts: IsoDate; readonly ends: IsoDate }>;

/** "Mon 7 Dec" or "Mon 7 Dec to Fri 11 Dec"; empty when the stage is not planned. */
export function daysText(stage: string, planned: PlannedDays, locale: string): string {
  const days = planned.get(stage);
  if (!days) return '';
  const starts = formatDay(days.starts, locale);
  return days.ends === days.starts ? starts : `${starts} to ${formatDay(days.ends, locale)}`;
}
