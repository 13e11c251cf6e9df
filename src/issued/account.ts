import {
  type CustomerBuild,
  type CustomerVariation,
  type Fact,
  factsOf,
  moneyChange,
} from '../figures/index.ts';
import { type Finding, finding } from '../findings/index.ts';
import {
  addMoney,
  divideToMinorUnit,
  minorUnits,
  type Money,
  moneyOf,
  subtractMoney,
  sumMoney,
} from '../money/index.ts';
import type { Order, SourcedOrder, Status } from '../schema/index.ts';
import { addDecimals, ONE } from '../units/index.ts';
import type { IssuedQuote } from './form/form.ts';

/** What the boat costs in the end: the quote that was accepted, what was agreed since, and what has been paid. */
export interface Account {
  /** The revision that was accepted. */
  readonly revision: number;
  /** Its drive-away price, as sealed. */
  readonly quoted: Money;
  /** How it is paid, as sealed. */
  readonly payments: IssuedQuote['payments'];
  /** One for each variation that was agreed, at the price that was signed. */
  readonly agreed: readonly { readonly name: string; readonly change: Money }[];
  readonly total: Money;
  /** The total without tax and charges; of a variation by the rate of the tax. */
  readonly beforeTax: Money;
  /** Trade-in as sealed, and payments. */
  readonly received: Money;
  /** total - received; below zero when too much was paid. */
  readonly toPay: Money;
}

/** Statuses of orders that a customer has agreed to. */
const AGREED: ReadonlySet<Status> = new Set(['accepted', 'building', 'ready', 'handed-over']);

/** True for an order that a customer has agreed to: its price is that of a sealed quote and no other. */
export const isAgreed = ({ status, acceptance }: Order): boolean =>
  AGREED.has(status) || (status === 'closed' && acceptance !== undefined);

/** The quote that counts: of an order that is agreed the revision that was accepted, else the last. */
export function standingQuote(
  order: Order,
  issued: readonly IssuedQuote[],
): IssuedQuote | undefined {
  if (!isAgreed(order)) return issued.at(-1);
  return issued.find(({ revision }) => revision === order.acceptance?.revision);
}

/** The account of an order that is agreed. */
export function accountOf(
  { revision, currency, tax, price, payments }: IssuedQuote,
  order: Order,
): Account {
  const agreed = order.variations.flatMap(({ name, agreed: signed }) =>
    signed ? [{ name, change: moneyOf(signed.price, currency) }] : [],
  );
  const quoted = price.driveAway;
  const changes = sumMoney(
    agreed.map(({ change }) => change),
    currency,
  );
  const withTax = addDecimals(ONE, tax.rate);
  const beforeTax = addMoney(price.taxable, divideToMinorUnit(changes, withTax));
  const total = addMoney(quoted, changes);
  const paid = order.paid.map(({ amount }) => moneyOf(amount, currency));
  const received = addMoney(price.tradeIn, sumMoney(paid, currency));
  const toPay = subtractMoney(total, received);
  return { revision, quoted, payments, agreed, total, beforeTax, received, toPay };
}

/** What is left of the price agreed when the boat costs so much, and as a share of it: none of a price of nothing. */
export function agreedMargin(
  { beforeTax }: Account,
  cost: Money,
): { readonly margin: Money; readonly share?: number } {
  const margin = subtractMoney(beforeTax, cost);
  const whole = Number(minorUnits(beforeTax));
  return { margin, ...(whole > 0 && { share: Number(minorUnits(margin)) / whole }) };
}

/** What a variation adds to the drive-away price: as signed, else as computed; undefined when it cannot be built. */
export function priceChange(
  { variation, differences }: Pick<CustomerVariation, 'variation' | 'differences'>,
  { build }: { readonly build: Pick<CustomerBuild, 'currency'> },
): Money | undefined {
  const signed = variation.agreed?.price;
  if (signed) return moneyOf(signed, build.currency);
  return differences && moneyChange(differences.driveAway);
}

/** That an order which is agreed names the offer that was accepted, and that it was sent before the day of acceptance. */
export function checkAcceptance(
  order: SourcedOrder,
  issued: readonly IssuedQuote[],
): readonly Finding[] {
  const { acceptance, dates, number } = order.value;
  if (!isAgreed(order.value)) return [];
  if (!acceptance) {
    const remedy =
      issued.length > 0
        ? 'Write acceptance: { revision: ..., by: ... }'
        : `Set the status back to quoted, run: npm run orlop -- issue ${number}, and send it`;
    const received = `status ${order.value.status} without acceptance:`;
    return [finding('REVISION_NOT_ISSUED', order.place(['status']), { received, remedy })];
  }
  const place = order.place(['acceptance', 'revision']);
  const quote = issued.find(({ revision }) => revision === acceptance.revision);
  const received = `revision ${acceptance.revision}`;
  if (!quote) {
    const known = issued.map(({ revision }) => revision).join(', ');
    const expected = known === '' ? 'a revision; none was issued' : `one of ${known}`;
    return [finding('REVISION_NOT_ISSUED', place, { received, expected })];
  }
  if (quote.status !== 'quoted')
    return [
      finding('REVISION_NOT_ISSUED', place, {
        received: `${received}, which is a draft`,
        expected: 'a revision that was issued as an offer, with status: quoted',
      }),
    ];
  if (dates.accepted === undefined || dates.accepted >= quote.issuedOn) return [];
  return [
    finding('REVISION_NOT_ISSUED', order.place(['dates', 'accepted']), {
      received: `accepted on ${dates.accepted}`,
      expected: `not before ${received} was issued, ${quote.issuedOn}`,
    }),
  ];
}

const agreed = factsOf('agreed');
const AGREED_FACTS = {
  quote: agreed('customer', 'money', 'quote', 'Final price as accepted', 'sealed'),
  final: agreed('customer', 'money', 'drive-away', 'Final price with what was agreed', 'sealed'),
  received: agreed('customer', 'money', 'received', 'Received', 'ordered'),
  toPay: agreed('customer', 'money', 'to-pay', 'Still to pay', 'toPay'),
};

/** What was agreed. */
export function accountFacts(account: Account): readonly Fact<'customer'>[] {
  const quote = AGREED_FACTS.quote(account.quoted);
  const final = AGREED_FACTS.final(account.total, { from: [quote.key] });
  const received = AGREED_FACTS.received(account.received);
  const from = [final.key, received.key];
  return [quote, final, received, AGREED_FACTS.toPay(account.toPay, { from })];
}
