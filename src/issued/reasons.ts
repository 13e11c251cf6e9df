import { currencyCode, exactText, type Money } from '../money/index.ts';
import type { Build, BuildItem } from '../resolve/index.ts';
import type { Yard } from '../schema/index.ts';
import { decimalToShortText } from '../units/index.ts';
import { isDecimal, isRecord } from './data.ts';

/** Parts whose cost is another today, by the key of the item that uses them: "TC-0101 8.50, now 9.10". */
export function partChanges(was: Build, now: Build): ReadonlyMap<string, readonly string[]> {
  const today = new Map(
    now.items.flatMap(({ parts }) => parts.map(({ code, unitCost }) => [code, unitCost] as const)),
  );
  return new Map(
    was.items.map(({ key, parts }) => [
      key,
      parts.flatMap(({ code, unitCost }) => {
        const cost = today.get(code);
        if (!cost) return [];
        const inOne = currencyCode(cost) === currencyCode(unitCost);
        if (inOne && sameMoney(cost, unitCost)) return [];
        const [before, after] = [unitCost, cost].map((one) =>
          inOne ? exactText(one) : `${exactText(one)} ${currencyCode(one)}`,
        );
        return [`${code} ${before}, now ${after}`];
      }),
    ]),
  );
}

/** Rates, margins and the like that are others today: "rates.laminate 54, now 58". */
export function rateChanges(was: Yard, now: Yard): readonly string[] {
  const before = ratesOf(was);
  const after = ratesOf(now);
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((name) => {
    const [old, today] = [before.get(name), after.get(name)];
    return old === today ? [] : [`${name} ${old ?? 'none'}, now ${today ?? 'none'}`];
  });
}

/** Exchange rates that are others today: "exchange.USD 1.532, now 1.498". */
export function exchangeChanges(was: Build['exchange'], now: Build['exchange']): readonly string[] {
  return Object.entries(was).flatMap(([code, { rate: old }]) => {
    const rate = now[code]?.rate;
    const [before, after] = [old, rate].map((one) => (one ? decimalToShortText(one) : 'none'));
    return before === after ? [] : [`exchange.${code} ${before}, now ${after}`];
  });
}

/** What is another in an item itself: that it came or went, its count, parts, hours or fixed price. */
export function itemChanges(
  key: string,
  was: readonly BuildItem[],
  now: readonly BuildItem[],
): readonly string[] {
  const old = was.find((item) => item.key === key);
  const today = now.find((item) => item.key === key);
  if (!old) return today ? ['added'] : [];
  if (!today) return ['taken out'];
  const changes: readonly (readonly [string, boolean])[] = [
    [`quantity ${old.quantity}, now ${today.quantity}`, old.quantity !== today.quantity],
    ['parts', usesOf(old) !== usesOf(today)],
    ['hours', hoursOf(old) !== hoursOf(today)],
    ['other cost', moneyText(old.otherCost) !== moneyText(today.otherCost)],
    ['fixed price', moneyText(old.fixedPrice) !== moneyText(today.fixedPrice)],
    [
      `margin class ${old.marginClass}, now ${today.marginClass}`,
      old.marginClass !== today.marginClass,
    ],
  ];
  return changes.flatMap(([words, changed]) => (changed ? [words] : []));
}

const sameMoney = (a: Money, b: Money): boolean => moneyText(a) === moneyText(b);
const moneyText = (money: Money | undefined): string => (money ? exactText(money) : '');
const usesOf = ({ parts }: BuildItem): string =>
  parts.map(({ code, quantity }) => `${code} ${decimalToShortText(quantity)}`).join();
const hoursOf = ({ hours }: BuildItem): string =>
  hours.map((work) => `${work.stage} ${decimalToShortText(work.hours)}`).join();

/** What of a yard file a price is made with. */
const PRICING = new Set<string>([
  'rates',
  'trades',
  'overhead',
  'overheadShare',
  'rework',
  'learning',
  'margins',
  'wastage',
  'suppliers',
  'rounding',
  'tax',
] satisfies readonly (keyof Yard)[]);

/** Every decimal that a price is made with by its dotted name in the yard file. */
function ratesOf(yard: Yard): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const walk = (value: unknown, name: string): void => {
    if (isDecimal(value)) found.set(name, decimalToShortText(value));
    else if (isRecord(value))
      for (const [key, part] of Object.entries(value)) walk(part, `${name}.${key}`);
  };
  for (const [name, part] of Object.entries(yard)) if (PRICING.has(name)) walk(part, name);
  return found;
}
