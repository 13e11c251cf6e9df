import type { CustomerBuild } from '../../figures/index.ts';
import { addDays, formatDate } from '../../units/index.ts';
import type { Field, Standing } from '../blocks/block.ts';

/**
 * Whether the quote is a draft, an offer or closed: in a word, and in a sentence. Only what is issued is an offer, for
 * only that cannot move.
 */
export function quoteStanding(
  { order, yard }: CustomerBuild,
  revision: number | undefined,
): Standing {
  const { dates, status } = order;
  if (status === 'closed') {
    return {
      kind: 'closed',
      word: 'Closed',
      sentence: 'This quote is closed and no longer an offer. Ask us for a new one.',
    };
  }
  if (dates.quoted === undefined || revision === undefined || status === 'enquiry') {
    return {
      kind: 'draft',
      word: 'Draft',
      sentence: 'A draft, not yet an offer: items and prices may still change.',
    };
  }
  const until = formatDate(addDays(dates.quoted, yard.quoteDays), yard.locale);
  return {
    kind: 'offer',
    word: 'Offer',
    sentence: `This offer is open until ${until}. After that day, ask us to confirm it.`,
  };
}

/** Number and dates at the head of the quote. */
export function quoteFacts(
  { order, yard }: CustomerBuild,
  { kind }: Standing,
  revision: number | undefined,
): readonly Field[] {
  const { enquiry, quoted } = order.dates;
  const day = (date: typeof enquiry): string => formatDate(date, yard.locale);
  return [
    { label: 'Number', value: order.number },
    ...(revision === undefined ? [] : [{ label: 'Revision', value: `${revision}` }]),
    quoted === undefined
      ? { label: 'Enquiry', value: day(enquiry) }
      : { label: 'Date', value: day(quoted) },
    ...(quoted !== undefined && kind === 'offer'
      ? [{ label: 'Valid until', value: day(addDays(quoted, yard.quoteDays)) }]
      : []),
  ];
}
