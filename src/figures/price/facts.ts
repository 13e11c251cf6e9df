import type { Money } from '../../money/index.ts';
import type { Sensitivity } from '../../price/index.ts';
import { decimalToShortText } from '../../units/index.ts';
import { type Fact, factsOf, valueOf } from '../facts/fact.ts';
import type { Figures } from '../types.ts';

type Priced = Pick<Figures, 'price' | 'build' | 'sensitivity'>;

const price = factsOf('price');
const FINAL = price('customer', 'money', 'drive-away', 'Final price', 'finalPrice');
const TAXABLE = price('customer', 'money', 'taxable', 'Price before tax', 'linePrice');
const TAX = price('customer', 'money', 'tax', 'Tax', 'tax');
const CHARGES = price('customer', 'money', 'charges', 'Charges, before tax', 'charges');
const CHARGES_TAX = price('customer', 'money', 'charges-tax', 'Tax on charges', 'tax');
const MARGIN = price('office', 'money', 'margin', 'Margin', 'margin');
const MARGIN_SHARE = price('office', 'exact share', 'margin-share', 'Margin share', 'margin');
const COST = price('office', 'money', 'cost', 'Cost', 'cost');

const OFFER = {
  list: price('office', 'money', 'list', 'Sum of the lines', 'sumOfLines'),
  lineRounding: price('office', 'money', 'line-rounding', 'Rounding of the lines', 'linePrice'),
  savings: price('customer', 'money', 'package-savings', 'Package savings', 'linePrice'),
  discount: price('customer', 'money', 'discount', 'Discount', 'ordered'),
  rounding: price('customer', 'money', 'rounding', 'Rounding of the whole', 'linePrice'),
  tradeInTax: price('customer', 'money', 'trade-in-tax', 'Tax not due on a trade-in', 'tax'),
  tradeIn: price('customer', 'money', 'trade-in', 'Trade-in', 'ordered'),
  paid: price('customer', 'money', 'paid', 'Paid', 'ordered'),
  toPay: price('customer', 'money', 'to-pay', 'Still to pay', 'toPay'),
};
const CLASS_MARGIN = price('office', 'money', 'class.*.margin', 'Margin of a class', 'margin');
const CLASS_SHARE = price(
  'office',
  'exact share',
  'class.*.margin-share',
  'Margin share of a class',
  'margin',
);
const LINE = {
  cost: price('office', 'money', 'line.*.cost', 'Cost of a line', 'cost'),
  price: price('customer', 'money', 'line.*.price', 'Price of a line', 'linePrice'),
  withTax: price('customer', 'money', 'line.*.with-tax', 'Price of a line with tax', 'tax'),
  share: price('office', 'exact share', 'line.*.margin-share', 'Margin share', 'margin'),
};
const MARGIN_IF = price('office', 'money', 'margin-if.*', 'Margin if', 'costedAgain');
const RATE = factsOf('rate')('office', 'money', '*', 'Cost of an hour', 'hourCost');
const BREAK_EVEN = factsOf('hours')(
  'office',
  'exact hours',
  'break-even-overrun',
  'Hours that may overrun before nothing is left',
  'margin',
);

export interface PriceFacts {
  readonly final: Fact<'customer', Money>;
  readonly margin: Fact<'office', Money>;
  readonly marginShare?: Fact<'office'>;
  readonly others: readonly Fact[];
}

/** Every fact of money of an order. */
export function priceFacts({ price: all, build, sensitivity }: Priced): PriceFacts {
  const { order, yard } = build;
  const source = order.zeroRated ? (yard.tax.zeroRated ?? '') : yard.tax.source;
  const [taxable, charges] = [TAXABLE(all.taxable), CHARGES(all.charges)];
  const tax = TAX(all.tax, { source, from: [taxable.key] });
  const cost = COST(all.cost);
  const chargesTax = CHARGES_TAX(all.chargesTax, { source, from: [charges.key] });
  const from = [taxable, tax, charges, chargesTax].map(({ key }) => key);
  const final = FINAL(all.driveAway, { from });
  return {
    final,
    margin: MARGIN(all.margin, { from: [taxable.key, cost.key] }),
    ...(all.marginShare && { marginShare: MARGIN_SHARE(all.marginShare) }),
    others: [
      cost,
      taxable,
      tax,
      charges,
      chargesTax,
      OFFER.list(all.listPrice),
      OFFER.lineRounding(all.lineRounding),
      OFFER.savings(all.savings),
      OFFER.discount(all.discount),
      OFFER.rounding(all.rounding.before),
      OFFER.tradeInTax(all.tradeInTax, { source }),
      OFFER.tradeIn(all.tradeIn),
      OFFER.paid(all.paid),
      OFFER.toPay(all.toPay, { from: [final.key] }),
      ...lineFacts(all),
      ...all.rates.map(({ stage, rate }) => RATE(rate, { of: stage })),
      ...thenFacts(sensitivity),
      BREAK_EVEN(valueOf(sensitivity.breakEven, ({ hours }) => hours)),
    ],
  };
}

function lineFacts({ classes, lines }: Priced['price']): readonly Fact[] {
  return [
    ...classes.flatMap(({ marginClass: of, margin, marginShare }) => [
      CLASS_MARGIN(margin, { of }),
      ...(marginShare ? [CLASS_SHARE(marginShare, { of })] : []),
    ]),
    ...lines.flatMap(({ key: of, cost, price: own, priceWithTax, marginShare }) => [
      LINE.cost(cost, { of }),
      LINE.price(own, { of }),
      LINE.withTax(priceWithTax, { of }),
      ...(marginShare ? [LINE.share(marginShare, { of })] : []),
    ]),
  ];
}

function thenFacts({ overruns, materials, exchange }: Sensitivity): readonly Fact[] {
  const moved = [
    ...overruns.map((one) => ({ one, what: 'hours' })),
    ...materials.map((one) => ({ one, what: one.materialClass })),
    ...exchange.map((one) => ({ one, what: one.currency })),
  ];
  return moved.map(({ one, what }) =>
    MARGIN_IF(one.margin, { of: `${what}.${decimalToShortText(one.move)}` }),
  );
}
