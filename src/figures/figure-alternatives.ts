import { type Finding, hasErrors } from '../findings/index.ts';
import { type Money, subtractMoney } from '../money/index.ts';
import { alternativeOrder, resolveOrder, unmatchedRemovals } from '../resolve/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import {
  type Kilograms,
  kilograms,
  type MetresPerSecond,
  metresPerSecond,
} from '../units/index.ts';
import { notRemoved, onlyOf } from './change-findings.ts';
import { computeFigures } from './compute-figures.ts';
import { peopleByLoad } from './limits/people-by-load.ts';
import type { Figures } from './types.ts';

/** What an alternative changes, each the alternative's less the order's own. */
export interface Differences {
  readonly driveAway: Money;
  /** The yard's side only. */
  readonly margin: Money;
  readonly massOnTrailer: Kilograms;
  /** People that may be carried within the rated load. */
  readonly people: number;
  /** Likely speed, loaded; missing where one of the two is not computed. */
  readonly speed?: MetresPerSecond;
  /** The likely speed itself, loaded, with the change made; missing where it is not computed. */
  readonly speedThen?: MetresPerSecond;
  /** On the ball; missing where one of the two has no trailer, or is not computed. */
  readonly onBall?: Kilograms;
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

/** What one boat costs, weighs and carries more than another. */
export function differencesOf(figures: Figures, base: Figures): Differences {
  const [speed, speedBefore] = [likelySpeed(figures), likelySpeed(base)];
  const [ball, ballBefore] = [onBall(figures), onBall(base)];
  return {
    driveAway: subtractMoney(figures.price.driveAway, base.price.driveAway),
    margin: subtractMoney(figures.price.margin, base.price.margin),
    massOnTrailer: kilograms(figures.mass.onTrailer - base.mass.onTrailer),
    people: peopleByLoad(figures) - peopleByLoad(base),
    ...(speed !== undefined && { speedThen: speed }),
    ...(speed !== undefined &&
      speedBefore !== undefined && {
        speed: metresPerSecond(speed - speedBefore),
      }),
    ...(ball !== undefined && ballBefore !== undefined && { onBall: kilograms(ball - ballBefore) }),
  };
}

function likelySpeed({ drive }: Figures): MetresPerSecond | undefined {
  const loaded = drive.loadings.find(({ name }) => name === 'loaded');
  return loaded && 'speed' in loaded.speed ? loaded.speed.speed.likely : undefined;
}

function onBall({ tow }: Figures): Kilograms | undefined {
  const ball = tow.trailer?.ball;
  return ball && 'onBall' in ball ? ball.onBall : undefined;
}
