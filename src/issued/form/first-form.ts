import { decimalToShortText, parseDecimal } from '../../units/index.ts';
import { isRecord, textsByName } from './texts.ts';

/** The first form kept the values of the program as they were called then. */
export const FIRST_FORMAT = 'orlop issued quote 1';

type Fields = Readonly<Record<string, unknown>>;

/** What of a yard file a price was made with. */
const SETTINGS = [
  'learning',
  'margins',
  'overhead',
  'overheadShare',
  'rates',
  'rework',
  'rounding',
  'suppliers',
  'tax',
  'trades',
  'wastage',
] as const;

/**
 * The content of a file of the first form in the words of the second, each field picked out by its name. It is data
 * still: whether it is a quote is for the schema of the second to say, and what the file lacks is lacking here.
 */
export function inSecondForm(content: Fields): {
  readonly quote: Fields;
  readonly pricing: Fields;
} {
  const { number, revision, issuedOn, inputs, view, figures } = content;
  const { build, price } = fields(figures);
  const { order, yard, items, currency } = fields(build);
  const { status, zeroRated } = fields(order);
  const { name, rate } = fields(fields(yard)['tax']);
  const { lines, payments, charges, chargesTax = nothingOf(charges), ...amounts } = fields(price);
  const names = new Map(
    all(items)
      .map(fields)
      .map((item) => [item['key'], item['name']]),
  );
  const quote = plain({
    number,
    revision,
    issuedOn,
    inputs,
    status,
    currency,
    zeroRated: zeroRated !== undefined,
    tax: { name, rate: zeroRated === undefined ? rate : '0' },
    // Charges could not be taxed at first.
    price: { ...amounts, charges, chargesTax },
    payments,
    rows: list(lines, ({ key, priceWithTax }) => ({
      key,
      name: names.get(key) ?? key,
      withTax: priceWithTax,
    })),
  });
  return { quote: { ...fields(quote), view }, pricing: fields(plain(pricingOf(fields(build)))) };
}

function pricingOf({ order, yard, items, exchange, packages }: Fields): Fields {
  const { discount, firstOfKind, hullCount } = fields(order);
  const nth = firstOfKind === true ? 1 : hullCount;
  return {
    items: list(items, ({ parts, marginClass, otherCost, fixedPrice, ...item }) => ({
      ...item,
      class: marginClass,
      other: otherCost,
      fixed: fixedPrice,
      parts: list(parts, ({ materialClass, unitCost, ...part }) => ({
        ...part,
        class: materialClass,
        cost: unitCost,
      })),
    })),
    rules: { ...rulesOf(fields(yard), nth), exchange },
    packages,
    discount,
    nth,
    settings: textsByName(
      Object.fromEntries(SETTINGS.map((name) => [name, fields(yard)[name]])),
      shortText,
    ),
  };
}

function rulesOf({ suppliers, tax, learning, ...yard }: Fields, nth: unknown): Fields {
  const { rounding: taxRounding, fractions: taxFractions } = fields(tax);
  const { factors, stages: learnt } = fields(learning);
  const factor = typeof nth === 'number' ? all(factors)[nth - 1] : undefined;
  return {
    ...yard,
    rates: ratesOf(yard),
    learning: Object.fromEntries(all(learnt).map((stage) => [stage, factor])),
    freight: each(suppliers, ({ freight }) => freight),
    taxRounding,
    taxFractions,
  };
}

/** A stage's own rate went before its trade's. */
const ratesOf = ({ rates, stages, trades }: Fields): Fields => ({
  ...each(stages, ({ trade }) => fields(trades)[String(trade)]),
  ...fields(rates),
});

const each = (data: unknown, part: (one: Fields) => unknown): Fields =>
  Object.fromEntries(Object.entries(fields(data)).map(([name, one]) => [name, part(fields(one))]));

const fields = (data: unknown): Fields => (isRecord(data) ? data : {});
const all = (data: unknown): readonly unknown[] => (Array.isArray(data) ? data : []);
/** A list, each of it turned; what is no list stays for the schema to refuse. */
const list = (data: unknown, of: (one: Fields) => unknown): unknown =>
  Array.isArray(data) ? data.map(fields).map(of) : data;

/** No money, as the first form wrote an amount. */
const nothingOf = (amount: unknown): Fields => ({ ...fields(amount), $money: '0' });

/** Amounts, decimals and currencies as the second form writes them; what is not there is left out. */
function plain(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(plain);
  if (!isRecord(data)) return data;
  const { $money: money, $decimal: decimal, $currency: code, currency } = data;
  if (typeof money === 'string') return `${money} ${String(currency)}`;
  if (decimal !== undefined || code !== undefined) return decimal ?? code;
  const kept = Object.entries(data).filter(([, part]) => part !== undefined);
  return Object.fromEntries(kept.map(([key, part]) => [key, plain(part)]));
}

function shortText(data: unknown): string | undefined {
  const text = isRecord(data) ? data['$decimal'] : undefined;
  const decimal = typeof text === 'string' ? parseDecimal(text) : undefined;
  return decimal && decimalToShortText(decimal);
}
