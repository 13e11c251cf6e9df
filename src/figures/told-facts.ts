import type { Audience } from '../findings/index.ts';
import { type Money, subtractMoney } from '../money/index.ts';
import { energyFacts, type EnergyFacts } from './electrics/facts.ts';
import { type Fact, isNotComputed, type Said } from './facts/fact.ts';
import { type FloatFacts, floatFacts } from './float/facts.ts';
import { limitsFacts } from './limits/facts.ts';
import { type MassFacts, massFacts } from './mass/facts.ts';
import { type PerformanceFacts, performanceFacts, type SpeedFacts } from './performance/facts.ts';
import { priceFacts } from './price/facts.ts';
import { type TowFacts, towFacts } from './tow/facts.ts';
import type { Figures } from './types.ts';

/** The facts that a customer is told by name: rows of their documents come from here. */
export interface ToldFacts {
  readonly mass: Omit<MassFacts, 'others'>;
  readonly loadings: Readonly<
    Partial<Record<keyof PerformanceFacts['loadings'], Omit<SpeedFacts, 'others'>>>
  >;
  readonly uses: PerformanceFacts['uses'];
  readonly tow: Omit<TowFacts, 'others'>;
  readonly afloat: Omit<FloatFacts, 'others'>;
  readonly energy?: EnergyFacts;
}

/** The facts of an order that its customer is told. */
export function toldFacts(figures: Figures): ToldFacts {
  const { electrics } = figures;
  const { loadings, uses } = performanceFacts(figures);
  return {
    mass: named(massFacts(figures)),
    loadings: Object.fromEntries(
      Object.entries(loadings).map(([name, facts]) => [name, named(facts)]),
    ),
    uses,
    tow: named(towFacts(figures)),
    afloat: named(floatFacts(figures)),
    ...(!isNotComputed(electrics) && {
      energy: energyFacts(electrics.budget.ampereHours, electrics.bank),
    }),
  };
}

/** The facts of a subject that have a name of their own. */
function named<Facts extends { readonly others: unknown }>(facts: Facts): Omit<Facts, 'others'> {
  const { others: _, ...rest } = facts;
  return rest;
}

/** A fact as it becomes when something is changed, and as it was; the latter missing where there was none. */
export interface Change<Who extends Audience = Audience, Says extends Said = Said> {
  readonly now: Fact<Who, Says>;
  readonly was?: Fact<Who, Says>;
}

/** A change of an amount. */
type MoneyChange<Who extends Audience = Audience> = Required<Change<Who, Money>>;

/** How much more it becomes. */
export const moneyChange = ({ now, was }: MoneyChange): Money => subtractMoney(now.says, was.says);

/** What one boat costs, weighs and carries more than another. */
export interface Differences {
  readonly driveAway: MoneyChange<'customer'>;
  /** The yard's side only. */
  readonly margin: MoneyChange<'office'>;
  readonly massOnTrailer: Change<'customer', number>;
  /** People that may be carried within the rated load. */
  readonly people: Change<'customer', number>;
  /** As ordered, loaded; missing where it is not computed for the changed boat. */
  readonly speed?: Change<'customer'>;
  /** On the ball; missing where one of the two has no trailer, or is not computed. */
  readonly onBall?: Change<'customer'>;
}

/** What one boat costs, weighs and carries more than another. */
export function differencesOf(figures: Figures, base: Figures): Differences {
  const [now, was] = [comparedFacts(figures), comparedFacts(base)];
  return {
    driveAway: { now: now.final, was: was.final },
    margin: { now: now.margin, was: was.margin },
    massOnTrailer: { now: now.onTrailer, was: was.onTrailer },
    people: { now: now.people, was: was.people },
    ...(now.speed && { speed: { now: now.speed, ...(was.speed && { was: was.speed }) } }),
    ...(now.onBall && was.onBall && { onBall: { now: now.onBall, was: was.onBall } }),
  };
}

/** The facts that two boats are told apart by. */
function comparedFacts(figures: Figures) {
  const { final, margin } = priceFacts(figures);
  return {
    final,
    margin,
    onTrailer: massFacts(figures).onTrailer,
    people: limitsFacts(figures).byLoad,
    speed: computed(performanceFacts(figures).loadings.loaded?.speed),
    onBall: computed(towFacts(figures).onBall),
  };
}

const computed = <Who extends Audience>(fact: Fact<Who> | undefined): Fact<Who> | undefined =>
  fact && !isNotComputed(fact.says) ? fact : undefined;
