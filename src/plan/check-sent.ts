import type { FiguredOrder } from '../figures/index.ts';
import { type Finding, finding } from '../findings/index.ts';
import type { IssuedQuote } from '../issued/index.ts';
import {
  exactText,
  isZero,
  type Money,
  moneyOf,
  moneyToText,
  subtractMoney,
} from '../money/index.ts';
import type { Status } from '../schema/index.ts';

/** Statuses in which the customer holds an offer that they have not signed yet. */
const OFFERED: ReadonlySet<Status> = new Set(['quoted']);

/**
 * What was sent and signed, against the order as it stands.
 *
 * @param issued - the order's quotes as they were sent, first revision first
 */
export function checkSent(entry: FiguredOrder, issued: readonly IssuedQuote[]): readonly Finding[] {
  return [
    ...checkOffer(entry, issued),
    ...checkAcceptance(entry, issued),
    ...checkVariations(entry),
  ];
}

/** That an offer was never frozen, or that it says another price than the order has. */
function checkOffer(
  { order, quoted }: FiguredOrder,
  issued: readonly IssuedQuote[],
): readonly Finding[] {
  const { status, number } = order.value;
  if (!OFFERED.has(status)) return [];
  const last = issued.at(-1);
  if (!last)
    return [
      finding('QUOTE_NOT_ISSUED', order.place(['status']), {
        received: status,
        mend: `Run: npm run orlop -- issue ${number}`,
      }),
    ];
  if (!quoted) return [];
  const [was, now] = [last.figures.price.driveAway, quoted.price.driveAway];
  if (same(now, was)) return [];
  return [
    finding('QUOTE_DIFFERS', order.place(['number']), {
      received: `${moneyToText(was)} in revision ${last.revision}`,
      expected: `${moneyToText(now)}, as the order is now`,
    }),
  ];
}

function checkAcceptance(
  { order }: FiguredOrder,
  issued: readonly IssuedQuote[],
): readonly Finding[] {
  const revision = order.value.acceptance?.revision;
  if (revision === undefined || issued.some((quote) => quote.revision === revision)) return [];
  const known = issued.map((quote) => quote.revision).join(', ');
  return [
    finding('REVISION_NOT_ISSUED', order.place(['acceptance', 'revision']), {
      received: `revision ${revision}`,
      expected: known === '' ? 'a revision; none was issued' : `one of ${known}`,
    }),
  ];
}

function checkVariations({ order, quoted, variations }: FiguredOrder): readonly Finding[] {
  return variations.flatMap(({ variation, differences }, index) => {
    const signed = variation.agreed?.price;
    if (!signed || !differences || !quoted) return [];
    const price = moneyOf(signed, quoted.build.currency);
    if (same(price, differences.driveAway)) return [];
    return [
      finding('VARIATION_DIFFERS', order.place(['variations', index, 'agreed', 'price']), {
        received: exactText(price),
        expected: `${moneyToText(differences.driveAway)}, as computed today`,
      }),
    ];
  });
}

const same = (a: Money, b: Money): boolean => isZero(subtractMoney(a, b));
