import {
  type Condition,
  findEquilibrium,
  type FloatingState,
  type GrowthLimit,
  type GrowthMargin,
  type GrowthInput,
  growthUntil,
  stateOf,
  withMasses,
} from '../../float/index.ts';
import type { MassResult } from '../../mass/index.ts';
import type { Build } from '../../resolve/index.ts';
import { kilograms, type Point3 } from '../../units/index.ts';
import { conditionOf } from './conditions.ts';
import type { GrowthEffect, GrowthFigures, GrowthRow } from './types.ts';

type Floating = Pick<GrowthInput, 'body' | 'openings'>;

/** What sensitivity is told for. */
const STEP = kilograms(10);

/** What growth does to the boat fully loaded, and how much of it there is until the first limit is met. */
export function growthFigures(
  build: Build,
  mass: MassResult,
  floating: Floating,
  conditions: readonly Condition[],
): GrowthFigures {
  const { growth: allowed } = mass;
  const full = conditionOf({ conditions }, 'fully loaded');
  const effect = full?.state && effectOf(floating, full, full.state, allowed.at);
  const limits = [
    ratedLoad(build, mass),
    ...limitsOf(build).flatMap(({ name, of, limit }): readonly GrowthRow[] => {
      const load = conditionOf({ conditions }, of)?.load;
      if (!load) return [];
      const most = mass.completed.mass;
      const margin = growthUntil({ ...floating, load, at: allowed.at, most }, limit);
      return [{ name, margin }];
    }),
  ];
  const first = limits
    .flatMap(({ name, margin }) =>
      margin.outcome === 'met' ? [{ name, growth: margin.growth }] : [],
    )
    .toSorted((a, b) => a.growth - b.growth)[0];
  return {
    allowed: allowed.mass,
    boat: mass.completed.mass,
    limits,
    ...(effect && { effect }),
    ...(first && { first }),
  };
}

/** What it may carry is counted without its own mass, so what it puts on comes off it kilogram by kilogram. */
function ratedLoad({ hull }: Build, { load }: MassResult): GrowthRow {
  const left = hull.ratings.load - load;
  const margin: GrowthMargin =
    left < 0 ? { outcome: 'already past' } : { outcome: 'met', growth: kilograms(left) };
  return { name: 'the load that the hull is rated for', margin };
}

function limitsOf({ hull, yard }: Build): readonly {
  readonly name: string;
  readonly of: 'fully loaded' | 'people to one side';
  readonly limit: GrowthLimit;
}[] {
  const { heel, freeboard } = yard.offsetLoad ?? {};
  const least = hull.performance.leastFreeboard;
  return [
    {
      name: 'the trim that the hull file allows, fully loaded',
      of: 'fully loaded',
      limit: { kind: 'trim', ...hull.trimBand },
    },
    {
      name: 'the least freeboard in the hull file, fully loaded',
      of: 'fully loaded',
      limit: { kind: 'freeboard', least },
    },
    ...(freeboard === undefined
      ? []
      : [
          {
            name: 'the freeboard of the screen with people to one side',
            of: 'people to one side' as const,
            limit: { kind: 'freeboard' as const, least: freeboard },
          },
        ]),
    ...(heel === undefined
      ? []
      : [
          {
            name: 'the heel of the screen with people to one side',
            of: 'people to one side' as const,
            limit: { kind: 'heel' as const, most: heel },
          },
        ]),
  ];
}

/** What ten kilograms more of the boat change; undefined when it does not float with them. */
function effectOf(
  { body, openings }: Floating,
  { load }: Condition,
  now: FloatingState,
  at: Point3,
): GrowthEffect | undefined {
  const grown = withMasses(load, [{ mass: STEP, at }]);
  const result = findEquilibrium(body, grown, openings, now.plane);
  if (result.outcome !== 'floats') return undefined;
  // What moves in its tanks is in the height of its load already.
  const then = stateOf(body, grown, result.plane, openings, 0);
  const [before, after] = [now.metacentricHeight?.byForm, then.metacentricHeight?.byForm];
  return {
    mass: STEP,
    draughtAft: then.draughtAft - now.draughtAft,
    draughtFore: then.draughtFore - now.draughtFore,
    trim: then.trim - now.trim,
    freeboard: then.freeboards.lowest.freeboard - now.freeboards.lowest.freeboard,
    ...(before !== undefined && after !== undefined && { metacentricHeight: after - before }),
  };
}
