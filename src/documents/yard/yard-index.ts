import { type Finding, describePlace, FINDING_CODES } from '../../findings/index.ts';
import { type Account, agreedMargin } from '../../issued/index.ts';
import { formatMoney, isZero, subtractMoney } from '../../money/index.ts';
import {
  type OrderState,
  type Overview,
  priceOf,
  type ShopPlan,
  waitsFor,
} from '../../plan/index.ts';
import { type Status, STATUSES, type Yard } from '../../schema/index.ts';
import {
  formatterOf,
  decimalToNumber,
  formatDate,
  type Formatter,
  type NotComputed,
  NO_BREAK,
} from '../../units/index.ts';
import {
  type Block,
  captioned,
  factList,
  type FullCell,
  heads,
  type Link,
  type Part,
  part,
  picture,
  row,
  type Row,
  section,
  under,
  words,
} from '../blocks/block.ts';
import type { YardPage } from '../blocks/page.ts';
import { pageHead } from '../sections/head.ts';
import { TO } from './links.ts';
import { boatsOf, planChart, timeliness } from './plan-page.ts';
import { SEVERITY_WORDS, signedMoney } from '../sections/words.ts';

/** Links to the documents of each order, by its number. */
export type IndexLinks = ReadonlyMap<string, readonly Link[]>;

interface IndexInput {
  readonly overview: Overview;
  readonly plan: ShopPlan | NotComputed;
  readonly fontCss: string;
  readonly yard: Yard;
  /** Findings of files and of the catalogue. */
  readonly findings: readonly Finding[];
  readonly sources: ReadonlyMap<string, string>;
  /** Order files that could not be read at all. */
  readonly unread: readonly string[];
  /** The documents of each order, by its number. */
  readonly documents: IndexLinks;
}

const STATUS_WORDS: Readonly<Record<Status, string>> = {
  enquiry: 'Enquiry',
  quoted: 'Quoted',
  accepted: 'Accepted',
  building: 'Building',
  ready: 'Ready',
  'handed-over': 'Handed over',
  closed: 'Closed',
};

/** Every order at a glance, for the owner of the shop. */
export function indexView(input: IndexInput): YardPage {
  const { overview, yard } = input;
  return {
    document: pageHead(
      yard,
      `Orders of ${yard.shop.name}`,
      'Every order with its status, price, mass and findings',
    ),
    heading: 'Orders',
    lead: `${yard.shop.name}, ${formatDate(overview.today, yard.locale)}.`,
    links: [TO.methods, TO.checks, TO.fields],
    hasContents: false,
    parts: [
      ...part('alert', 'Order files that could not be read', ...words('list', ...input.unread)),
      totalsPart(overview, yard),
      ordersPart(input),
      planPart(input),
      ...part('findings', 'Findings', ...findingBlocks(input)),
    ],
  };
}

function totalsPart({ totals }: Overview, yard: Yard): Part {
  const facts = totals
    .toSorted((a, b) => STATUSES.indexOf(a.status) - STATUSES.indexOf(b.status))
    .map(({ status, count, driveAway }) => ({
      label: STATUS_WORDS[status],
      value: formatterOf(yard).number(count, 0),
      detail: driveAway ? formatMoney(driveAway, yard.locale) : 'no price',
    }));
  return section('totals', 'By status', factList('totals', facts));
}

function ordersPart({ overview, yard, documents }: IndexInput): Part {
  const columns = [
    ...heads('text', 'Order', 'Status', 'Customer', 'Boat'),
    ...heads('num', '{Final price}', 'Margin', 'Ready mass', 'Hours'),
    ...heads('text', 'Promised', 'Findings', 'Documents'),
  ];
  const rows = overview.orders.map((state) => orderRow(state, yard, documents));
  return section('orders', 'All orders', captioned('All orders', columns, rows));
}

function planPart({ overview, plan, yard, fontCss }: IndexInput): Part {
  const chart = 'notComputed' in plan ? undefined : planChart(plan, overview, yard, fontCss);
  const rows = planRows(overview, yard);
  return section(
    'plan',
    'Plan',
    ...words('plain', {
      text: '',
      links: [
        { text: 'The plan by weeks, {moulds} and people', page: 'plan.html' },
        { text: 'What must be ordered', page: 'purchases.html' },
      ],
    }),
    ...(chart ? [picture(chart)] : []),
    ...(rows.length > 0
      ? [
          captioned(
            'Accepted orders',
            heads('text', 'Order', 'Boat', 'Planned finish', 'Promised', 'In time', 'Waits for'),
            rows,
          ),
        ]
      : words('plain', 'No order is accepted.')),
  );
}

