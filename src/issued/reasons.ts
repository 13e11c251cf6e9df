import { currencyCode, exactText, type Money } from '../money/index.ts';
import { decimalToShortText } from '../units/index.ts';
import type { Pricing } from './form/form.ts';

type Item = Pricing['items'][number];

/** Parts whose cost is another today, by the key of the item that uses them: "TC-0101 8.50, now 9.10". */
export function partChanges(was: Pricing, now: Pricing): ReadonlyMap<string, readonly string[]> {
  const today = costsOf(now);
  return new Map(
    was.items.map(({ key, parts }) => [
      key,
      parts.flatMap(({ code, cost: old }) => {
        const cost = today.get(code);
        if (!cost) return [];
        const inOne = currencyCode(cost) === currencyCode(old);
        if (inOne && exactText(cost) === exactText(old)) return [];
        const [before, after] = [old, cost].map((one) =>
          inOne ? exactText(one) : `${exactText(one)} ${currencyCode(one)}`,
        );
        return [`${code} ${before}, now ${after}`];
      }),
    ]),
  );
}

/** What one unit of each part costs, by code. */
export const costsOf = ({ items }: Pricing): ReadonlyMap<string, Money> =>
  new Map(items.flatMap(({ parts }) => parts.map(({ code, cost }) => [code, cost] as const)));

/** Rates, margins and the like that are others today: "rates.laminate 54, now 58". */
export function rateChanges(
  { settings: was }: Pricing,
  { settings: now }: Pricing,
): readonly string[] {
  const before = new Map(Object.entries(was));
  const after = new Map(Object.entries(now));
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((name) => {
    const [old, today] = [before.get(name), after.get(name)];
    return old === today ? [] : [`${name} ${old ?? 'none'}, now ${today ?? 'none'}`];
  });
}

/** Exchange rates that are others today: "exchange.USD 1.532, now 1.498". */
export function exchangeChanges(
  { rules: was }: Pricing,
  { rules: now }: Pricing,
): readonly string[] {
  return Object.entries(was.exchange).flatMap(([code, { rate: old }]) => {
    const rate = now.exchange[code]?.rate;
    const [before, after] = [old, rate].map((one) => (one ? decimalToShortText(one) : 'none'));
    return before === after ? [] : [`exchange.${code} ${before}, now ${after}`];
  });
}

/** What is another in an item itself: that it came or went, its count, parts, hours or fixed price. */
export function itemChanges(key: string, was: Pricing, now: Pricing): readonly string[] {
  const old = was.items.find((item) => item.key === key);
  const today = now.items.find((item) => item.key === key);
  if (!old) return today ? ['added'] : [];
  if (!today) return ['taken out'];
  const changes: readonly (readonly [string, boolean])[] = [
    [`quantity ${old.quantity}, now ${today.quantity}`, old.quantity !== today.quantity],
    ['parts', usesOf(old) !== usesOf(today)],
    ['hours', hoursOf(old) !== hoursOf(today)],
    ['other cost', moneyText(old.other) !== moneyText(today.other)],
    ['fixed price', moneyText(old.fixed) !== moneyText(today.fixed)],
    [`margin class ${old.class}, now ${today.class}`, old.class !== today.class],
  ];
  return changes.flatMap(([words, changed]) => (changed ? [words] : []));
}

const moneyText = (money: Money | undefined): string => (money ? exactText(money) : '');
const usesOf = ({ parts }: Item): string =>
  parts.map(({ code, quantity }) => `${code} ${decimalToShortText(quantity)}`).join();
const hoursOf = ({ hours }: Item): string =>
  hours.map((work) => `${work.stage} ${decimalToShortText(work.hours)}`).join();
