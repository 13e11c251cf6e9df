import type { CustomerFigures } from '../../figures/index.ts';
import {
  addMoney,
  formatMoney,
  isNegative,
  isZero,
  type Money,
  subtractMoney,
  sumMoney,
} from '../../money/index.ts';
import { type Decimal, percentText } from '../../units/index.ts';
import { bareTable, type Block, column, row, type Row, words } from '../blocks/block.ts';
import { sentence } from '../sections/words.ts';

type Print = (money: Money) => string;

/** What the final price has inside it; nothing is left to add. */
export function priceIncludes({ price, build }: CustomerFigures): string {
  const print: Print = (money) => formatMoney(money, build.yard.locale);
  const within = isZero(price.charges) ? '' : ` and charges of ${print(price.charges)}`;
  const taxInAll = addMoney(price.tax, price.chargesTax);
  return `Includes ${build.yard.tax.name} of ${print(taxInAll)}${within}. Nothing is left to add.`;
}

/** The sums that lead to the final price, to the cent, and what to know beside them. */
export function priceSums(figures: CustomerFigures): readonly Block[] {
  const { price, build } = figures;
  const { tax, locale } = build.yard;
  const print: Print = (money) => formatMoney(money, locale);
  const rows = [
    ...(tax.pricesInclude ? sumsWithTax(price, build, print) : sumsBeforeTax(price, build, print)),
    ...price.chargeLines.map((line) =>
      part(
        line.name,
        isZero(line.tax) ? 'Passed on at cost' : `Passed on, with ${tax.name}`,
        print(line.withTax),
      ),
    ),
    row('whole', '{Final price}', print(price.driveAway)),
  ];
  return [...bareTable(SUM_COLUMNS, rows), ...words('small', ...priceRemarks(figures, print))];
}

/** What, and how much. */
export const SUM_COLUMNS = [column('head', 'What'), column('num', 'Amount')];

function sumsWithTax(
  price: CustomerFigures['price'],
  build: CustomerFigures['build'],
  print: Print,
): readonly Row[] {
  const { name } = build.yard.tax;
  const between = [
    ...discountPart(price.discountWithTax, build, print),
    ...signedPart('Rounding', '', price.rounding.withTax, print),
    ...tradeInTaxPart(price, name, print),
  ];
  const items = sumMoney(
    price.lines.map((line) => line.priceWithTax),
    build.currency,
  );
  return [
    ...(between.length > 0 ? [sum(`All items with ${name}`, print(items)), ...between] : []),
    sum(`Boat and equipment with ${name}`, print(price.boatWithTax)),
    part(
      `of which ${name}`,
      taxDetail(build, build.yard.tax.rate),
      print(addMoney(price.tax, price.tradeInTax)),
    ),
    part(`of which price before ${name}`, '', print(price.taxable)),
  ];
}

function sumsBeforeTax(
  price: CustomerFigures['price'],
  build: CustomerFigures['build'],
  print: Print,
): readonly Row[] {
  const { name, rate } = build.yard.tax;
  const between = [
    ...discountPart(price.discount, build, print),
    ...signedPart('Rounding', '', price.rounding.before, print),
  ];
  return [
    ...(between.length > 0
      ? [sum(`All items before ${name}`, print(price.listPrice)), ...between]
      : []),
    sum(`Boat and equipment before ${name}`, print(price.taxable)),
    part(name, taxDetail(build, rate), print(addMoney(price.tax, price.tradeInTax))),
    ...tradeInTaxPart(price, name, print),
    sum(`Boat and equipment with ${name}`, print(price.boatWithTax)),
  ];
}

function taxDetail({ order, yard }: CustomerFigures['build'], rate: Decimal): string {
  return order.zeroRated ? `Zero-rated: ${yard.tax.zeroRated ?? ''}` : `At ${percentText(rate)}`;
}

function discountPart(
  discount: Money,
  { order }: CustomerFigures['build'],
  print: Print,
): readonly Row[] {
  if (!order.discount || isZero(discount)) return [];
  return [part('Discount', order.discount.reason, `−${print(discount)}`)];
}

function tradeInTaxPart(
  { tradeInTax }: CustomerFigures['price'],
  tax: string,
  print: Print,
): readonly Row[] {
  if (isZero(tradeInTax)) return [];
  const label = `${tax} not due on what is traded in`;
  return [part(label, 'Check with your accountant', `−${print(tradeInTax)}`)];
}

function signedPart(label: string, detail: string, amount: Money, print: Print): readonly Row[] {
  if (isZero(amount)) return [];
  const text = isNegative(amount) ? `−${print(negated(amount))}` : print(amount);
  return [part(label, detail, text)];
}

const negated = (amount: Money): Money => subtractMoney(subtractMoney(amount, amount), amount);

/** What a customer should know about the price beside its sums. */
function priceRemarks({ price, build }: CustomerFigures, print: Print): readonly string[] {
  const { order, packages, yard } = build;
  const saved = packages.flatMap(({ name, keys }) => {
    const saving = sumMoney(
      price.lines.filter(({ key }) => keys.includes(key)).map((line) => line.saving),
      build.currency,
    );
    return isZero(saving)
      ? []
      : [
          `Package “${name}”: saving of ${print(saving)} before ${yard.tax.name}, already taken off the items above.`,
        ];
  });
  return [
    ...saved,
    ...(order.zeroRated ? [`No ${yard.tax.name} is due: ${sentence(order.zeroRated.reason)}`] : []),
    ...(order.tradeIn
      ? [
          `${sentence(order.tradeIn.name)} Taken in part payment: check with your accountant what that means for your tax.`,
        ]
      : []),
  ];
}

const sum = (label: string, amount: string): Row => row('sum', label, amount);

const part = (label: string, detail: string, amount: string): Row =>
  row('part', { text: label, under: detail }, amount);
