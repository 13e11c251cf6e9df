import { currencyCode, type Money, moneyToText } from '../../money/index.ts';
import type { MarginThen } from '../../price/index.ts';
import { type Decimal, decimalToShortText } from '../../units/index.ts';
import type { FigureDatum, Figures } from '../types.ts';

type Data = Record<string, FigureDatum>;

const PRICE = 'cost / (1 - margin), rounded half away from zero once a line';

/** An amount of money as data. */
export const moneyDatum = (value: Money, method: string): FigureDatum => ({
  value: moneyToText(value),
  unit: currencyCode(value),
  method,
});
const share = (value: Decimal, method: string): FigureDatum => ({
  value: decimalToShortText(value),
  unit: '1',
  method,
});

/** Every figure of money of an order by a stable dotted name. */
export function priceData(figures: Figures): Readonly<Data> {
  return {
    ...totalsData(figures),
    ...lineData(figures),
    ...ratesData(figures),
    ...thenData(figures),
  };
}

function totalsData({ price, build }: Figures): Data {
  const { source } = build.yard.tax;
  const data: Data = {
    'price.cost': moneyDatum(
      price.cost,
      'materials, packs, freight, labour, overhead and other of lines',
    ),
    'price.list': moneyDatum(price.listPrice, `sum of lines; ${PRICE}`),
    'price.line-rounding': moneyDatum(
      price.lineRounding,
      'what rounding added to the lines, before tax',
    ),
    'price.package-savings': moneyDatum(price.savings, 'off the lines by packages, before tax'),
    'price.discount': moneyDatum(price.discount, 'as ordered, before tax'),
    'price.rounding': moneyDatum(
      price.rounding.before,
      'what rounding added to the whole, before tax',
    ),
    'price.taxable': moneyDatum(
      price.taxable,
      'list price less discount, rounded as the yard says',
    ),
    'price.trade-in-tax': moneyDatum(price.tradeInTax, 'tax not due on what a trade-in pays'),
    'price.tax': moneyDatum(
      price.tax,
      build.order.zeroRated ? (build.yard.tax.zeroRated ?? '') : source,
    ),
    'price.charges': moneyDatum(price.charges, 'passed on at cost, before tax'),
    'price.charges-tax': moneyDatum(price.chargesTax, 'of the charges that are taxed'),
    'price.drive-away': moneyDatum(price.driveAway, 'taxable + tax + charges with their tax'),
    'price.trade-in': moneyDatum(price.tradeIn, 'taken in payment'),
    'price.paid': moneyDatum(price.paid, 'received so far'),
    'price.to-pay': moneyDatum(price.toPay, 'drive-away less trade-in and what is paid'),
    'price.margin': moneyDatum(price.margin, 'taxable less cost'),
  };
  if (price.marginShare) data['price.margin-share'] = share(price.marginShare, 'margin / taxable');
  for (const one of price.classes) {
    data[`price.class.${one.marginClass}.margin`] = moneyDatum(
      one.margin,
      'net of discount less cost',
    );
    if (one.marginShare)
      data[`price.class.${one.marginClass}.margin-share`] = share(one.marginShare, 'margin / net');
  }
  return data;
}

function lineData({ price }: Figures): Data {
  const data: Data = {};
  for (const line of price.lines) {
    const name = `price.line.${line.key}`;
    data[`${name}.cost`] = moneyDatum(
      line.cost,
      'materials, packs, freight, labour, overhead, other',
    );
    data[`${name}.price`] = moneyDatum(line.price, line.fixed ? 'fixed list price' : PRICE);
    data[`${name}.with-tax`] = moneyDatum(line.priceWithTax, 'price + its share of the tax');
    if (line.marginShare)
      data[`${name}.margin-share`] = share(line.marginShare, 'net of discount less cost, of net');
  }
  return data;
}

const ratesData = ({ price }: Figures): Data =>
  Object.fromEntries(
    price.rates.map(({ stage, rate }) => [
      `rate.${stage}`,
      moneyDatum(rate, 'as the yard gives it, or wage x (1 + on-costs) / productive share'),
    ]),
  );

function thenData({ sensitivity, price }: Figures): Data {
  const then = (one: MarginThen): FigureDatum => moneyDatum(one.margin, 'costed again, price held');
  const data: Data = {};
  for (const one of sensitivity.overruns)
    data[`price.margin-if.hours.${decimalToShortText(one.move)}`] = then(one);
  for (const one of sensitivity.materials)
    data[`price.margin-if.${one.materialClass}.${decimalToShortText(one.move)}`] = then(one);
  for (const one of sensitivity.exchange)
    data[`price.margin-if.${one.currency}.${decimalToShortText(one.move)}`] = then(one);
  const { breakEven } = sensitivity;
  data['hours.break-even-overrun'] =
    'hours' in breakEven
      ? {
          value: decimalToShortText(breakEven.hours),
          unit: 'h',
          method: `margin of ${moneyToText(price.margin)} over what an hour costs`,
        }
      : { value: `not computed: ${breakEven.notComputed}`, unit: 'h', method: 'margin over cost' };
  return data;
}
