import type { CustomerBuild, CustomerFigures } from '../../figures/index.ts';
import type { PlannedOrder, ShopPlan } from '../../plan/index.ts';
import {
  formatDate,
  type Formatter,
  formatterOf,
  type IsoDate,
  type NotComputed,
} from '../../units/index.ts';
import { sayFact } from '../sections/fact-words.ts';
import { sideLimitOf } from '../sections/float-words.ts';
import { list } from '../sections/words.ts';
import type { Field } from '../blocks/block.ts';

/** What the plan could promise an order that is not accepted yet. */
export interface DeliveryOffer {
  readonly day: IsoDate;
  /** The day that the plan was made. */
  readonly asOf: IsoDate;
  readonly waits: PlannedOrder['binds'];
}

/** What the plan offers an order; undefined for one that it does not plan, or cannot. */
export function deliveryOf(
  plan: ShopPlan | NotComputed | undefined,
  number: string,
): DeliveryOffer | undefined {
  if (!plan || 'notComputed' in plan) return undefined;
  const offer = plan.offers.find((one) => one.number === number);
  if (!offer || 'notComputed' in offer) return undefined;
  return { day: offer.promise, asOf: plan.today, waits: offer.planned.binds };
}

const CAUSES = {
  mould: 'a free {mould}',
  trade: 'the time of our people',
  part: 'parts arriving on time',
} as const;

/** What a customer asks first: when, for how many, how much it carries, which outboard, what there is to tow. */
export function glanceFacts(
  figures: CustomerFigures,
  delivery: DeliveryOffer | undefined,
): readonly Field[] {
  const { build, facts } = figures;
  const { mass } = facts;
  const { outboard, order, yard } = build;
  const format = formatterOf(yard);
  return [
    deliveryFact(build, delivery),
    {
      label: 'People',
      value: format.number(order.boat.people, 0),
      detail: peopleDetail(figures, format),
    },
    {
      label: 'Load',
      value: sayFact(mass.load, format),
      detail: `as ordered; at most ${format.mass(figures.limits.carries.load.mass)}`,
    },
    {
      label: 'Outboard',
      value: outboard ? format.power(outboard.model.power) : 'not included',
      detail: `at most ${format.power(figures.limits.carries.power.power)}`,
    },
    {
      label: 'Boat, ready to launch',
      value: sayFact(mass.ready, format),
      detail: 'weighed at handover',
    },
    ...(mass.towed
      ? [
          {
            label: mass.towed.label,
            value: sayFact(mass.towed, format),
            detail: 'with trailer, fuel and gear',
          },
        ]
      : []),
  ];
}

function deliveryFact({ order, yard }: CustomerBuild, delivery: DeliveryOffer | undefined): Field {
  const { promised } = order.dates;
  const day = (date: IsoDate): string => formatDate(date, yard.locale);
  const label = 'Delivery';
  if (promised !== undefined) return { label, value: day(promised), detail: 'promised' };
  if (delivery === undefined) return { label, value: 'to be agreed', detail: 'when you order' };
  const causes = [...new Set(delivery.waits.map(({ cause }) => CAUSES[cause]))];
  const depends = causes.length === 0 ? '' : `; depends on ${list(causes)}`;
  return {
    label,
    value: day(delivery.day),
    detail: `if you order now, by our plan of ${day(delivery.asOf)}${depends}`,
  };
}

/** How many the boat may carry, and how many of those on one side where that is fewer. */
function peopleDetail({ float, limits }: CustomerFigures, format: Formatter): string {
  const most = `at most ${format.number(limits.carries.people.people, 0)}`;
  const side = float.afloat && sideLimitOf(float.afloat.crew.ordered);
  return side === undefined ? most : `${most}. ${side}`;
}
