import { type Finding, hasErrors } from '../findings/index.ts';
import { resolveOrder } from '../resolve/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import { computeFigures } from './compute-figures.ts';
import type { Figures } from './types.ts';

/** One order with its figures, when nothing stands in their way, and everything found about it. */
export interface FiguredOrder {
  readonly order: SourcedOrder;
  readonly figures?: Figures;
  readonly findings: readonly Finding[];
}

/**
 * Resolves and computes every order; what is wrong with one never stops another.
 *
 * @param broken - ids of catalogue entries that could not be read
 * @returns one entry an order, in the order given; `figures` is there when no document would mislead
 */
export function figureOrders(
  orders: readonly SourcedOrder[],
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
): readonly FiguredOrder[] {
  return orders.map((order) => {
    const { build, findings } = resolveOrder(order, catalogue, broken);
    if (!build) return { order, findings };
    const figures = computeFigures(build, findings);
    return hasErrors(figures.findings)
      ? { order, findings: figures.findings }
      : { order, figures, findings: figures.findings };
  });
}
