import { type Finding, finding } from '../findings/index.ts';
import { currencyCode } from '../money/index.ts';
import type { Catalogue, SourcedOrder, Yard } from '../schema/index.ts';
import {
  daysBetween,
  decimalToNumber,
  decimalToText,
  formatterOf,
  type IsoDate,
} from '../units/index.ts';
import type { BuildItem } from './build.ts';
import { type DatedParts, exchangeOn } from './dated.ts';

const MAX_NAMED = 3;

/** A warning for every part of an order whose price was too old on the day that the order is priced for. */
export function checkPriceAges(
  items: readonly BuildItem[],
  pricedOn: IsoDate,
  { parts }: DatedParts,
  { priceAge }: Yard,
): readonly Finding[] {
  return codesOf(items).flatMap((code) => {
    const part = parts.get(code);
    if (!part) return [];
    const age = daysBetween(part.value.price_date, pricedOn);
    if (age <= priceAge) return [];
    return [
      finding('PART_PRICE_OLD', part.place(['price_date']), {
        received: `${code} ${part.value.description}: ${age} days old on ${pricedOn}`,
        expected: `at most ${priceAge} days`,
      }),
    ];
  });
}

/** A warning for every part whose price is far from that of the row before it: a slip of the pen, until it is confirmed. */
export function checkPriceJumps(
  items: readonly BuildItem[],
  { parts }: DatedParts,
  { partRows, yard }: Pick<Catalogue, 'partRows' | 'yard'>,
): readonly Finding[] {
  const most = decimalToNumber(yard.value.priceJump);
  const format = formatterOf(yard.value);
  return codesOf(items).flatMap((code) => {
    const part = parts.get(code);
    const rows = partRows.get(code) ?? [];
    const before = part && rows[rows.indexOf(part) - 1];
    if (!part || !before || before.value.currency !== part.value.currency) return [];
    const [was, now] = [before, part].map(({ value }) => decimalToNumber(value.cost));
    if (was === undefined || now === undefined || Math.abs(now - was) <= most * was) return [];
    return [
      finding('PART_PRICE_JUMP', part.place(['cost']), {
        received: `${code} ${decimalToText(part.value.cost)}, and ${decimalToText(before.value.cost)} on ${before.value.price_date}`,
        expected: `within ${format.percent(most, 0)} of the row before`,
      }),
    ];
  });
}

/** One note when parts of an order have no price of its day: their earliest price stands in. */
export function checkLaterPrices(
  items: readonly BuildItem[],
  pricedOn: IsoDate,
  { later }: DatedParts,
  order: SourcedOrder,
): readonly Finding[] {
  const codes = codesOf(items).filter((code) => later.has(code));
  if (codes.length === 0) return [];
  const more = codes.length - MAX_NAMED;
  return [
    finding('PART_PRICE_LATER', order.place(['dates']), {
      received: `${codes.slice(0, MAX_NAMED).join(', ')}${more > 0 ? ` and ${more} more` : ''}`,
      expected: `a row dated ${pricedOn} or before`,
    }),
  ];
}

/** Findings for the rates of the currencies that an order buys in: too old on its day, or later than it. */
export function checkExchange(
  items: readonly BuildItem[],
  pricedOn: IsoDate,
  yard: Yard,
  order: SourcedOrder,
): readonly Finding[] {
  const bought = new Set(
    items.flatMap(({ parts }) => parts.map(({ unitCost }) => currencyCode(unitCost))),
  );
  return Object.values(exchangeOn(pricedOn, yard))
    .filter(({ currency }) => bought.has(currency))
    .flatMap(({ currency, date }) => {
      const age = daysBetween(date, pricedOn);
      if (age >= 0 && age <= yard.priceAge) return [];
      return [
        finding('EXCHANGE_DATE', order.place(['dates']), {
          received: `${currency} of ${date}, on ${pricedOn}`,
          expected: `a rate of that day or at most ${yard.priceAge} days before`,
        }),
      ];
    });
}

const codesOf = (items: readonly BuildItem[]): readonly string[] => [
  ...new Set(items.flatMap((item) => item.parts.map((part) => part.code))),
];
