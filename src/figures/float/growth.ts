import {
  type Condition,
  felt,
  findEquilibrium,
  type FloatingState,
  type GrowthLimit,
  type GrowthMargin,
  type GrowthInput,
  growthUntil,
  stateOf,
  withMasses,
} from '../../float/index.ts';
import { type Loading, type MassResult, toSide } from '../../mass/index.ts';
import type { Build } from '../../resolve/index.ts';
import { kilograms, type Point3 } from '../../units/index.ts';
import { leastFreeboardOf } from '../hull-defaults.ts';
import { conditionOf } from './conditions.ts';
import type { Afloat, GrowthEffect, GrowthFigures, GrowthRow } from './types.ts';

type Floating = Pick<GrowthInput, 'body' | 'openings'>;

/** What sensitivity is told for. */
const STEP = kilograms(10);

/** What growth does to the boat fully loaded, and how much of it there is until the first limit is met. */
export function growthFigures(
  build: Build,
  mass: MassResult,
  floating: Floating & Pick<Afloat, 'crew'>,
  conditions: readonly Condition[],
): GrowthFigures {
  const { growth: allowed } = mass;
  const full = conditionOf({ conditions }, 'fully loaded');
  const effect = full?.state && effectOf(floating, full, full.state, allowed.at);
  const limits = [
    ratedLoad(build, mass),
    ...limitsOf(build, mass, floating.crew).flatMap(
      ({ name, aboard, limit }): readonly GrowthRow[] => {
        const load = felt(aboard);
        const most = mass.completed.mass;
        const margin = growthUntil({ ...floating, load, at: allowed.at, most }, limit);
        return [{ name, margin }];
      },
    ),
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

interface LimitOfGrowth {
  readonly name: string;
  readonly aboard: Loading;
  readonly limit: GrowthLimit;
}

function limitsOf(
  build: Build,
  { loadings: { 'fully loaded': aboard } }: MassResult,
  { ordered: { most }, cockpit }: Afloat['crew'],
): readonly LimitOfGrowth[] {
  const { heel, freeboard } = build.yard.offsetLoad ?? {};
  const side = typeof most === 'number' && most > 0 ? most : undefined;
  const leaning = side !== undefined && toSide(aboard, cockpit, side);
  const there = `with ${side} to one side`;
  return [
    {
      name: 'the trim that the hull file allows, fully loaded',
      aboard,
      limit: { kind: 'trim', ...build.hull.trimBand },
    },
    {
      name: 'the least freeboard of the hull, fully loaded',
      aboard,
      limit: { kind: 'freeboard', least: leastFreeboardOf(build) },
    },
    ...(leaning && freeboard !== undefined
      ? [
          {
            name: `the freeboard of the screen ${there}`,
            aboard: leaning,
            limit: { kind: 'freeboard', least: freeboard } as const,
          },
        ]
      : []),
    ...(leaning && heel !== undefined
      ? [
          {
            name: `the heel of the screen ${there}`,
            aboard: leaning,
            limit: { kind: 'heel', most: heel } as const,
          },
        ]
      : []),
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
