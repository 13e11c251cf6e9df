import { type Finding, describePlace, FINDING_CODES } from '../../findings/index.ts';
import { type Account, agreedMargin } from '../../issued/index.ts';
import { formatMoney, isZero, subtractMoney } from '../../money/index.ts';
import { type OrderState, type Overview, priceOf, type ShopPlan } from '../../plan/index.ts';
import { type Status, STATUSES, type Yard } from '../../schema/index.ts';
import {
  formatterOf,
  decimalToNumber,
  formatDate,
  type Formatter,
  type NotComputed,
  NO_BREAK,
} from '../../units/index.ts';
import { pageHead, type PageHead } from '../sections/head.ts';
import type { CaptionedPicture } from '../sections/picture.ts';
import { boatsOf, planChart, timeliness } from './plan-page.ts';
import { signedMoney } from '../sections/words.ts';

export interface IndexRow {
  readonly number: string;
  readonly status: string;
  readonly customer: string;
  readonly boat: string;
  readonly driveAway: string;
  readonly margin: string;
  readonly mass: string;
  readonly hours: string;
  readonly promised: string;
  readonly late: boolean;
  readonly expired: boolean;
  /** "2 errors"; empty when there are none. */
  readonly errors: string;
  /** "1 warning, 2 notes"; empty when there are none. */
  readonly remarks: string;
  readonly documents: readonly {
    readonly name: string;
    readonly page: string;
    /** Empty when no PDFs are made. */
    readonly pdf: string;
  }[];
  /** The yard's page of the order; empty when the order has no figures. */
  readonly page: string;
  /** Every figure as data; empty when the order has none. */
  readonly figures: string;
  /** The quote that was sent last, and what became of its price; empty when none was. */
  readonly issued: string;
}

/** One order in the plan. */
export interface IndexPlanRow {
  readonly number: string;
  readonly boat: string;
  readonly planned: string;
  readonly promised: string;
  /** "17 days late", "36 days to spare"; empty without a promise. */
  readonly inTime: string;
  readonly late: boolean;
  readonly waits: string;
}

export interface IndexView {
  readonly document: PageHead;
  readonly shop: string;
  readonly today: string;
  readonly rows: readonly IndexRow[];
  /** Orders that are being built, the first to finish first. */
  readonly plan: readonly IndexPlanRow[];
  /** The plan drawn; undefined when there is nothing to draw. */
  readonly chart: CaptionedPicture | undefined;
  readonly totals: readonly {
    readonly status: string;
    readonly count: number;
    readonly driveAway: string;
  }[];
  readonly findings: readonly {
    readonly heading: string;
    readonly lines: readonly FindingLine[];
  }[];
  readonly unread: readonly string[];
}

/** The documents of each order, by its number, as the index links to them. */
export type IndexLinks = ReadonlyMap<string, IndexRow['documents']>;

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
export function indexView({
  overview,
  plan,
  fontCss,
  yard,
  findings,
  sources,
  unread,
  documents,
}: IndexInput): IndexView {
  const format = formatterOf(yard);
  const heading = (state: OrderState): string => {
    const { number, customer } = state.entry.order.value;
    return `${number} ${customer.name}`;
  };
  const inWords = (list: readonly Finding[]) => list.map((one) => findingLine(one, sources));
  return {
    document: pageHead(
      yard,
      `Orders of ${yard.shop.name}`,
      'Every order with its status, price, mass and findings',
    ),
    shop: yard.shop.name,
    today: formatDate(overview.today, yard.locale),
    rows: overview.orders.map((state) => row(state, yard, format, documents)),
    plan: planRows(overview, yard),
    chart: 'notComputed' in plan ? undefined : planChart(plan, overview, yard, fontCss),
    totals: overview.totals
      .toSorted((a, b) => STATUSES.indexOf(a.status) - STATUSES.indexOf(b.status))
      .map(({ status, count, driveAway }) => ({
        status: STATUS_WORDS[status],
        count,
        driveAway: driveAway ? formatMoney(driveAway, yard.locale) : 'no price',
      })),
    findings: [
      { heading: 'Catalogue and files', lines: inWords(findings) },
      ...overview.orders.map((state) => ({
        heading: heading(state),
        lines: inWords(state.findings),
      })),
    ].filter(({ lines }) => lines.length > 0),
    unread,
  };
}

function planRows(overview: Overview, yard: Yard): readonly IndexPlanRow[] {
  const boats = boatsOf(overview);
  return overview.orders
    .flatMap(({ planned }) => planned ?? [])
    .toSorted((a, b) => a.ends.localeCompare(b.ends))
    .map((planned) => ({
      number: planned.number,
      boat: boats.get(planned.number) ?? '',
      planned: formatDate(planned.ends, yard.locale),
      promised: planned.promised === undefined ? '' : formatDate(planned.promised, yard.locale),
      inTime: timeliness(planned, yard),
      late: (planned.daysLate ?? 0) > 0,
      waits: planned.binds === '' ? 'nothing but its own work' : planned.binds,
    }));
}

function row(state: OrderState, yard: Yard, format: Formatter, documents: IndexLinks): IndexRow {
  const { order, figures } = state.entry;
  const { number, status, customer, boat, hull, dates } = order.value;
  const model = figures?.build.hull.name ?? hull;
  const price = priceOf(state);
  return {
    number,
    status: STATUS_WORDS[status],
    customer: customer.name,
    boat: boat.name === undefined ? model : `${boat.name} (${model})`,
    driveAway: price ? formatMoney(price, yard.locale) : 'not computed: see findings',
    margin: figures ? marginText(figures.price, state.account, format) : '',
    mass: figures ? format.mass(figures.mass.ready.mass) : '',
    hours: hoursText(state, format),
    promised: dates.promised === undefined ? '' : formatDate(dates.promised, yard.locale),
    late: state.late,
    expired: state.expired,
    errors: counted(state.findings, 'error'),
    remarks: [counted(state.findings, 'warning'), counted(state.findings, 'note')]
      .filter(Boolean)
      .join(', '),
    documents: documents.get(number) ?? [],
    page: figures ? `${number}/order.html` : '',
    figures: figures ? `${number}/figures.json` : '',
    issued: issuedText(state, yard),
  };
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

/** A finding in words for a page of the yard. */
interface FindingLine {
  readonly severity: string;
  readonly code: string;
  readonly means: string;
  readonly received: string;
  readonly expected: string;
  readonly remedy: string;
  readonly place: string;
}

const SEVERITY_WORDS = { error: 'Error', warning: 'Warning', note: 'Note' } as const;

/**
 * @param sources - the text of each file by its name, for line and column
 */
function findingLine(finding: Finding, sources: ReadonlyMap<string, string>): FindingLine {
  return {
    severity: SEVERITY_WORDS[finding.severity],
    code: finding.code,
    means: FINDING_CODES[finding.code].means,
    received: finding.received,
    expected: finding.expected ?? '',
    remedy: finding.remedy,
    place: describePlace(finding.place, sources.get(finding.place.file)),
  };
}
