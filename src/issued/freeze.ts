import { type Figures, figuresData } from '../figures/index.ts';
import { type IsoDate, ZERO } from '../units/index.ts';
import { FORMAT, type IssuedQuote, type Sealed } from './form/form.ts';
import { written } from './form/texts.ts';
import { pricingOf } from './pricing.ts';

interface Freezing {
  readonly figures: Figures;
  readonly revision: number;
  readonly issuedOn: IsoDate;
  readonly inputs: IssuedQuote['inputs'];
  readonly view: unknown;
}

/** The content of an issued quote's file: what is asked of it ever after, and all that was said, as plain data. */
export function freezeQuote({ figures, revision, issuedOn, inputs, view }: Freezing): unknown {
  const { build, price } = figures;
  const { order, yard, currency } = build;
  const { driveAway, taxable, tax, charges, chargesTax, discountWithTax, tradeIn } = price;
  const names = new Map(build.items.map(({ key, name }) => [key, name]));
  const sealed: Sealed = {
    format: FORMAT,
    number: order.number,
    revision,
    issuedOn,
    status: order.status,
    currency,
    zeroRated: order.zeroRated !== undefined,
    tax: { name: yard.tax.name, rate: order.zeroRated ? ZERO : yard.tax.rate },
    price: { driveAway, taxable, tax, charges, chargesTax, discountWithTax, tradeIn },
    payments: price.payments.map(({ name, when, amount }) => ({ name, when, amount })),
    rows: price.lines.map(({ key, priceWithTax }) => ({
      key,
      name: names.get(key) ?? key,
      withTax: priceWithTax,
    })),
    inputs,
    view,
    pricing: pricingOf(build),
    figures: figuresData(figures),
  };
  return written(sealed);
}
