import type { ShopPlan } from '../../plan/index.ts';
import { formatDate, type IsoDate } from '../../units/index.ts';

/** What the drawing of a plan shows, in sentences. */
export function planInWords(
  shop: ShopPlan,
  boats: ReadonlyMap<string, string>,
  locale: string,
): string {
  const day = (date: IsoDate): string => formatDate(date, locale);
  const orders = shop.orders.map(
    ({ number, starts, ends, promised }) =>
      `${number}, ${boats.get(number) ?? 'a boat'}, from ${day(starts)} to ${day(ends)}${promised === undefined ? '' : `, promised for ${day(promised)}`}.`,
  );
  const offers = shop.offers.flatMap((offer) =>
    'promise' in offer
      ? [
          `${offer.number}, ${boats.get(offer.number) ?? 'a boat'}, if accepted today: from ${day(offer.days.starts)} to ${day(offer.days.ends)}, can be promised for ${day(offer.promise)}.`,
        ]
      : [],
  );
  const moulds = shop.plan.moulds
    .filter(({ start, end }) => end > start)
    .map(
      ({ mould, order, start, end }) =>
        `${order} is in the {mould} of the ${shop.names.moulds[mould] ?? mould} from ${day(shop.calendar.dateOf(start + 1e-6))} to ${day(shop.calendar.dateOf(end))}.`,
    );
  const count = `${orders.length} order${orders.length === 1 ? '' : 's'}`;
  return [`The plan of ${count} as bars over weeks.`, ...orders, ...offers, ...moulds].join(' ');
}
