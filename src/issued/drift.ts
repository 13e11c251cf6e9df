import { type Priced, priceOrder } from '../figures/index.ts';
import {
  addMoney,
  currencyCode,
  isZero,
  type Money,
  subtractMoney,
  zeroMoney,
} from '../money/index.ts';
import type { Price, PriceInput } from '../price/index.ts';
import type { Computed, NotComputed } from '../units/index.ts';
import type { IssuedQuote, Pricing } from './form/form.ts';
import { priceInputOf, pricingOf, rulesToday } from './pricing.ts';
import { costsOf, exchangeChanges, itemChanges, partChanges, rateChanges } from './reasons.ts';
import type { Drift, DriftCause, DriftRow } from './types.ts';

/** A step on the way from the issued quote to today's: one kind of thing changes in each. */
interface Step {
  readonly cause: DriftCause;
  /** With tax, by the key of the row. */
  readonly amounts: ReadonlyMap<string, Money>;
  readonly details: (key: string) => readonly string[];
}

const DISCOUNT = 'discount';

/**
 * What an issued quote would cost today, row by row, and why.
 *
 * The way from then to now is taken in steps: what was sent priced by today's program, then with today's part
 * prices, then with today's rates, margins and tax, then today's own Build. What a row changes by in a step is
 * laid to that step, so that the causes of a row add up to its change to the cent, and the rows to the whole.
 *
 * @param today - the order as it is now, by the prices and rates of today
 */
export function driftOf(issued: IssuedQuote, today: Priced): Computed<Drift> {
  const { price, currency, pricing } = issued;
  if ('notComputed' in pricing) return pricing;
  const steps = stepsBetween(issued, pricing, today);
  if ('notComputed' in steps) return steps;
  const names = new Map(
    [...issued.rows, ...today.build.items].map(({ key, name }) => [key, name] as const),
  );
  const sent = new Map(issued.rows.map(({ key, withTax }) => [key, withTax]));
  const keys = [...new Set([...sent.keys(), ...today.price.lines.map(({ key }) => key)])];
  const zero = zeroMoney(currency);
  const rows = [
    ...keys.map((key) => rowOf(key, names.get(key) ?? key, sent.get(key) ?? zero, steps)),
    rowOf(DISCOUNT, 'Discount', subtractMoney(zero, price.discountWithTax), steps),
    chargesRow(price, today.price),
  ];
  const whole = { was: price.driveAway, now: today.price.driveAway };
  return { ...whole, rows: [...rows, roundingRow(whole, rows, zero)].filter(hasChanged) };
}

function stepsBetween(
  issued: IssuedQuote,
  was: Pricing,
  today: Priced,
): readonly Step[] | NotComputed {
  const { currency, exchange } = today.build;
  if (currency.code !== issued.currency.code)
    return {
      notComputed: `the quote is in ${issued.currency.code}, and prices now in ${currency.code}`,
    };
  const now = pricingOf(today.build);
  const sent = priceInputOf(issued, was);
  // A part may be priced in another currency today: its rate comes with it, the rates that were known stay.
  const known = { ...exchange, ...was.rules.exchange };
  const repriced = {
    ...sent,
    items: withCosts(sent.items, costsOf(now)),
    rules: { ...sent.rules, exchange: known },
  };
  const rerated = { ...repriced, rules: rulesToday(issued, was, today.build) };
  const without = [sent, repriced, rerated].flatMap(withoutRate)[0];
  if (without !== undefined) return { notComputed: `there is no rate for ${without}` };
  const parts = partChanges(was, now);
  const rates = [...rateChanges(was, now), ...exchangeChanges(was, now)];
  const step = (cause: DriftCause, price: Price, details: Step['details']): Step => ({
    cause,
    amounts: amountsOf(price, zeroMoney(currency)),
    details,
  });
  return [
    step('formula', priceOrder(sent), () => []),
    step('price list', priceOrder(repriced), (key) => parts.get(key) ?? []),
    step('rate', priceOrder(rerated), () => rates),
    step('option', today.price, (key) => itemChanges(key, was, now)),
  ];
}

/** The items, each part at the cost that its code has. */
function withCosts(
  items: PriceInput['items'],
  costs: ReadonlyMap<string, Money>,
): PriceInput['items'] {
  return items.map((item) => ({
    ...item,
    materials: item.materials.map((part) => ({
      ...part,
      unitCost: costs.get(part.code) ?? part.unitCost,
    })),
  }));
}

/** Currencies of parts and fixed amounts that cannot be made the yard's. */
function withoutRate({ items, rules: { currency, exchange } }: PriceInput): readonly string[] {
  const parts = items.flatMap(({ materials }) => materials.map(({ unitCost }) => unitCost));
  const whole = items.flatMap(({ otherCost, fixedPrice }) =>
    [otherCost ?? [], fixedPrice ?? []].flat(),
  );
  const known = new Set([currency.code, ...Object.keys(exchange ?? {})]);
  return [
    ...parts.map(currencyCode).filter((code) => !known.has(code)),
    ...whole.map(currencyCode).filter((code) => code !== currency.code),
  ];
}

const amountsOf = ({ lines, discountWithTax }: Price, zero: Money): Step['amounts'] =>
  new Map([
    ...lines.map(({ key, priceWithTax }) => [key, priceWithTax] as const),
    [DISCOUNT, subtractMoney(zero, discountWithTax)],
  ]);

function rowOf(key: string, name: string, was: Money, steps: readonly Step[]): DriftRow {
  const zero = subtractMoney(was, was);
  const { causes, now } = steps.reduce<Pick<DriftRow, 'causes' | 'now'>>(
    (row, { cause, amounts, details }) => {
      const amount = subtractMoney(amounts.get(key) ?? zero, row.now);
      const more = isZero(amount) ? [] : [{ cause, amount, details: details(key) }];
      return { causes: [...row.causes, ...more], now: addMoney(row.now, amount) };
    },
    { causes: [], now: was },
  );
  return { key, name, was, now, causes };
}

type Charged = Pick<Price, 'charges' | 'chargesTax'>;

function chargesRow(issued: Charged, today: Charged): DriftRow {
  const was = addMoney(issued.charges, issued.chargesTax);
  const now = addMoney(today.charges, today.chargesTax);
  const causes = [{ cause: 'charge', amount: subtractMoney(now, was), details: [] }] as const;
  return { key: 'charges', name: 'Charges', was, now, causes };
}

/** What the rows leave over: a policy of rounding prices that has changed. */
function roundingRow(
  { was, now }: { readonly was: Money; readonly now: Money },
  rows: readonly DriftRow[],
  zero: Money,
): DriftRow {
  const told = rows.reduce((sum, row) => addMoney(sum, subtractMoney(row.now, row.was)), zero);
  const rest = subtractMoney(subtractMoney(now, was), told);
  const causes = [{ cause: 'rate', amount: rest, details: [] }] as const;
  return { key: 'rounding', name: 'Rounding', was: zero, now: rest, causes };
}

const hasChanged = ({ was, now, causes }: DriftRow): boolean =>
  !isZero(subtractMoney(now, was)) || causes.some(({ amount }) => !isZero(amount));
