import { type Equilibrium, findEquilibrium } from './equilibrium.ts';
import { type FloatingState, stateOf } from './floating-state.ts';
import { felt, type FreeSurface, freeSurfaceMoment } from './free-surface.ts';
import { type FloatRemedy, floatRemedy } from './remedy.ts';
import type { FloatingBody, FloodedSpace, Load, Opening } from './types.ts';

export const CONDITIONS = [
  'light',
  'with engine',
  'performance test',
  'fully loaded',
  'grown',
  'people to one side',
  'people aft',
  'people forward',
  'rated',
  'rated half tanks',
  'rated to one side',
  'rated aft',
  'rated forward',
  'ballast flooded at rest',
  'ballast drained',
  'custom',
] as const;
export type ConditionName = (typeof CONDITIONS)[number];

/** The boat with who and what is aboard. */
interface LoadedBoat extends Load {
  readonly people: number;
  /** Fluids among them have a surface where they move. */
  readonly masses: readonly { readonly surface?: FreeSurface }[];
  /** True when the ballast tank is open to the sea. */
  readonly flooded: boolean;
}

export interface ConditionsInput {
  readonly body: FloatingBody;
  readonly openings: readonly Opening[];
  readonly loadings: Readonly<Partial<Record<ConditionName, LoadedBoat>>>;
  /** What the ballast tank takes up; without it there are no conditions with ballast. */
  readonly ballast?: FloodedSpace;
}

export interface Condition {
  readonly name: ConditionName;
  /** Its centre as high as the boat feels it, with what moves in its tanks. */
  readonly load: Load;
  readonly people: number;
  readonly equilibrium: Equilibrium;
  /** Only when it floats. */
  readonly state?: FloatingState;
  /** The least that would let it float, when it does not. */
  readonly remedy?: FloatRemedy;
}

/**
 * How the boat floats in each condition that its order has.
 *
 * @validity still water. Estimated from the drawn lines and the counted masses; verify by weighing and by
 * draught marks
 * @source conditions: common practice, no source
 */
export function floatConditions(input: ConditionsInput): readonly Condition[] {
  const { body, openings, loadings, ballast } = input;
  return CONDITIONS.flatMap((name): readonly Condition[] => {
    const loading = loadings[name];
    if (!loading || (!ballast && name.startsWith('ballast'))) return [];
    const { mass, centre, people, masses, flooded } = loading;
    const load = { mass, centre };
    const open = flooded && ballast ? { ...body, flooded: [...body.flooded, ballast] } : body;
    const surfaces = freeSurfaceMoment(masses.flatMap(({ surface }) => surface ?? []));
    const raised = felt(loading);
    const equilibrium = findEquilibrium(open, raised, openings);
    const state =
      equilibrium.outcome === 'floats' &&
      stateOf(open, load, equilibrium.plane, openings, surfaces);
    const isFailure = equilibrium.outcome !== 'floats' && equilibrium.outcome !== 'not computed';
    const remedy = isFailure && floatRemedy(open, raised, openings);
    return [
      {
        name,
        load: raised,
        people,
        equilibrium,
        ...(state && { state }),
        ...(remedy && { remedy }),
      },
    ];
  });
}
