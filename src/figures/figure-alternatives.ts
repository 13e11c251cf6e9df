import { type Finding, hasErrors } from '../findings/index.ts';
import { alternativeOrder, resolveOrder, unmatchedRemovals } from '../resolve/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import { notRemoved, onlyOf } from './change-findings.ts';
import { computeFigures } from './compute-figures.ts';
import { type Differences, differencesOf } from './told-facts.ts';
import type { Figures } from './types.ts';

export interface FiguredAlternative {
  readonly name: string;
  /** There when nothing stands in the way of building it. */
  readonly figures?: Figures;
  readonly differences?: Differences;
  /** What was found that is not so of the order itself. */
  readonly findings: readonly Finding[];
}

/**
 * The alternatives of an order, each resolved and computed by the same code as the order.
 *
 * @param base - the figures of the order itself
 * @param broken - ids of catalogue entries that could not be read
 */
export function figureAlternatives(
  order: SourcedOrder,
  base: Figures,
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
): readonly FiguredAlternative[] {
  return order.value.alternatives.flatMap(({ name }, index) => {
    const changed = alternativeOrder(order, index);
    if (!changed) return [];
    const { build, findings: resolved } = resolveOrder(changed, catalogue, broken);
    const figures = build && computeFigures(build, resolved);
    const findings = [
      ...notRemoved(
        unmatchedRemovals(order, index),
        order.place(['alternatives', index, 'remove']),
        'does not have',
      ),
      ...onlyOf(figures?.findings ?? resolved, base.findings),
    ];
    if (!figures || hasErrors(findings)) return [{ name, findings }];
    return [{ name, figures, differences: differencesOf(figures, base), findings }];
  });
}
