import { type FiguredOrder, moneyChange } from '../figures/index.ts';
import { type Finding, finding } from '../findings/index.ts';
import type { Account, IssuedQuote } from '../issued/index.ts';
import {
  exactText,
  formatMoney,
  isNegative,
  isZero,
  type Money,
  moneyOf,
  moneyToText,
  subtractMoney,
  sumMoney,
} from '../money/index.ts';
import type { Status } from '../schema/index.ts';

/** Statuses in which the customer holds an offer that they have not signed yet. */
const OFFERED: ReadonlySet<Status> = new Set(['quoted']);

/**
 * What was sent and signed, against the order as it stands.
 *
 * @param issued - the order's quotes as they were sent, first revision first
 * @param expired - an offer that has run out may say what it likes
 */
export function checkSent(
  entry: FiguredOrder,
  issued: readonly IssuedQuote[],
  expired: boolean,
): readonly Finding[] {
  return [...checkOffer(entry, issued, expired), ...checkVariations(entry)];
}

/** That an offer was never frozen, or that it says another price than the order has. */
function checkOffer(
  { order, quoted }: FiguredOrder,
  issued: readonly IssuedQuote[],
  expired: boolean,
): readonly Finding[] {
  const { status, number } = order.value;
  if (!OFFERED.has(status)) return [];
  const last = issued.at(-1);
  if (!last)
    return [
      finding('QUOTE_NOT_ISSUED', order.place(['status']), {
        received: status,
        remedy: `Run: npm run orlop -- issue ${number}`,
      }),
    ];
  if (!quoted || expired) return [];
  const [was, now] = [last.price.driveAway, quoted.price.driveAway];
  if (same(now, was)) return [];
  return [
    finding('QUOTE_DIFFERS', order.place(['number']), {
      received: `${moneyToText(was)} in revision ${last.revision}`,
      expected: `${moneyToText(now)}, as the order is now`,
    }),
  ];
}

function checkVariations({ order, quoted, variations }: FiguredOrder): readonly Finding[] {
  return variations.flatMap(({ variation, differences }, index) => {
    const signed = variation.agreed?.price;
    if (signed === undefined || !differences || !quoted) return [];
    const price = moneyOf(signed, quoted.build.currency);
    const computed = moneyChange(differences.driveAway);
    if (same(price, computed)) return [];
    return [
      finding('VARIATION_DIFFERS', order.place(['variations', index, 'agreed', 'price']), {
        received: exactText(price),
        expected: `${moneyToText(computed)}, as computed today`,
      }),
    ];
  });
}

/** That more was received than there is to pay. */
export function checkPaid(entry: FiguredOrder, account: Account | undefined): readonly Finding[] {
  const { order, figures } = entry;
  if (!figures) return [];
  const { build, price } = figures;
  const { tradeIn, paid } = order.value;
  const given = [...(tradeIn ? [tradeIn.value] : []), ...paid.map(({ amount }) => amount)];
  const received = sumMoney(
    given.map((amount) => moneyOf(amount, build.currency)),
    build.currency,
  );
  const whole = account?.total ?? price.driveAway;
  if (!isNegative(subtractMoney(whole, received))) return [];
  const print = (money: Money): string => formatMoney(money, build.yard.locale);
  return [
    finding('PAID_TOO_MUCH', order.place([paid.length > 0 ? 'paid' : 'tradeIn']), {
      received: print(received),
      expected: `at most ${print(whole)}`,
    }),
  ];
}

const same = (a: Money, b: Money): boolean => isZero(subtractMoney(a, b));
