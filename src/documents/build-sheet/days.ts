import { formatDate, formatDay, type IsoDate } from '../../units/index.ts';

/** What the plan of one day says of an order's stages. */
export interface PlannedDays {
  readonly asOf: IsoDate;
  /** First and last day of each stage that is planned. */
  readonly stages: ReadonlyMap<string, { readonly starts: IsoDate; readonly ends: IsoDate }>;
}

/** "Mon 7 Dec" or "Mon 7 Dec to Fri 11 Dec"; empty when the stage is not planned. */
export function daysText(stage: string, planned: PlannedDays | undefined, locale: string): string {
  const days = planned?.stages.get(stage);
  if (!days) return '';
  const starts = formatDay(days.starts, locale);
  return days.ends === days.starts ? starts : `${starts} to ${formatDay(days.ends, locale)}`;
}

/** That a plan moves. */
export function daysNote(planned: PlannedDays, locale: string): string {
  return `Days as planned on ${formatDate(planned.asOf, locale)}; a later plan may move them.`;
}
