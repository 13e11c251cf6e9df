import type { LoadedWage, PriceInput, PriceItem, PriceRules, WhatIf } from '../../price/index.ts';
import type { Build, BuildPart } from '../../resolve/index.ts';
import { STAGES, type Yard } from '../../schema/index.ts';
import { type Decimal, ZERO } from '../../units/index.ts';

/** What the price room needs of a Build. */
export function priceInput(build: Build): PriceInput {
  const { items, order, yard, charges, packages } = build;
  return {
    items: items.map((item): PriceItem => ({
      key: item.key,
      marginClass: item.marginClass,
      materials: item.parts.map(materialOf),
      hours: item.hours,
      ...(item.otherCost && { otherCost: item.otherCost }),
      ...(item.fixedPrice && { fixedPrice: item.fixedPrice }),
    })),
    rules: priceRules(build, termsOf(build.order)),
    charges,
    packages,
    ...(order.discount && { discount: discountOf(order.discount) }),
    ...(order.tradeIn && { tradeIn: order.tradeIn }),
    paid: order.paid.map(({ amount }) => amount),
    payments: yard.payments.map(({ event, ...stage }) => ({
      ...stage,
      ...(event !== undefined && { event }),
    })),
  };
}

/** What the yard wants its margin tried against. */
export const whatIfOf = ({ yard }: Build): WhatIf => yard.whatIf;

/** What of an order says by which of the yard's rules it is priced. */
interface PriceTerms {
  readonly zeroRated: boolean;
  /** Which boat of its hull it is: 1 is the first. */
  readonly nth?: number;
}

/** The terms of an order. */
export function termsOf({ zeroRated, firstOfKind, hullCount }: Build['order']): PriceTerms {
  const nth = firstOfKind ? 1 : hullCount;
  return { zeroRated: zeroRated !== undefined, ...(nth !== undefined && { nth }) };
}

/** What the hours of every stage are multiplied by, on the boat of that number. */
export function learningOf(
  { learning }: Pick<Yard, 'learning'>,
  { nth }: Pick<PriceTerms, 'nth'>,
): Readonly<Record<string, Decimal>> {
  const factor = nth === undefined ? undefined : learning?.factors[nth - 1];
  if (!factor || !learning) return {};
  return Object.fromEntries(learning.stages.map((stage) => [stage, factor]));
}

/** The rules of a Build's yard, for an order on such terms. */
export function priceRules(
  { yard, currency, exchange }: Pick<Build, 'yard' | 'currency' | 'exchange'>,
  terms: PriceTerms,
): PriceRules {
  const { tax, rounding } = yard;
  return {
    currency,
    rates: ratesOf(yard),
    overhead: yard.overhead,
    ...(yard.overheadShare && { overheadShare: yard.overheadShare }),
    learning: learningOf(yard, terms),
    ...(yard.rework && { rework: yard.rework }),
    margins: yard.margins,
    marginFloor: yard.marginFloor,
    wastage: yard.wastage,
    exchange,
    freight: freightOf(yard),
    ...(rounding && { rounding: { ...rounding, to: BigInt(rounding.to) } }),
    taxRate: terms.zeroRated ? ZERO : tax.rate,
    taxRounding: tax.rounding,
    taxRule: tax.fractions,
    tradeInReducesTax: tax.tradeIn === 'reduces-tax',
  };
}

/** A stage's own rate goes before its trade's. */
function ratesOf({ rates, stages, trades }: Yard): PriceRules['rates'] {
  return Object.fromEntries(
    STAGES.map((stage): readonly [string, Decimal | LoadedWage] => {
      const { trade = '' } = stages[stage] ?? {};
      return [stage, rates[stage] ?? trades[trade] ?? ZERO];
    }),
  );
}

function freightOf({ suppliers }: Yard): NonNullable<PriceRules['freight']> {
  return Object.fromEntries(
    Object.entries(suppliers).flatMap(([name, { freight }]) => (freight ? [[name, freight]] : [])),
  );
}

function materialOf(part: BuildPart): PriceItem['materials'][number] {
  const { code, supplier, materialClass, quantity, unitCost, pack, buy } = part;
  return {
    code,
    supplier,
    materialClass,
    quantity,
    unitCost,
    ...(pack && { pack }),
    ...(buy && { buy }),
  };
}

function discountOf(
  discount: NonNullable<Build['order']['discount']>,
): NonNullable<PriceInput['discount']> {
  const on = discount.class === undefined ? {} : { marginClass: discount.class };
  return 'share' in discount
    ? { ...on, share: discount.share }
    : { ...on, amount: discount.amount };
}
