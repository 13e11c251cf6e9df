import { kilograms, type Kilograms, type Point3 } from '../units/index.ts';
import { FULL_TANK } from './constants.ts';
import { type Equilibrium, findEquilibrium } from './equilibrium.ts';
import { type FloatingState, stateOf } from './floating-state.ts';
import { type FreeSurface, freeSurfaceMoment } from './free-surface.ts';
import type { FloatingBody, FloodedSpace, Load, Opening } from './types.ts';
import { type PointMass, withMasses } from './with-masses.ts';

export const CONDITIONS = [
  'light',
  'with engine',
  'performance test',
  'fully loaded',
  'grown',
  'people to one side',
  'people aft',
  'ballast flooded at rest',
  'ballast drained',
  'custom',
] as const;
export type ConditionName = (typeof CONDITIONS)[number];

/** What a tank holds when it is brimful; `surface` is what moves when it is not. */
export interface Fluid extends PointMass {
  readonly surface?: FreeSurface;
}

export interface ConditionsInput {
  readonly body: FloatingBody;
  readonly openings: readonly Opening[];
  /** The completed boat, without outboard, fluids and people. */
  readonly boat: Load;
  readonly outboard?: PointMass;
  readonly fluids: readonly Fluid[];
  readonly personMass: Kilograms;
  /** Where people sit, one place for each of them, the helm first. */
  readonly seats: readonly Point3[];
  /** Loose gear, all of it. */
  readonly gear?: PointMass;
  /** Where the middle of a crowd is when all go to one side, and when all go aft. */
  readonly crowd: { readonly side: Point3; readonly aft: Point3 };
  readonly performanceTest: { readonly people: number; readonly fluidShare: number };
  readonly ballast?: FloodedSpace;
  /** What the boat herself puts on over her life, when it is allowed for. */
  readonly growth?: PointMass;
  readonly custom?: {
    /** Everything on top of boat, outboard and fluids: people too. */
    readonly masses: readonly PointMass[];
    readonly fluidShare: number;
    readonly ballastFlooded: boolean;
  };
}

export interface Condition {
  readonly name: ConditionName;
  readonly load: Load;
  readonly people: number;
  readonly equilibrium: Equilibrium;
  /** Only when she floats. */
  readonly state?: FloatingState;
}

interface Loading {
  readonly name: ConditionName;
  readonly masses: readonly PointMass[];
  readonly fluidShare: number;
  readonly people: readonly Point3[];
  readonly flooded?: FloodedSpace;
}

/**
 * How the boat floats in each condition that her order has.
 *
 * @validity still water. Estimated from the drawn lines and the counted masses; verify by weighing and by
 * draught marks
 * @source conditions: common practice, no source; full tanks at 95 % as ISO 14946:2021 cl. 4 to 6 (public
 * preview) has them
 */
export function floatConditions(input: ConditionsInput): readonly Condition[] {
  return loadingsOf(input).map((loading) => {
    const load = loadOf(input, loading);
    const body = loading.flooded
      ? { ...input.body, flooded: [...input.body.flooded, loading.flooded] }
      : input.body;
    const equilibrium = findEquilibrium(body, load, input.openings);
    const surfaces = freeSurfaceMoment(
      loading.fluidShare < 1 && loading.fluidShare > 0 ? surfacesOf(input) : [],
    );
    return {
      name: loading.name,
      load,
      people: loading.people.length,
      equilibrium,
      ...(equilibrium.outcome === 'floats' && {
        state: stateOf(body, load, equilibrium.plane, input.openings, surfaces),
      }),
    };
  });
}

function loadingsOf(input: ConditionsInput): readonly Loading[] {
  const { outboard, seats, gear, crowd, performanceTest, ballast, growth, custom } = input;
  const engine = outboard ? [outboard] : [];
  const full = { masses: [...engine, ...(gear ? [gear] : [])], fluidShare: FULL_TANK };
  const test = {
    masses: engine,
    fluidShare: performanceTest.fluidShare,
    people: seats.slice(0, performanceTest.people),
  };
  return [
    { name: 'light', masses: [], fluidShare: 0, people: [] },
    { name: 'with engine', masses: engine, fluidShare: 0, people: [] },
    { name: 'performance test', ...test },
    { name: 'fully loaded', ...full, people: seats },
    ...(growth
      ? [{ name: 'grown' as const, ...full, masses: [...full.masses, growth], people: seats }]
      : []),
    { name: 'people to one side', ...full, people: seats.map(() => crowd.side) },
    { name: 'people aft', ...full, people: seats.map(() => crowd.aft) },
    ...(ballast
      ? [
          { name: 'ballast flooded at rest' as const, ...test, flooded: ballast },
          { name: 'ballast drained' as const, ...test },
        ]
      : []),
    ...(custom
      ? [
          {
            name: 'custom' as const,
            masses: [...engine, ...custom.masses],
            fluidShare: custom.fluidShare,
            people: [],
            ...(custom.ballastFlooded && ballast && { flooded: ballast }),
          },
        ]
      : []),
  ];
}

function loadOf(input: ConditionsInput, { masses, fluidShare, people }: Loading): Load {
  const fluids = input.fluids.map(({ mass, at }) => ({ mass: kilograms(mass * fluidShare), at }));
  const crew = people.map((at) => ({ mass: input.personMass, at }));
  return withMasses(input.boat, [...masses, ...fluids, ...crew]);
}

function surfacesOf({ fluids }: ConditionsInput): readonly FreeSurface[] {
  return fluids.flatMap(({ surface }) => (surface ? [surface] : []));
}
