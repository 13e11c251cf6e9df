import { type Finding, hasErrors } from '../findings/index.ts';
import { resolveOrder } from '../resolve/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import { computeFigures } from './compute-figures.ts';
import { figureAlternatives, type FiguredAlternative } from './figure-alternatives.ts';
import type { Figures } from './types.ts';

/** One order with its figures, when nothing stands in their way, and everything found about it. */
export interface FiguredOrder {
  readonly order: SourcedOrder;
  readonly figures?: Figures;
  /** There with the figures when the order lists any. */
  readonly alternatives?: readonly FiguredAlternative[];
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
    if (hasErrors(figures.findings)) return { order, findings: figures.findings };
    if (order.value.alternatives.length === 0)
      return { order, figures, findings: figures.findings };
    const alternatives = figureAlternatives(order, figures, catalogue, broken);
    const misspelt = alternatives.flatMap((one) => one.findings.filter(isMisspelt));
    const all = [...figures.findings, ...misspelt];
    return misspelt.length > 0
      ? { order, findings: all }
      : { order, figures, alternatives, findings: all };
  });
}

/** A name that points to nothing is a mistake of the file; whatever else is found is a fact of the alternative. */
const isMisspelt = ({ code }: Finding): boolean => code === 'UNKNOWN_ID';
