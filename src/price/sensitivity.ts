import {
  addMoney,
  currencyCode,
  minorUnits,
  type Money,
  moneyOf,
  subtractMoney,
  sumMoney,
  timesDecimal,
} from '../money/index.ts';
import {
  addDecimals,
  type Decimal,
  divideHalfAway,
  multiplyDecimals,
  ONE,
  roundDecimal,
  ZERO,
  type NotComputed,
  sumDecimals,
} from '../units/index.ts';
import { costOrder } from './cost-order.ts';
import { shareOfMoney } from './margin.ts';
import type { Price } from './result-types.ts';
import type { PriceInput, PriceItem, PriceRules } from './types.ts';

/** What may go otherwise than planned. */
export interface WhatIf {
  /** Shares by which the hours overrun: 0.1 for 10 %. */
  readonly overruns: readonly Decimal[];
  /** Shares by which a class of material rises. */
  readonly materials: Readonly<Record<string, Decimal>>;
  /** Share by which every other currency rises against the yard's. */
  readonly exchange: Decimal;
}

/** What the order then costs, and what is left of the margin at the price that was quoted. */
export interface MarginThen {
  readonly move: Decimal;
  readonly cost: Money;
  readonly margin: Money;
  readonly marginShare?: Decimal;
}

export interface Sensitivity {
  readonly overruns: readonly MarginThen[];
  readonly materials: readonly (MarginThen & { readonly materialClass: string })[];
  /** One for each currency that a part of the order is bought in. */
  readonly exchange: readonly (MarginThen & { readonly currency: string })[];
  /** The overrun at which nothing is left: in hours, and as a share of the costed hours. */
  readonly breakEven: { readonly hours: Decimal; readonly share: Decimal } | NotComputed;
}

/**
 * What the margin becomes when hours, materials or exchange rates move and the price stays as quoted.
 *
 * Each case costs the order again by the same code; nothing is interpolated.
 *
 * @param price - what `priceOrder` gave for the same input
 * @source derived: margin = taxable price - cost; break-even overrun = margin / cost of all hours
 */
export function sensitivity(input: PriceInput, price: Price, whatIf: WhatIf): Sensitivity {
  const { items, rules } = input;
  const then = (move: Decimal, moved: readonly PriceItem[], by: PriceRules): MarginThen => {
    const { cost } = costOrder(moved, by);
    const margin = subtractMoney(price.taxable, cost);
    const marginShare = shareOfMoney(margin, price.taxable);
    return { move, cost, margin, ...(marginShare && { marginShare }) };
  };
  const currencies = [...new Set(items.flatMap(({ materials }) => materials.map(codeOfCost)))];
  return {
    overruns: whatIf.overruns.map((move) => then(move, withMoreHours(items, move), rules)),
    materials: Object.entries(whatIf.materials).map(([materialClass, move]) => ({
      materialClass,
      ...then(move, withDearer(items, materialClass, move), rules),
    })),
    exchange: currencies
      .filter((currency) => currency !== rules.currency.code)
      .toSorted()
      .map((currency) => ({
        currency,
        ...then(whatIf.exchange, items, withRate(rules, currency, whatIf.exchange)),
      })),
    breakEven: breakEven(price, rules),
  };
}

const codeOfCost = ({ unitCost }: PriceItem['materials'][number]): string => currencyCode(unitCost);

const withMoreHours = (items: readonly PriceItem[], move: Decimal): readonly PriceItem[] =>
  items.map((item) => ({
    ...item,
    hours: item.hours.map((work) => ({ ...work, hours: raised(work.hours, move) })),
  }));

const withDearer = (
  items: readonly PriceItem[],
  materialClass: string,
  move: Decimal,
): readonly PriceItem[] =>
  items.map((item) => ({
    ...item,
    materials: item.materials.map((material) =>
      material.materialClass === materialClass
        ? { ...material, unitCost: timesDecimal(material.unitCost, addDecimals(ONE, move)) }
        : material,
    ),
  }));

function withRate(rules: PriceRules, currency: string, move: Decimal): PriceRules {
  const exchange = rules.exchange?.[currency];
  if (!exchange) return rules;
  const moved = { ...exchange, rate: raised(exchange.rate, move) };
  return { ...rules, exchange: { ...rules.exchange, [currency]: moved } };
}

const raised = (value: Decimal, move: Decimal): Decimal =>
  multiplyDecimals(value, addDecimals(ONE, move));

/** margin / (labour and the overhead that grows with it): a share of the costed hours. */
function breakEven({ lines, margin }: Price, rules: PriceRules): Sensitivity['breakEven'] {
  const hours = sumDecimals(lines.map((line) => line.costedHours));
  const labour = sumMoney(
    lines.map((line) => line.labour),
    rules.currency,
  );
  const worked = addMoney(
    timesDecimal(labour, addDecimals(ONE, rules.overheadShare ?? ZERO)),
    timesDecimal(moneyOf(rules.overhead, rules.currency), hours),
  );
  const bottom = minorUnits(worked);
  if (bottom <= 0n) return { notComputed: 'no hour of this order costs anything' };
  if (minorUnits(margin) < 0n) return { notComputed: 'there is no margin to use up' };
  const share = { amount: divideHalfAway(minorUnits(margin) * 1_000_000n, bottom), scale: 6n };
  return { hours: roundDecimal(multiplyDecimals(hours, share), 2), share };
}
