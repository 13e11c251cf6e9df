import { type Finding, finding } from '../findings/index.ts';
import type { SourcedOrder } from '../schema/index.ts';
import type { PurchaseLine } from './purchase-list.ts';
import type { ShopPlan } from './shop-plan.ts';

/** Part codes that a finding names before it only counts the rest. */
const NAMED = 3;

/** What the plan has to say about one order: refused, late, parts that must be ordered now. */
export function planFindings(order: SourcedOrder, shop: ShopPlan): readonly Finding[] {
  const { number } = order.value;
  const refused = shop.plan.refused.find((one) => one.order.number === number);
  if (refused)
    return [finding('PLAN_REFUSED', order.place(['status']), { received: refused.reason })];
  return [...lateness(order, shop), ...partsToOrder(order, shop)];
}

function lateness(order: SourcedOrder, shop: ShopPlan): readonly Finding[] {
  const days = shop.orders.find(({ number }) => number === order.value.number);
  if (!days || days.promised === undefined || days.ends <= days.promised) return [];
  const waits = days.binds === '' ? 'only its own work' : days.binds;
  return [
    finding('PLAN_LATE', order.place(['dates', 'promised']), {
      received: `planned to finish on ${days.ends}; waiting for: ${waits}`,
      expected: `by ${days.promised}`,
    }),
  ];
}

/** Parts that hold up the plan if they are ordered on the next workday and not today. */
function partsToOrder(order: SourcedOrder, shop: ShopPlan): readonly Finding[] {
  const { number } = order.value;
  return shop.purchases.flatMap(({ supplier, lines }) => {
    const due = lines.filter(({ orders, ...line }) => orders.includes(number) && isDue(line, shop));
    const [first] = due.toSorted((a, b) => a.needBy.localeCompare(b.needBy));
    if (!first) return [];
    return [
      finding('ORDER_PART_NOW', order.place(['dates', 'accepted']), {
        received: `${codesOf(due)} from ${shop.names.suppliers[supplier] ?? supplier}, needed by ${first.needBy}`,
        expected: `ordered by ${first.orderBy}`,
        remedy: `Order them today and write it in the order: bought: [{ supplier: ${supplier}, date: ${shop.today} }]`,
      }),
    ];
  });
}

/** True when to wait until the next workday would be too late. */
export function isDue(
  { orderBy }: Pick<PurchaseLine, 'orderBy'>,
  { calendar, today }: Pick<ShopPlan, 'calendar' | 'today'>,
): boolean {
  const nextDay = calendar.nextDay(calendar.hourOf(today));
  return orderBy < calendar.dateOf(nextDay);
}

function codesOf(lines: readonly PurchaseLine[]): string {
  const codes = [...new Set(lines.map(({ code }) => code))];
  const rest = codes.length - NAMED;
  const named = codes.slice(0, NAMED).join(', ');
  return rest > 0 ? `${named} and ${rest} more` : named;
}
