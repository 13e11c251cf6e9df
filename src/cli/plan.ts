import type { Offer, OrderDays, ShopPlan } from '../plan/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { noSuchOrder, loadWorkspace } from './load.ts';
import { refuse } from './refuse.ts';

/** Prints when each accepted order is built, or what date can be promised for another. */
export async function plan({ workspace, promise, json }: CommandOptions<'plan'>): Promise<number> {
  const loaded = loadWorkspace(workspace);
  const unknown = noSuchOrder(loaded, promise);
  if (unknown !== undefined) return refuse('plan', unknown);
  const shop = loaded.plan ?? { notComputed: 'the yard file cannot be read; run orlop check' };
  if ('notComputed' in shop)
    return refuse('plan', `not computed: ${shop.notComputed}`, EXIT.findings);
  if (promise !== undefined) return answer(promise, shop, json);
  say(json, planData(shop), planLines(shop));
  return shop.plan.refused.length === 0 ? EXIT.fine : EXIT.findings;
}

function answer(number: string, shop: ShopPlan, json: boolean): number {
  const offer = shop.offers.find((one) => one.number === number);
  if (!offer) return refuse('plan', whyNoOffer(number, shop));
  say(json, offerData(offer), offerLines(offer));
  return 'notComputed' in offer ? EXIT.findings : EXIT.fine;
}

function whyNoOffer(number: string, { orders }: ShopPlan): string {
  const days = orders.find((one) => one.number === number);
  return days
    ? `${number} is accepted already: planned to finish on ${days.ends}`
    : `${number} is closed, handed over or has errors: there is nothing to promise`;
}

function planLines({ today, orders, plan: { refused } }: ShopPlan): readonly string[] {
  return [
    `Plan from ${today}`,
    ...(orders.length === 0 ? ['No order is accepted.'] : []),
    ...orders.map(
      (days) =>
        `${days.number}  ${days.starts} to ${days.ends}${promisedText(days)}  waits for ${waits(days)}`,
    ),
    ...refused.map(({ order, reason }) => `${order.number}  cannot be planned: ${reason}`),
  ];
}

function promisedText({ promised, daysLate = 0 }: OrderDays): string {
  if (promised === undefined) return '  not promised';
  const days = Math.abs(daysLate);
  const word = daysLate > 0 ? 'late' : 'to spare';
  return `  promised ${promised}, ${days} day${days === 1 ? '' : 's'} ${word}`;
}

const waits = ({ binds }: OrderDays): string => (binds === '' ? 'nothing but its own work' : binds);

function offerLines(offer: Offer): readonly string[] {
  if ('notComputed' in offer) return [`${offer.number}  not computed: ${offer.notComputed}`];
  const { number, promise, days } = offer;
  return [
    `${number}  can be promised for ${promise}`,
    `  if it is accepted today: from ${days.starts}, planned to finish on ${days.ends}; no accepted order moves`,
    `  waits for ${waits(days)}`,
  ];
}

const planData = ({ today, orders, plan: { refused } }: ShopPlan) => ({
  today,
  orders: orders.map(orderData),
  refused: refused.map(({ order, reason }) => ({ number: order.number, reason })),
});

const orderData = ({ stages, ...days }: OrderDays) => ({
  ...days,
  stages: Object.fromEntries(stages),
});

const offerData = (offer: Offer) =>
  'notComputed' in offer ? offer : { ...offer, days: orderData(offer.days) };

function say(json: boolean, data: unknown, lines: readonly string[]): void {
  const text = json ? JSON.stringify(data, undefined, 2) : lines.join('\n');
  process.stdout.write(`${text}\n`);
}
