import type { Figures } from '../figures/index.ts';
import { stageOfPart, stagesOf, toFetch } from '../resolve/index.ts';
import type { Order } from '../schema/index.ts';
import { addDays, type IsoDate } from '../units/index.ts';
import type { PartNeed } from './purchase-list.ts';
import { needKey } from './shelf.ts';

/** What one-off items are bought from when the order names no supplier. */
export const NO_SUPPLIER = 'one-off';

/**
 * What an order's stages take, each at the stage that the build sheet fetches it for: parts with the yard's wastage, and
 * one-off items that have a cost of their own.
 */
export function partNeedsOf(figures: Figures): readonly PartNeed[] {
  return [...listedNeeds(figures), ...oneOffNeeds(figures)];
}

function oneOffNeeds({ build: { order, items } }: Figures): readonly PartNeed[] {
  return order.extras.flatMap((extra, index): readonly PartNeed[] => {
    const item = items.find(({ key }) => key === `extra:${index + 1}`);
    const [stage] = item ? stagesOf(item) : [];
    if (!stage || !extra.cost || extra.cost.amount <= 0n) return [];
    const { name, supplier = NO_SUPPLIER, leadDays, ordered } = extra;
    return [
      {
        order: order.number,
        stage,
        supplier,
        code: `${order.number}/${index + 1}`,
        name,
        quantity: { amount: BigInt(extra.quantity), scale: 0n },
        ...(leadDays !== undefined && { leadDays }),
        ...(ordered && { ordered }),
      },
    ];
  });
}

function listedNeeds({ build }: Figures): readonly PartNeed[] {
  const { order, yard } = build;
  return build.items.flatMap((item) =>
    item.parts.map((part) => ({
      order: order.number,
      stage: stageOfPart(item, part),
      supplier: part.supplier,
      code: part.code,
      quantity: toFetch(part, yard),
    })),
  );
}

/** The parts that are still to be ordered: those of stages that have no hours yet and that the order does not call bought. */
export function openNeedsOf(figures: Figures): readonly PartNeed[] {
  const { order } = figures.build;
  return waitedFor(figures).filter((need) => !boughtLine(order, need));
}

/**
 * When the parts of each stage are there, by stage and supplier: the latest of that supplier.
 *
 * What is ordered comes as the order says; what is not is taken to be ordered today. A stage that has begun has its
 * parts, and so has a boat that is ready. What the shelf holds in full is there already.
 *
 * @param leadDays - from order to delivery, by supplier, in calendar days
 * @param onShelf - keys of the needs that the shelf meets in full
 */
export function arrivalsOf(
  figures: Figures,
  leadDays: Readonly<Record<string, number>>,
  today: IsoDate,
  onShelf: ReadonlySet<string> = new Set(),
): ReadonlyMap<string, ReadonlyMap<string, IsoDate>> {
  const { order } = figures.build;
  const stages = new Map<string, Map<string, IsoDate>>();
  for (const need of waitedFor(figures)) {
    const { stage, supplier } = need;
    const bought = boughtLine(order, need);
    if (!bought && onShelf.has(needKey(need))) continue;
    const days = need.leadDays ?? leadDays[supplier] ?? 0;
    const arrives = bought?.arrives ?? addDays(bought?.date ?? today, days);
    const suppliers = stages.get(stage) ?? new Map<string, IsoDate>();
    stages.set(stage, suppliers);
    const before = suppliers.get(supplier);
    if (before === undefined || before < arrives) suppliers.set(supplier, arrives);
  }
  return stages;
}

/** A boat that is ready, and a stage that has begun, have their parts. */
function waitedFor(figures: Figures): readonly PartNeed[] {
  const { status, record } = figures.build.order;
  if (status === 'ready') return [];
  const worked = record?.hours ?? [];
  const begun = new Set<string>(worked.map(({ stage }) => stage));
  return partNeedsOf(figures).filter(
    ({ stage, quantity }) => !begun.has(stage) && quantity.amount > 0n,
  );
}

/** What the order says of a part that is ordered: the item itself, or the last line that names it. */
function boughtLine(
  { bought }: Order,
  { supplier, code, ordered }: PartNeed,
): Pick<Order['bought'][number], 'date' | 'arrives'> | undefined {
  if (ordered) return { date: ordered };
  return bought.findLast(
    (line) => line.supplier === supplier && (line.parts?.includes(code) ?? true),
  );
}
