import fc from 'fast-check';
import { currencyOf, type Money, moneyOf, moneyToDecimal } from '../../src/money/index.ts';
import type {
  Discount,
  PaymentStage,
  PriceInput,
  PriceItem,
  PriceMaterial,
  PriceRounding,
  PriceRules,
} from '../../src/price/index.ts';
import type { Decimal } from '../../src/units/index.ts';
import { AUD, decimal, money } from '../money-words.ts';

const USD = currencyOf('USD') ?? AUD;

/** A decimal of a number of places, from 0 to below a bound of its last place. */
const decimals = (most: number, places: number): fc.Arbitrary<Decimal> =>
  fc.nat(most).map((amount) => ({ amount: BigInt(amount), scale: BigInt(places) }));

const material: fc.Arbitrary<PriceMaterial> = fc
  .record({
    code: fc.constantFrom('A', 'B', 'C'),
    quantity: decimals(99_999, 3),
    cost: decimals(500_000, 2),
  })
  .map(({ code, quantity, cost }) => ({
    code,
    supplier: code === 'C' ? 'abroad' : 'near',
    materialClass: code === 'A' ? 'resin' : 'timber',
    quantity,
    // One price for a code, as one row of a price list gives.
    unitCost: code === 'A' ? money('9.80') : moneyOf(cost, code === 'B' ? AUD : USD),
    ...(code === 'A' && { pack: decimal('20'), buy: 'whole' }),
  }));

const item = fc.record({
  hull: fc.boolean(),
  materials: fc.array(material, { maxLength: 2 }),
  hours: decimals(99_99, 2),
  fixed: fc.option(decimals(9_999_99, 2), { freq: 4, nil: undefined }),
});

/** One or two items with parts from near and abroad, in packs or not, priced or fixed. */
export const items: fc.Arbitrary<readonly PriceItem[]> = fc
  .array(item, { minLength: 1, maxLength: 2 })
  .map((list) =>
    list.map(({ hull, materials, hours, fixed }, index): PriceItem => ({
      key: `item:${index}`,
      marginClass: hull ? 'hull' : 'electrical',
      materials,
      hours: [{ stage: hull ? 'laminate' : 'wiring', hours }],
      ...(fixed && { fixedPrice: moneyOf(fixed, AUD) }),
    })),
  );

export const RULES: PriceRules = {
  currency: AUD,
  rates: {
    laminate: { wage: decimal('34.50'), onCosts: decimal('0.27'), productive: decimal('0.82') },
    wiring: decimal('58'),
  },
  overhead: decimal('31.35'),
  overheadShare: decimal('0.04'),
  learning: { laminate: decimal('1.15') },
  rework: decimal('0.03'),
  margins: { hull: decimal('0.28'), electrical: decimal('0.30') },
  marginFloor: decimal('0.20'),
  wastage: { resin: decimal('0.08') },
  exchange: { USD: { rate: decimal('1.5387'), buffer: decimal('0.03') } },
  freight: { near: { perOrder: decimal('85.55') }, abroad: { share: decimal('0.07') } },
  taxRate: decimal('0.10'),
  taxRounding: 'document',
};

const rounding: fc.Arbitrary<PriceRounding | undefined> = fc.option(
  fc.record({
    to: fc.constantFrom(1n, 5n, 10n),
    way: fc.constantFrom<'nearest' | 'up'>('nearest', 'up'),
    tax: fc.constantFrom<'before' | 'after'>('before', 'after'),
    on: fc.constantFrom<'line' | 'total'>('line', 'total'),
  }),
  { nil: undefined },
);

export const rules: fc.Arbitrary<PriceRules> = fc
  .record({
    rounding,
    taxRate: fc.constantFrom('0', '0.0825', '0.10', '0.15', '0.20').map(decimal),
    taxRounding: fc.constantFrom<'document' | 'line'>('document', 'line'),
    taxRule: fc.constantFrom<'half-up' | 'half-down' | 'down'>('half-up', 'half-down', 'down'),
    tradeInReducesTax: fc.boolean(),
  })
  .map(({ rounding: policy, ...tax }) => ({
    ...RULES,
    ...tax,
    ...(policy && { rounding: policy }),
  }));

const discount: fc.Arbitrary<Discount | undefined> = fc.option(
  fc
    .record({ share: fc.boolean(), size: decimals(9_999, 4), hull: fc.boolean() })
    .map(({ share, size, hull }) => ({
      ...(hull && { marginClass: 'hull' }),
      ...(share ? { share: size } : { amount: { amount: size.amount, scale: 1n } }),
    })),
  { nil: undefined },
);

const payments: fc.Arbitrary<readonly PaymentStage[]> = fc.constantFrom(
  [{ name: 'All', when: 'order', share: decimal('1') }],
  [
    { name: 'Deposit', when: 'order', amount: decimal('2000') },
    { name: 'Hull', when: 'release', share: decimal('0.333') },
    { name: 'Rest', when: 'handover', share: decimal('0.667') },
  ],
);

/** Whole orders: rules, discount, package, trade-in, payments. */
export const orders: fc.Arbitrary<PriceInput> = fc
  .record({
    items,
    rules,
    discount,
    payments,
    offer: fc.option(decimals(99, 2), { nil: undefined }),
    tradeIn: fc.option(decimals(5_000_00, 2), { nil: undefined }),
    paid: fc.option(decimals(3_000_00, 2), { nil: undefined }),
    taxed: fc.tuple(fc.boolean(), fc.boolean()),
  })
  .map(({ discount: off, offer, tradeIn, paid, taxed: [first, second], ...rest }) => ({
    ...rest,
    charges: [
      { name: 'Registration', amount: money('145.20'), taxed: first },
      { name: 'Weighbridge', amount: money('38.07'), taxed: second },
    ],
    ...(off && { discount: off }),
    ...(offer && { packages: [{ name: 'P', keys: ['item:0', 'item:1'], share: offer }] }),
    ...(tradeIn && { tradeIn: { name: 'Old boat', value: tradeIn } }),
    ...(paid && { paid: [paid] }),
  }));

/** An amount that must be in whole cents, in cents: anything finer is seen as off. */
export function centsOf(amount: Money): bigint {
  const exact = moneyToDecimal(amount);
  return exact.scale === 2n ? exact.amount : -1n;
}

/** The sum of amounts in whole cents. */
export const cents = (amounts: readonly Money[]): bigint =>
  amounts.reduce((sum, amount) => sum + centsOf(amount), 0n);
