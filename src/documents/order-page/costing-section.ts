import type { Figures } from '../../figures/index.ts';
import { type Account, agreedMargin } from '../../issued/index.ts';
import { formatMoney, isZero, type Money } from '../../money/index.ts';
import {
  formatterOf,
  type Decimal,
  decimalToNumber,
  NO_BREAK,
  UNIT_KINDS,
} from '../../units/index.ts';
import {
  figureColumn,
  flagRow,
  plainRow,
  type Section,
  section,
  type SectionRow,
  type SectionTable,
  sumRow,
  textColumn,
} from '../sections/section.ts';

interface Printer {
  readonly money: (amount: Money) => string;
  readonly share: (share: Decimal | undefined) => string;
  readonly hours: (hours: Decimal) => string;
}

/** What the order costs the shop, line by line, and what it leaves: for the yard's half only. */
export function costingSection(figures: Figures, account: Account | undefined): Section {
  const { build, price } = figures;
  const print = printerOf(figures);
  return section('costing', 'Costing', {
    words: [
      `${marginWords(figures, account, print)}; the shop’s least is ${print.share(build.yard.marginFloor)}.`,
    ],
    tables: [
      lineTable(figures, account, print),
      sumTable(figures, account, print),
      classTable(figures, print),
    ],
    notes: [
      'Price is cost / (1 - margin) unless a list fixes it; every amount is rounded once, half away from zero, and the sums are those of the printed lines.',
      ...(price.rates.length > 0
        ? [
            `Cost of an hour: ${price.rates.map(({ stage, rate }) => `${stage} ${print.money(rate)}`).join('; ')}.`,
          ]
        : []),
    ],
  });
}

/** What the margin becomes when things go otherwise than planned, at the price as quoted. */
export function sensitivitySection(figures: Figures, account: Account | undefined): Section {
  const { overruns, materials, exchange, breakEven } = figures.sensitivity;
  const print = printerOf(figures);
  const format = formatterOf(figures.build.yard);
  const row = (what: string, then: (typeof overruns)[number]): SectionRow =>
    plainRow(what, print.money(then.cost), print.money(then.margin), print.share(then.marginShare));
  return section('sensitivity', 'What if', {
    tables: [
      {
        caption: `Margin at the price ${account ? 'of the catalogue now' : 'as quoted'}`,
        columns: [
          textColumn('If'),
          figureColumn('Cost'),
          figureColumn('Margin'),
          figureColumn('Share'),
        ],
        rows: [
          ...overruns.map((then) => row(`hours overrun by ${print.share(then.move)}`, then)),
          ...materials.map((then) =>
            row(`${then.materialClass} rises by ${print.share(then.move)}`, then),
          ),
          ...exchange.map((then) =>
            row(`${then.currency} rises by ${print.share(then.move)}`, then),
          ),
        ],
      },
    ],
    words: [
      'notComputed' in breakEven
        ? `Hours that may overrun before nothing is left: not computed: ${breakEven.notComputed}.`
        : `Nothing is left when the hours overrun by ${print.hours(breakEven.hours)}${NO_BREAK}${format.unit('hours')}, ${print.share(breakEven.share)}.`,
    ],
  });
}

function lineTable(
  { build, price }: Figures,
  account: Account | undefined,
  print: Printer,
): SectionTable {
  const names = new Map(build.items.map(({ key, name }) => [key, name]));
  return {
    caption: `What each item costs and earns, before tax${account ? ', by the catalogue now' : ''}`,
    columns: [
      textColumn('Item'),
      ...['Hours', 'Materials', 'Packs', 'Freight', '{Labour}', 'Overhead', 'Other', 'Cost'].map(
        figureColumn,
      ),
      figureColumn('Rounding'),
      figureColumn('Price'),
      figureColumn('Discount'),
      figureColumn('Margin'),
      figureColumn('Share'),
    ],
    rows: price.lines.map((line) =>
      plainRow(
        `${names.get(line.key) ?? line.key}${line.fixed ? ' (list price)' : ''}`,
        print.hours(line.costedHours),
        print.money(line.materials),
        print.money(line.packs),
        print.money(line.freight),
        print.money(line.labour),
        print.money(line.overhead),
        print.money(line.other),
        print.money(line.cost),
        print.money(line.rounding),
        print.money(line.price),
        print.money(line.discount),
        print.money(line.margin),
        print.share(line.marginShare),
      ),
    ),
  };
}

function marginWords(
  { price, build }: Figures,
  account: Account | undefined,
  print: Printer,
): string {
  if (!account) return `Margin ${print.share(price.marginShare)} of the price before tax`;
  const { share } = agreedMargin(account, price.cost);
  const format = formatterOf(build.yard);
  return `Margin ${share === undefined ? 'none' : format.percent(share, 1)} of the price agreed, before tax, by what the boat costs now`;
}

function sumTable(
  { build, price }: Figures,
  account: Account | undefined,
  print: Printer,
): SectionTable {
  const { name } = build.yard.tax;
  const given = (label: string, amount: Money): readonly SectionRow[] =>
    isZero(amount) ? [] : [plainRow(label, print.money(amount))];
  return {
    caption: 'From the lines to the {final price}',
    columns: [textColumn('What'), figureColumn('Amount')],
    rows: [
      plainRow('Sum of the lines before tax', print.money(price.listPrice)),
      ...given('of which rounding of lines', price.lineRounding),
      ...given('already taken off by packages', price.savings),
      ...given('Discount', price.discount),
      ...given('Rounding of the whole', price.rounding.before),
      sumRow(`Before ${name}`, print.money(price.taxable)),
      plainRow(name, print.money(price.tax)),
      plainRow('Charges', print.money(price.charges)),
      ...given(`${name} on charges`, price.chargesTax),
      ...(account
        ? [
            plainRow('{Final price} by the catalogue now', print.money(price.driveAway)),
            sumRow('{Final price} agreed', print.money(account.total)),
            sumRow('Agreed, before tax and charges', print.money(account.beforeTax)),
            sumRow('Cost', print.money(price.cost)),
            sumRow('Margin', print.money(agreedMargin(account, price.cost).margin)),
          ]
        : [
            sumRow('{Final price}', print.money(price.driveAway)),
            ...given('Trade-in, taken in payment', price.tradeIn),
            ...given('Paid so far', price.paid),
            plainRow('Still to pay', print.money(price.toPay)),
            sumRow('Cost', print.money(price.cost)),
            sumRow('Margin', print.money(price.margin)),
          ]),
    ],
  };
}

function classTable({ price }: Figures, print: Printer): SectionTable {
  return {
    caption: 'Margin by class, against its target',
    columns: [
      textColumn('Class'),
      ...['Cost', 'Price', 'Margin', 'Share', 'Target'].map(figureColumn),
    ],
    rows: price.classes.map(
      ({ marginClass, cost, net, margin, marginShare, target, belowTarget }) =>
        (belowTarget ? flagRow : plainRow)(
          `${marginClass}${belowTarget ? ', below target' : ''}`,
          print.money(cost),
          print.money(net),
          print.money(margin),
          print.share(marginShare),
          print.share(target),
        ),
    ),
  };
}

function printerOf({ build }: Figures): Printer {
  const { locale } = build.yard;
  const format = formatterOf(build.yard);
  return {
    money: (amount) => formatMoney(amount, locale),
    share: (share) => (share ? format.percent(decimalToNumber(share), 1) : 'none'),
    hours: (hours) => format.bare('hours', decimalToNumber(hours) * UNIT_KINDS.duration.h),
  };
}
