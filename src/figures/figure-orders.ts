import { type Finding, stopsFigures } from '../findings/index.ts';
import { resolveOrder } from '../resolve/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import { isMisspelt } from './change-findings.ts';
import { computeFigures } from './compute-figures.ts';
import { figureAlternatives, type FiguredAlternative } from './figure-alternatives.ts';
import { figureVariations, type FiguredVariation } from './figure-variations.ts';
import type { Figures } from './types.ts';

/** One order with its figures, when nothing stands in their way, and everything found about it. */
export interface FiguredOrder {
  readonly order: SourcedOrder;
  /** The boat that is built: as quoted, with the variations that were agreed. */
  readonly figures?: Figures;
  /** The boat as quoted; the same figures when nothing was varied. */
  readonly quoted?: Figures;
  readonly alternatives: readonly FiguredAlternative[];
  readonly variations: readonly FiguredVariation[];
  readonly findings: readonly Finding[];
}

/**
 * Resolves and computes every order; what is wrong with one never stops another.
 *
 * @param broken - ids of catalogue entries that could not be read
 * @param known - orders already computed from this catalogue, by file, that are not computed again
 * @returns one entry an order, in the order given; `figures` is there when no document would mislead
 */
export function figureOrders(
  orders: readonly SourcedOrder[],
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
  known: ReadonlyMap<string, FiguredOrder> = new Map(),
): readonly FiguredOrder[] {
  return orders.map((order) => known.get(order.file) ?? figureOrder(order, catalogue, broken));
}

function figureOrder(
  order: SourcedOrder,
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
): FiguredOrder {
  const none = { order, alternatives: [], variations: [] };
  const { build, findings: resolved } = resolveOrder(order, catalogue, broken);
  if (!build) return { ...none, findings: resolved };
  const quoted = computeFigures(build, resolved);
  if (stopsFigures(quoted.findings)) return { ...none, findings: quoted.findings };
  const alternatives = figureAlternatives(order, quoted, catalogue, broken);
  const varied = figureVariations(order, quoted, catalogue, broken);
  const misspelt = alternatives.flatMap((one) => one.findings.filter(isMisspelt));
  const findings = unique([...varied.findings, ...misspelt]);
  if (!varied.figures || stopsFigures(findings)) return { ...none, findings };
  const { figures, variations } = varied;
  return { order, figures, quoted, alternatives, variations, findings };
}

/** A variation that is agreed finds what the boat built with it finds, too. */
function unique(findings: readonly Finding[]): readonly Finding[] {
  const said = new Map(findings.map((one) => [JSON.stringify(one), one]));
  return [...said.values()];
}
