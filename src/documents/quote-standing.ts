import type { Build } from '../resolve/index.ts';
import { addDays, formatDate } from '../units/index.ts';
import type { Fact, QuoteView } from './quote-types.ts';

export type Standing = QuoteView['standing'];

/** Whether the quote is a draft, an offer, agreed or closed: in a word, and in a sentence. */
export function quoteStanding({ order, yard }: Build): Standing {
  const { dates, status } = order;
  const day = (date: NonNullable<typeof dates.quoted>): string => formatDate(date, yard.locale);
  if (status === 'closed') {
    return {
      kind: 'closed',
      word: 'Closed',
      sentence: 'This quote is closed and no longer an offer. Ask us for a new one.',
    };
  }
  if (dates.quoted === undefined || status === 'enquiry') {
    return {
      kind: 'draft',
      word: 'Draft',
      sentence: 'A draft, not yet an offer: items and prices may still change.',
    };
  }
  if (status === 'quoted' || dates.accepted === undefined) {
    return {
      kind: 'offer',
      word: 'Offer',
      sentence: `This offer is open until ${day(addDays(dates.quoted, yard.quoteDays))}. After that day, ask us to confirm it.`,
    };
  }
  const handed =
    dates.handedOver === undefined ? '' : ` The boat was handed over on ${day(dates.handedOver)}.`;
  return {
    kind: 'agreed',
    word: 'Agreed',
    sentence: `Accepted on ${day(dates.accepted)}: this is the price agreed.${handed}`,
  };
}

/** Number and dates at the head of the quote. */
export function quoteFacts({ order, yard }: Build, revision: number | undefined): readonly Fact[] {
  const { enquiry, quoted, accepted, promised } = order.dates;
  const day = (date: typeof enquiry): string => formatDate(date, yard.locale);
  return [
    { label: 'Number', value: order.number },
    ...(revision === undefined ? [] : [{ label: 'Revision', value: `${revision}` }]),
    quoted === undefined
      ? { label: 'Enquiry', value: day(enquiry) }
      : { label: 'Date', value: day(quoted) },
    ...(quoted !== undefined && accepted === undefined
      ? [{ label: 'Valid until', value: day(addDays(quoted, yard.quoteDays)) }]
      : []),
    ...(accepted === undefined ? [] : [{ label: 'Accepted', value: day(accepted) }]),
    ...(promised === undefined ? [] : [{ label: 'Ready', value: day(promised) }]),
  ];
}
