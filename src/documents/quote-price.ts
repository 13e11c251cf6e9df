import type { Figures } from '../figures/index.ts';
import { addMoney, formatMoney, isZero, type Money } from '../money/index.ts';
import { type Decimal, decimalToShortText } from '../units/index.ts';
import type { QuoteSum, QuoteView } from './quote-types.ts';

type Print = (money: Money) => string;

/** The price of the whole: the drive-away price and the sums that lead to it, to the cent. */
export function quotePrice({ price, build }: Figures): QuoteView['price'] {
  const { tax, locale, showPrices } = build.yard;
  const print: Print = (money) => formatMoney(money, locale);
  const heading = tax.pricesInclude ? `Price with ${tax.name}` : `Price before ${tax.name}`;
  const within = isZero(price.charges) ? '' : ` and charges of ${print(price.charges)}`;
  return {
    driveAway: print(price.driveAway),
    includes: `Includes ${tax.name} of ${print(price.tax)}${within}. Nothing is left to add.`,
    heading: showPrices === 'total' ? '' : heading,
    sums: [
      ...(tax.pricesInclude
        ? sumsWithTax(price, build, print)
        : sumsBeforeTax(price, build, print)),
      ...build.charges.map(({ name, amount }) => part(name, 'Passed on at cost', print(amount))),
    ],
  };
}

/** "12.5 %" of a fraction. */
export function percentText({ amount, scale }: Decimal): string {
  return `${decimalToShortText({ amount: amount * 100n, scale })}\u00A0%`;
}

function sumsWithTax(
  price: Figures['price'],
  build: Figures['build'],
  print: Print,
): readonly QuoteSum[] {
  const { name } = build.yard.tax;
  return [
    ...discounted(
      `All items with ${name}`,
      addMoney(price.boatWithTax, price.discountWithTax),
      price.discountWithTax,
      build,
      print,
    ),
    sum(`Boat and equipment with ${name}`, print(price.boatWithTax)),
  ];
}

function sumsBeforeTax(
  price: Figures['price'],
  build: Figures['build'],
  print: Print,
): readonly QuoteSum[] {
  const { name, rate } = build.yard.tax;
  return [
    ...discounted(`All items before ${name}`, price.listPrice, price.discount, build, print),
    sum(`Boat and equipment before ${name}`, print(price.taxable)),
    part(name, `At ${percentText(rate)}`, print(price.tax)),
    sum(`Boat and equipment with ${name}`, print(price.boatWithTax)),
  ];
}

function discounted(
  label: string,
  list: Money,
  discount: Money,
  { order }: Figures['build'],
  print: Print,
): readonly QuoteSum[] {
  if (!order.discount || isZero(discount)) return [];
  return [sum(label, print(list)), part('Discount', order.discount.reason, `−${print(discount)}`)];
}

const sum = (label: string, amount: string): QuoteSum => ({
  label,
  detail: '',
  amount,
  kind: 'sum',
});

const part = (label: string, detail: string, amount: string): QuoteSum => ({
  label,
  detail,
  amount,
  kind: 'part',
});
