import { type Finding, hasErrors } from '../findings/index.ts';
import { resolveOrder, unmatchedVariationRemovals, variedOrder } from '../resolve/index.ts';
import type { Catalogue, Order, SourcedOrder } from '../schema/index.ts';
import { isMisspelt, notRemoved, onlyOf } from './change-findings.ts';
import { computeFigures } from './compute-figures.ts';
import { type Differences, differencesOf } from './told-facts.ts';
import type { Figures } from './types.ts';

type Variation = Order['variations'][number];

/** A change after acceptance, figured on top of those agreed before it. */
export interface FiguredVariation {
  readonly variation: Variation;
  /** 1 is the first. */
  readonly number: number;
  /** There when nothing stands in the way of building it. */
  readonly differences?: Differences;
  /** Names of what comes in and of what goes out. */
  readonly added: readonly string[];
  readonly removed: readonly string[];
  readonly findings: readonly Finding[];
}

interface VariedOrder {
  /** With all that was agreed; the order's own when nothing was. */
  readonly figures?: Figures;
  readonly variations: readonly FiguredVariation[];
  readonly findings: readonly Finding[];
}

/**
 * The variations of an order, each resolved and computed by the same code as the order, and the boat with those that
 * were agreed.
 *
 * @param base - the figures of the order as quoted
 * @param broken - ids of catalogue entries that could not be read
 */
export function figureVariations(
  order: SourcedOrder,
  base: Figures,
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
): VariedOrder {
  const figured = new Map<string, Outcome>([['', { figures: base, findings: base.findings }]]);
  const at = (wanted: readonly number[]): Outcome => {
    const key = wanted.join();
    const known = figured.get(key);
    if (known) return known;
    const varied = variedOrder(order, (_, index) => wanted.includes(index));
    const { build, findings } = resolveOrder(varied, catalogue, broken);
    const figures = build && computeFigures(build, findings);
    const outcome = { ...(figures && { figures }), findings: figures?.findings ?? findings };
    figured.set(key, outcome);
    return outcome;
  };
  const agreed = order.value.variations.flatMap(({ agreed: signed }, index) =>
    signed ? [index] : [],
  );
  const variations = order.value.variations.map((variation, index) => {
    const before = agreed.filter((earlier) => earlier < index);
    return variationOf(order, variation, index, at(before), at([...before, index]));
  });
  const built = at(agreed);
  // What else is found about a variation that is not agreed is a fact of it, and stops nothing.
  const misspelt = variations.flatMap((one) => one.findings.filter(isMisspelt));
  const findings = [...built.findings, ...misspelt];
  return { ...(built.figures && { figures: built.figures }), variations, findings };
}

interface Outcome {
  readonly figures?: Figures;
  readonly findings: readonly Finding[];
}

function variationOf(
  order: SourcedOrder,
  variation: Variation,
  index: number,
  before: Outcome,
  after: Outcome,
): FiguredVariation {
  const misspelt = notRemoved(
    unmatchedVariationRemovals(order, index),
    order.place(['variations', index, 'remove']),
    'does not have then',
  );
  const findings = [...misspelt, ...onlyOf(after.findings, before.findings)];
  const sound = before.figures && after.figures && !hasErrors(findings);
  return {
    variation,
    number: index + 1,
    ...(sound &&
      before.figures &&
      after.figures && { differences: differencesOf(after.figures, before.figures) }),
    added: namesIn(after, before),
    removed: namesIn(before, after),
    findings,
  };
}

/** Names of the items of one that the other has not, or has under another name. */
function namesIn(one: Outcome, other: Outcome): readonly string[] {
  const there = new Set((other.figures?.build.items ?? []).map(({ name }) => name));
  return (one.figures?.build.items ?? [])
    .filter(({ name }) => !there.has(name))
    .map(({ name }) => name);
}
