import { priceInput, priceRules, termsOf } from '../figures/index.ts';
import type {
  LoadedWage,
  PackageOffer,
  PriceInput,
  PriceMaterial,
  PriceRules,
} from '../price/index.ts';
import type { Build } from '../resolve/index.ts';
import { decimalToShortText, ZERO } from '../units/index.ts';
import type { IssuedQuote, Pricing } from './form/form.ts';
import { isDecimal, textsByName } from './form/texts.ts';

type Discount = NonNullable<PriceInput['discount']>;

/** What the price of a Build is made of, in the words of a sealed file. */
export function pricingOf(build: Build): Pricing {
  const { items, rules, packages = [], discount } = priceInput(build);
  const { nth } = termsOf(build.order);
  const counts = new Map(build.items.map(({ key, quantity }) => [key, quantity]));
  return {
    items: items.map(({ key, marginClass, materials, hours, otherCost, fixedPrice }) => ({
      key,
      class: marginClass,
      quantity: counts.get(key) ?? 1,
      parts: materials.map(writtenPart),
      hours: hours.map((work) => ({ stage: work.stage, hours: work.hours })),
      ...(otherCost && { other: otherCost }),
      ...(fixedPrice && { fixed: fixedPrice }),
    })),
    rules: writtenRules(rules),
    packages: packages.map(writtenOffer),
    ...(discount && { discount: writtenDiscount(discount) }),
    ...(nth !== undefined && { nth }),
    settings: settingsOf(build),
  };
}

type Written = Pricing['items'][number]['parts'][number];

function writtenPart(part: PriceMaterial): Written {
  const { code, supplier, materialClass, quantity, unitCost, pack, buy } = part;
  return {
    code,
    supplier,
    class: materialClass,
    quantity,
    cost: unitCost,
    ...(pack && { pack }),
    ...(buy && { buy }),
  };
}

function writtenRules(rules: PriceRules): Pricing['rules'] {
  const { rates, overhead, overheadShare, learning = {}, rework, margins, wastage } = rules;
  const { exchange = {}, freight = {}, rounding, taxRounding, taxRule = 'half-up' } = rules;
  return {
    rates: mapped(rates, (rate) => ('wage' in rate ? wageOf(rate) : rate)),
    exchange: mapped(exchange, ({ rate, buffer }) => ({ rate, buffer })),
    overhead,
    learning,
    margins,
    wastage,
    freight,
    taxRounding,
    ...(overheadShare && { overheadShare }),
    ...(rework && { rework }),
    ...(rounding && { rounding: { ...rounding, to: Number(rounding.to) } }),
    taxFractions: taxRule,
  };
}

const wageOf = ({ wage, onCosts, productive }: LoadedWage) => ({ wage, onCosts, productive });

const mapped = <From, To>(all: Readonly<Record<string, From>>, of: (one: From) => To) =>
  Object.fromEntries(Object.entries(all).map(([name, one]) => [name, of(one)]));

function writtenOffer(offer: PackageOffer): Pricing['packages'][number] {
  const { name, keys } = offer;
  const part = 'price' in offer ? { price: offer.price } : { share: offer.share };
  return { name, keys: [...keys], ...part };
}

const writtenDiscount = ({ marginClass, ...off }: Discount): NonNullable<Pricing['discount']> => ({
  ...off,
  ...(marginClass !== undefined && { class: marginClass }),
});

/** Every decimal that a price is made with, by its dotted name in the yard file. */
function settingsOf({ yard }: Build): Pricing['settings'] {
  const { learning, margins, overhead, overheadShare, rates, rework } = yard;
  const { rounding, suppliers, tax, trades, wastage } = yard;
  const made = { learning, margins, overhead, overheadShare, rates, rework };
  return textsByName({ ...made, rounding, suppliers, tax, trades, wastage }, (value) =>
    isDecimal(value) ? decimalToShortText(value) : undefined,
  );
}

/** What the rows of a sent quote and its discount are priced from; its charges and payments do not move them. */
export function priceInputOf({ currency, tax }: IssuedQuote, pricing: Pricing): PriceInput {
  const { items, packages, discount } = pricing;
  const { rounding, taxFractions, ...rules } = pricing.rules;
  return {
    items: items.map(({ key, class: marginClass, parts, hours, other, fixed }) => ({
      key,
      marginClass,
      hours,
      ...(other && { otherCost: other }),
      ...(fixed && { fixedPrice: fixed }),
      materials: parts.map(({ class: materialClass, cost, ...part }) => ({
        ...part,
        materialClass,
        unitCost: cost,
      })),
    })),
    rules: {
      ...rules,
      currency,
      ...(rounding && { rounding: { ...rounding, to: BigInt(rounding.to) } }),
      taxRate: tax.rate,
      taxRule: taxFractions,
      marginFloor: ZERO,
    },
    packages,
    ...(discount && { discount: discountOf(discount) }),
    charges: [],
    payments: [],
  };
}

const discountOf = ({
  class: marginClass,
  ...off
}: NonNullable<Pricing['discount']>): Discount => ({
  ...off,
  ...(marginClass !== undefined && { marginClass }),
});

/** The rules of today for the order as it was sent. */
export const rulesToday = (
  { zeroRated }: IssuedQuote,
  { nth }: Pricing,
  today: Build,
): PriceRules => priceRules(today, { zeroRated, ...(nth !== undefined && { nth }) });
