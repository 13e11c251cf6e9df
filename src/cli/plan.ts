import { type Offer, type OrderDays, type ShopPlan, waitsFor } from '../plan/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { loadWorkspace, noSuchOrder } from './load.ts';
import { refuse } from './refuse.ts';
import { inWords, printData } from './report.ts';

/** Prints when each accepted order is built, or what date can be promised for another. */
export async function plan({ workspace, promise, json }: CommandOptions<'plan'>): Promise<number> {
  const loaded = loadWorkspace(workspace);
  const unknown = noSuchOrder(loaded, promise);
  if (unknown !== undefined) return refuse('plan', unknown);
  const shop = loaded.plan ?? { notComputed: 'the yard file cannot be read; run orlop check' };
  if ('notComputed' in shop)
    return refuse('plan', inWords(`not computed: ${shop.notComputed}`, loaded), EXIT.findings);
  const say: Say = (data, lines) => {
    if (json) printData(data, loaded);
    else process.stdout.write(`${inWords(lines.join('\n'), loaded)}\n`);
  };
  if (promise !== undefined) return answer(promise, shop, say);
  say(planData(shop), planLines(shop));
  return shop.plan.refused.length === 0 ? EXIT.fine : EXIT.findings;
}

type Say = (data: unknown, lines: readonly string[]) => void;

function answer(number: string, shop: ShopPlan, say: Say): number {
  const offer = shop.offers.find((one) => one.number === number);
  if (!offer) return refuse('plan', whyNoOffer(number, shop));
  say(offerData(offer), offerLines(offer));
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
        `${days.number}  ${days.starts} to ${days.ends}${promisedText(days)}  waits for ${waitsFor(days)}`,
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

function offerLines(offer: Offer): readonly string[] {
  if ('notComputed' in offer) return [`${offer.number}  not computed: ${offer.notComputed}`];
  const { number, promise, days } = offer;
  return [
    `${number}  can be promised for ${promise}`,
    `  if it is accepted today: from ${days.starts}, planned to finish on ${days.ends}; no accepted order moves`,
    `  waits for ${waitsFor(days)}`,
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
