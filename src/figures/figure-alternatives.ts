import { type Finding, finding, hasErrors } from '../findings/index.ts';
import { type Money, subtractMoney } from '../money/index.ts';
import { alternativeOrder, removedInVain, resolveOrder } from '../resolve/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import {
  type Kilograms,
  kilograms,
  type MetresPerSecond,
  metresPerSecond,
} from '../units/index.ts';
import { computeFigures } from './compute-figures.ts';
import { peopleByLoad } from './people-by-load.ts';
import { planingSpeed } from './planing-speed.ts';
import type { Figures } from './types.ts';

/** What an alternative changes, each the alternative's less the order's own. */
export interface Differences {
  readonly driveAway: Money;
  /** The yard's side only. */
  readonly margin: Money;
  readonly massOnTrailer: Kilograms;
  /** People that may be carried within the rated load. */
  readonly people: number;
  /** Full speed with everyone aboard; undefined where one of the two is not computed. */
  readonly speed?: MetresPerSecond;
}

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
      ...notRemoved(order, index),
      ...onlyOf(figures?.findings ?? resolved, base.findings),
    ];
    if (!figures || hasErrors(findings)) return [{ name, findings }];
    return [{ name, figures, differences: differencesOf(figures, base), findings }];
  });
}

/** What one boat costs, weighs and carries more than another. */
export function differencesOf(figures: Figures, base: Figures): Differences {
  const [fast, before] = [planingSpeed(figures), planingSpeed(base)];
  return {
    ...(fast !== undefined && before !== undefined && { speed: metresPerSecond(fast - before) }),
    driveAway: subtractMoney(figures.price.driveAway, base.price.driveAway),
    margin: subtractMoney(figures.price.margin, base.price.margin),
    massOnTrailer: kilograms(figures.mass.onTrailer - base.mass.onTrailer),
    people: peopleByLoad(figures) - peopleByLoad(base),
  };
}

const notRemoved = (order: SourcedOrder, index: number): readonly Finding[] =>
  removedInVain(order, index).map((option) =>
    finding('UNKNOWN_ID', order.place(['alternatives', index, 'remove']), {
      received: `${option}, which the order does not have`,
      expected: 'an option of the order',
      mend: 'Take it out of remove:',
    }),
  );

/** Findings that are not among others, by what they say. */
function onlyOf(findings: readonly Finding[], others: readonly Finding[]): readonly Finding[] {
  const said = new Set(others.map(wordsOf));
  return findings.filter((one) => !said.has(wordsOf(one)));
}

const wordsOf = ({ code, received, expected }: Finding): string =>
  JSON.stringify([code, received, expected]);
