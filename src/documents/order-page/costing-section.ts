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
  captioned,
  figureColumns,
  type Part,
  row,
  type Row,
  section,
  smallPrint,
  type Table,
} from '../blocks/block.ts';

interface Printer {
  readonly money: (amount: Money) => string;
  readonly share: (share: Decimal | undefined) => string;
  readonly hours: (hours: Decimal) => string;
}

/** What the order costs the shop, line by line, and what it leaves: for the yard's half only. */
export function costingSection(figures: Figures, account: Account | undefined): Part {
  const { build, price } = figures;
  const print = printerOf(figures);
  return section(
    'costing',
    'Costing',
    `${marginWords(figures, account, print)}; the shop’s least is ${print.share(build.yard.marginFloor)}.`,
    lineTable(figures, account, print),
    sumTable(figures, account, print),
    classTable(figures, print),
    ...smallPrint([
      'Price is cost / (1 - margin) unless a list fixes it; every amount is rounded once, half away from zero, and the sums are those of the printed lines.',
      ...(price.rates.length > 0
        ? [
            `Cost of an hour: ${price.rates.map(({ stage, rate }) => `${stage} ${print.money(rate)}`).join('; ')}.`,
          ]
        : []),
    ]),
  );
}

/** What the margin becomes when things go otherwise than planned, at the price as quoted. */
export function sensitivitySection(figures: Figures, account: Account | undefined): Part {
  const { overruns, materials, exchange, breakEven } = figures.sensitivity;
  const print = printerOf(figures);
  const format = formatterOf(figures.build.yard);
  const thenRow = (what: string, then: (typeof overruns)[number]): Row =>
    row(
      'plain',
      what,
      print.money(then.cost),
      print.money(then.margin),
      print.share(then.marginShare),
    );
  return section(
    'sensitivity',
    'What if',
    'notComputed' in breakEven
      ? `Hours that may overrun before nothing is left: not computed: ${breakEven.notComputed}.`
      : `Nothing is left when the hours overrun by ${print.hours(breakEven.hours)}${NO_BREAK}${format.unit('hours')}, ${print.share(breakEven.share)}.`,
    captioned(
      `Margin at the price ${account ? 'of the catalogue now' : 'as quoted'}`,
      figureColumns('If', 'Cost', 'Margin', 'Share'),
      [
        ...overruns.map((then) => thenRow(`hours overrun by ${print.share(then.move)}`, then)),
        ...materials.map((then) =>
          thenRow(`${then.materialClass} rises by ${print.share(then.move)}`, then),
        ),
        ...exchange.map((then) =>
          thenRow(`${then.currency} rises by ${print.share(then.move)}`, then),
        ),
      ],
    ),
  );
}

function lineTable({ build, price }: Figures, account: Account | undefined, print: Printer): Table {
  const names = new Map(build.items.map(({ key, name }) => [key, name]));
  return captioned(
    `What each item costs and earns, before tax${account ? ', by the catalogue now' : ''}`,
    figureColumns(
      'Item',
      'Hours',
      'Materials',
      'Packs',
      'Freight',
      '{Labour}',
      'Overhead',
      'Other',
      'Cost',
      'Rounding',
      'Price',
      'Discount',
      'Margin',
      'Share',
    ),
    price.lines.map((line) =>
      row(
        'plain',
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
  );
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

function sumTable({ build, price }: Figures, account: Account | undefined, print: Printer): Table {
  const { name } = build.yard.tax;
  const given = (label: string, amount: Money): readonly Row[] =>
    isZero(amount) ? [] : [row('plain', label, print.money(amount))];
  return captioned('From the lines to the {final price}', figureColumns('What', 'Amount'), [
    row('plain', 'Sum of the lines before tax', print.money(price.listPrice)),
    ...given('of which rounding of lines', price.lineRounding),
    ...given('already taken off by packages', price.savings),
    ...given('Discount', price.discount),
    ...given('Rounding of the whole', price.rounding.before),
    row('sum', `Before ${name}`, print.money(price.taxable)),
    row('plain', name, print.money(price.tax)),
    row('plain', 'Charges', print.money(price.charges)),
    ...given(`${name} on charges`, price.chargesTax),
    ...(account
      ? [
          row('plain', '{Final price} by the catalogue now', print.money(price.driveAway)),
          row('sum', '{Final price} agreed', print.money(account.total)),
          row('sum', 'Agreed, before tax and charges', print.money(account.beforeTax)),
          row('sum', 'Cost', print.money(price.cost)),
          row('sum', 'Margin', print.money(agreedMargin(account, price.cost).margin)),
        ]
      : [
          row('sum', '{Final price}', print.money(price.driveAway)),
          ...given('Trade-in, taken in payment', price.tradeIn),
          ...given('Paid so far', price.paid),
          row('plain', 'Still to pay', print.money(price.toPay)),
          row('sum', 'Cost', print.money(price.cost)),
          row('sum', 'Margin', print.money(price.margin)),
        ]),
  ]);
}

function classTable({ price }: Figures, print: Printer): Table {
  return captioned(
    'Margin by class, against its target',
    figureColumns('Class', 'Cost', 'Price', 'Margin', 'Share', 'Target'),
    price.classes.map(({ marginClass, cost, net, margin, marginShare, target, belowTarget }) =>
      row(
        belowTarget ? 'flag' : 'plain',
        `${marginClass}${belowTarget ? ', below target' : ''}`,
        print.money(cost),
        print.money(net),
        print.money(margin),
        print.share(marginShare),
        print.share(target),
      ),
    ),
  );
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