/** Orders that are being built, the first to finish first. */
function planRows(overview: Overview, yard: Yard): readonly Row[] {
  const boats = boatsOf(overview);
  return overview.orders
    .flatMap(({ planned }) => planned ?? [])
    .toSorted((a, b) => a.ends.localeCompare(b.ends))
    .map((planned) => {
      const inTime = timeliness(planned, yard);
      return row(
        'plain',
        planned.number,
        boats.get(planned.number) ?? '',
        formatDate(planned.ends, yard.locale),
        planned.promised === undefined ? '' : formatDate(planned.promised, yard.locale),
        (planned.daysLate ?? 0) > 0 ? { text: '', flag: inTime } : inTime,
        waitsFor(planned),
      );
    });
}

function orderRow(state: OrderState, yard: Yard, documents: IndexLinks): Row {
  const { order, figures } = state.entry;
  const { number, status, customer, boat, hull, dates } = order.value;
  const format = formatterOf(yard);
  const model = figures?.build.hull.name ?? hull;
  const price = priceOf(state);
  const errors = counted(state.findings, 'error');
  const remarks = [counted(state.findings, 'warning'), counted(state.findings, 'note')]
    .filter(Boolean)
    .join(', ');
  return row(
    'plain',
    figures ? { text: '', links: [{ text: number, page: `${number}/order.html` }] } : number,
    { text: STATUS_WORDS[status], ...(state.expired && { flag: 'expired' }) },
    customer.name,
    boat.name === undefined ? model : `${boat.name} (${model})`,
    {
      text: price ? formatMoney(price, yard.locale) : 'not computed: see findings',
      under: issuedText(state, yard),
    },
    figures ? marginText(figures.price, state.account, format) : '',
    figures ? format.mass(figures.mass.ready.mass) : '',
    hoursText(state, format),
    {
      text: dates.promised === undefined ? '' : formatDate(dates.promised, yard.locale),
      ...(state.late && { flag: 'late' }),
    },
    errors === '' ? remarks : { text: '', flag: errors, under: remarks },
    {
      text: '',
      links: [
        ...(documents.get(number) ?? []),
        ...(figures ? [{ text: 'Figures', page: `${number}/figures.json` }] : []),
      ],
    },
  );
}

type PriceFigures = NonNullable<OrderState['entry']['figures']>['price'];

function marginText(
  { cost, marginShare }: PriceFigures,
  account: Account | undefined,
  format: Formatter,
): string {
  if (account) {
    const { share } = agreedMargin(account, cost);
    return share === undefined ? 'none' : format.percent(share, 1);
  }
  return marginShare ? format.percent(decimalToNumber(marginShare), 1) : 'none';
}

function hoursText({ hoursPlanned, hoursWorked }: OrderState, format: Formatter): string {
  if (!hoursPlanned) return '';
  const planned = format.number(decimalToNumber(hoursPlanned), 0);
  return hoursWorked ? `${format.number(decimalToNumber(hoursWorked), 0)} of ${planned}` : planned;
}

/** "r2 of 12 Oct 2026, +$120.00 today". */
function issuedText({ issued, drift }: OrderState, { locale }: Yard): string {
  if (!issued) return '';
  const sent = `r${issued.revision} of ${formatDate(issued.issuedOn, locale)}`;
  if (!drift || 'notComputed' in drift) return sent;
  const change = subtractMoney(drift.now, drift.was);
  if (isZero(change)) return sent;
  return `${sent}, ${signedMoney(change, locale)} today`;
}

/** "1 warning", "2 warnings"; empty for none. */
function counted(findings: readonly Finding[], severity: Finding['severity']): string {
  const count = findings.filter((one) => one.severity === severity).length;
  return count === 0 ? '' : `${count}${NO_BREAK}${severity}${count === 1 ? '' : 's'}`;
}

function findingBlocks({ findings, overview, sources }: IndexInput): readonly Block[] {
  const groups = [
    { heading: 'Catalogue and files', all: findings },
    ...overview.orders.map(({ entry: { order }, findings: all }) => ({
      heading: `${order.value.number} ${order.value.customer.name}`,
      all,
    })),
  ];
  return groups.flatMap(({ heading, all }) =>
    all.length === 0
      ? []
      : [under('', heading, ...words('findings', ...all.map((one) => findingLine(one, sources))))],
  );
}

/**
 * @param sources - the text of each file by its name, for line and column
 */
function findingLine(
  { code, severity, received, expected, remedy, place }: Finding,
  sources: ReadonlyMap<string, string>,
): FullCell {
  const wanted = expected === undefined ? '' : ` Expected: ${expected}.`;
  const text = `${FINDING_CODES[code].means}: ${received}.${wanted} Fix: ${remedy}.`;
  const word = `${SEVERITY_WORDS[severity]}.`;
  return { text, strong: word, under: describePlace(place, sources.get(place.file)) };
}
