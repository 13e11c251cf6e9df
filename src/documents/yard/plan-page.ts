import {
  type Offer,
  type OrderDays,
  type Overview,
  type ShopPlan,
  waitsFor,
} from '../../plan/index.ts';
import type { Yard } from '../../schema/index.ts';
import { formatterOf, formatDate, type IsoDate, type NotComputed } from '../../units/index.ts';
import { pageHead } from '../sections/head.ts';
import { type CaptionedPicture, pictureOf } from '../sections/picture.ts';
import type { YardPage } from '../blocks/page.ts';
import { TO } from './links.ts';
import { drawPlan } from './plan-drawing.ts';
import {
  captioned,
  heads,
  type Part,
  picture,
  row,
  section,
  sentences,
  smallPrint,
} from '../blocks/block.ts';

interface PlanPageInput {
  readonly plan: ShopPlan | NotComputed;
  readonly overview: Overview;
  readonly yard: Yard;
  readonly fontCss: string;
}

/** How the plan is made, for whoever relies on it. */
const METHOD = [
  'Orders in a {mould} first, then by promised day; each order is placed as a whole, its stages as early as {mould}, people, parts and calendar allow, the longest remaining chain first. Then other sequences are tried and the best is kept: fewest days late in all, then the earliest finishes.',
  'Method: serial schedule generation (Kolisch and Hartmann in Weglarz (ed.), Project Scheduling, 1999). An estimate: it knows the hours of the catalogue and the record, and no illness, weather or rework.',
  'Parts that no order calls bought are taken to be ordered today. Cures go on through nights and weekends.',
];

/** When each order is built and what holds it up: the drawing, the dates, and what could be promised next. */
export function planPageView({ plan, overview, yard, fontCss }: PlanPageInput): YardPage {
  const head = {
    document: pageHead(
      yard,
      `Plan of ${yard.shop.name}`,
      'When each order is built, in which {mould}, by whom, and what holds it up',
    ),
    heading: 'Plan',
    lead: `${yard.shop.name}, ${formatDate(overview.today, yard.locale)}.`,
    links: [TO.orders, TO.purchases],
    hasContents: false,
  };
  if ('notComputed' in plan) {
    const words = [`not computed: ${plan.notComputed}`];
    return { ...head, parts: [section('orders', 'Orders', ...sentences(words))] };
  }
  const boats = boatsOf(overview);
  const chart = planChart(plan, overview, yard, fontCss);
  return {
    ...head,
    parts: [
      ...(chart ? [section('chart', 'At a glance', ...[chart].map(picture))] : []),
      plan.orders.length > 0
        ? ordersSection(plan, boats, yard)
        : section('orders', 'Accepted orders', 'No order is accepted.'),
      offersSection(plan, boats, yard),
      section('method', 'How it is made', ...smallPrint(METHOD)),
    ],
  };
}

/** The drawing of the plan; undefined when there is nothing to draw. */
export function planChart(
  plan: ShopPlan,
  overview: Overview,
  yard: Yard,
  fontCss: string,
): CaptionedPicture | undefined {
  if (plan.orders.length === 0 && plan.offers.length === 0) return undefined;
  const drawn = pictureOf(drawPlan(plan, boatsOf(overview), yard.locale, fontCss));
  return { ...drawn, caption: CAPTION };
}

const CAPTION =
  'Weeks across; a bar is work or a cure, a thin line is waiting; {grey} bands are holidays. Orders that are not accepted stand each by itself beside those that are; their triangle is the day that can be promised. In the lanes of people, numbers are those of the orders above.';

/** The model that each order is of, by its number. */
export function boatsOf({ orders }: Overview): ReadonlyMap<string, string> {
  return new Map(
    orders.map(({ entry: { order, figures } }) => [
      order.value.number,
      figures?.build.hull.name ?? order.value.hull,
    ]),
  );
}

function ordersSection(
  { orders, plan }: ShopPlan,
  boats: ReadonlyMap<string, string>,
  yard: Yard,
): Part {
  const day = (date: IsoDate | undefined): string =>
    date === undefined ? '' : formatDate(date, yard.locale);
  return section(
    'orders',
    'Accepted orders',
    captioned(
      'What is left to build',
      heads('text', 'Order', 'Boat', 'From', 'Planned finish', 'Promised', 'In time', 'Waits for'),
      orders.map((one) =>
        row(
          (one.daysLate ?? 0) > 0 ? 'flag' : 'plain',
          one.number,
          boats.get(one.number) ?? '',
          day(one.starts),
          day(one.ends),
          day(one.promised),
          timeliness(one, yard),
          waitsFor(one),
        ),
      ),
    ),
    ...smallPrint(
      plan.refused.map(({ order, reason }) => `${order.number} cannot be planned: ${reason}.`),
    ),
  );
}

/** "17 days late", "36 days to spare", "on the day"; empty without a promise. */
export function timeliness({ daysLate }: Pick<OrderDays, 'daysLate'>, yard: Yard): string {
  if (daysLate === undefined) return '';
  if (daysLate === 0) return 'on the day';
  const format = formatterOf(yard);
  const count = Math.abs(daysLate);
  const days = `${format.number(count, 0)} day${count === 1 ? '' : 's'}`;
  return daysLate > 0 ? `${days} late` : `${days} to spare`;
}

function offersSection({ offers }: ShopPlan, boats: ReadonlyMap<string, string>, yard: Yard): Part {
  const days = formatterOf(yard).number(yard.daysInHand, 0);
  return section(
    'offers',
    'What date can we promise?',
    offers.length === 0
      ? 'No order waits for a promise.'
      : `Each by itself, if it were accepted today, beside the accepted orders as they are planned, with ${days} days in hand.`,
    ...(offers.length === 0
      ? []
      : [
          captioned(
            'Enquiries and quotes',
            heads('text', 'Order', 'Boat', 'Planned finish', 'Can be promised', 'Waits for'),
            offers.map((offer) => row('plain', ...offerCells(offer, boats, yard))),
          ),
        ]),
  );
}

function offerCells(
  offer: Offer,
  boats: ReadonlyMap<string, string>,
  { locale }: Yard,
): readonly string[] {
  const boat = boats.get(offer.number) ?? '';
  if ('notComputed' in offer)
    return [offer.number, boat, `not computed: ${offer.notComputed}`, '', ''];
  const { days, promise } = offer;
  return [
    offer.number,
    boat,
    formatDate(days.ends, locale),
    formatDate(promise, locale),
    waitsFor(days),
  ];
}
