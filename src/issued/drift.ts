import { type Figures, priceBuild, type Priced } from '../figures/index.ts';
import { addMoney, isZero, type Money, subtractMoney, zeroMoney } from '../money/index.ts';
import type { Build } from '../resolve/index.ts';
import { exchangeChanges, itemChanges, partChanges, rateChanges } from './reasons.ts';
import type { Drift, DriftCause, DriftRow, IssuedQuote } from './types.ts';

type Price = Figures['price'];

/** A step on the way from the issued quote to today's: one kind of thing changes in each. */
interface Step {
  readonly cause: DriftCause;
  readonly price: Price;
  readonly details: (key: string) => readonly string[];
}

/**
 * What an issued quote would cost today, row by row, and why.
 *
 * The way from then to now is taken in steps: the issued Build priced by today's program, then with today's part
 * prices, then with today's rates, margins and tax, then today's own Build. What a row changes by in a step is
 * laid to that step, so that the causes of a row add up to its change to the cent, and the rows to the whole.
 *
 * @param today - the order as it is now, by the prices and rates of today
 * @returns undefined for a Build of an earlier program that today's cannot price
 */
export function driftOf(issued: IssuedQuote, today: Priced): Drift | undefined {
  const { build, price } = issued.figures;
  const steps = stepsBetween(build, today);
  if (!steps) return undefined;
  const names = new Map(
    [...build.items, ...today.build.items].map(({ key, name }) => [key, name] as const),
  );
  const keys = [...new Set([...price.lines, ...today.price.lines].map(({ key }) => key))];
  const zero = zeroMoney(build.currency);
  const rows = [
    ...keys.map((key) =>
      rowOf(key, names.get(key) ?? key, price, steps, (at) => lineOf(at, key, zero)),
    ),
    rowOf('discount', 'Discount', price, steps, (at) => subtractMoney(zero, at.discountWithTax)),
    chargesRow(price, today.price),
  ];
  const whole = { was: price.driveAway, now: today.price.driveAway };
  return { ...whole, rows: [...rows, roundingRow(whole, rows, zero)].filter(hasChanged) };
}

function stepsBetween(build: Build, today: Priced): readonly Step[] | undefined {
  try {
    return pricedSteps(build, today);
  } catch {
    // What was kept has the shape of its own day: a Build that lacks what today's pricing asks for has no such price.
    return undefined;
  }
}

function pricedSteps(build: Build, today: Priced): readonly Step[] {
  const { exchange, yard } = today.build;
  // A part may be priced in another currency today: its rate comes with it, the rates that were known stay.
  const repriced: Build = {
    ...build,
    items: withTodaysPrices(build, today.build),
    exchange: { ...exchange, ...build.exchange },
  };
  const rerated: Build = { ...repriced, yard, exchange };
  const parts = partChanges(build, today.build);
  const rates = [...rateChanges(build.yard, yard), ...exchangeChanges(build.exchange, exchange)];
  return [
    { cause: 'formula', price: priceBuild(build), details: () => [] },
    { cause: 'price list', price: priceBuild(repriced), details: (key) => parts.get(key) ?? [] },
    { cause: 'rate', price: priceBuild(rerated), details: () => rates },
    {
      cause: 'option',
      price: today.price,
      details: (key) => itemChanges(key, build.items, today.build.items),
    },
  ];
}

/** The issued items, each part at the cost that today's Build has for its code. */
function withTodaysPrices({ items }: Build, today: Build): Build['items'] {
  const costs = new Map(
    today.items.flatMap(({ parts }) => parts.map(({ code, unitCost }) => [code, unitCost])),
  );
  return items.map((item) => ({
    ...item,
    parts: item.parts.map((part) => ({ ...part, unitCost: costs.get(part.code) ?? part.unitCost })),
  }));
}

function rowOf(
  key: string,
  name: string,
  issued: Price,
  steps: readonly Step[],
  amountIn: (price: Price) => Money,
): DriftRow {
  const was = amountIn(issued);
  const { causes, now } = steps.reduce<Pick<DriftRow, 'causes' | 'now'>>(
    (row, { cause, price, details }) => {
      const amount = subtractMoney(amountIn(price), row.now);
      const more = isZero(amount) ? [] : [{ cause, amount, details: details(key) }];
      return { causes: [...row.causes, ...more], now: addMoney(row.now, amount) };
    },
    { causes: [], now: was },
  );
  return { key, name, was, now, causes };
}

function lineOf(price: Price, key: string, zero: Money): Money {
  return price.lines.find((line) => line.key === key)?.priceWithTax ?? zero;
}

function chargesRow(issued: Price, today: Price): DriftRow {
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
