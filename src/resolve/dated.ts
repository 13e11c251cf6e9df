import type { Exchange } from './build.ts';
import type { Catalogue, ListedPart, SourcedOrder, Yard } from '../schema/index.ts';
import type { IsoDate } from '../units/index.ts';

/** The day whose prices an order has: its quote's, or its enquiry's while there is no quote. */
export function pricedOn({ value: { dates } }: SourcedOrder): IsoDate {
  return dates.quoted ?? dates.enquiry;
}

/** Price lists as they stood on a day. */
export interface DatedParts {
  readonly parts: ReadonlyMap<string, ListedPart>;
  /** Codes without a row of that day or before: their earliest row stands in. */
  readonly later: ReadonlySet<string>;
}

/** Of each code the newest row that is not later than a day; the earliest where every row is later. */
export function partsOn(day: IsoDate, { partRows }: Pick<Catalogue, 'partRows'>): DatedParts {
  const parts = new Map<string, ListedPart>();
  const later = new Set<string>();
  for (const [code, rows] of partRows) {
    const row = rows.findLast(({ value }) => value.price_date <= day) ?? rows[0];
    if (!row) continue;
    parts.set(code, row);
    if (row.value.price_date > day) later.add(code);
  }
  return { parts, later };
}

/** Of each currency the newest rate that is not later than a day; the earliest where every rate is later. */
export function exchangeOn(day: IsoDate, { exchange }: Yard): Readonly<Record<string, Exchange>> {
  const byDay = exchange.toSorted((a, b) => (a.date < b.date ? -1 : 1));
  const currencies = [...new Set(byDay.map(({ currency }) => currency))];
  return Object.fromEntries(
    currencies.flatMap((currency) => {
      const rows = byDay.filter((row) => row.currency === currency);
      const row = rows.findLast(({ date }) => date <= day) ?? rows[0];
      return row ? [[currency, row] as const] : [];
    }),
  );
}
