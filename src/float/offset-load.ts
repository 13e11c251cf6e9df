import { metres, type Metres, type Radians } from '../units/index.ts';
import { type Equilibrium, findEquilibrium } from './equilibrium.ts';
import { type Freeboard, lowestOf } from './freeboard.ts';
import type { FloatingBody, Load, Opening } from './types.ts';

export interface OffsetLoadInput {
  readonly body: FloatingBody;
  /** The boat with everyone at one side. */
  readonly load: Load;
  readonly openings: readonly Opening[];
  /** What the chosen method allows; where it comes from is part of it. */
  readonly limits: {
    readonly basis: string;
    readonly heel?: Radians | undefined;
    readonly freeboard?: Metres | undefined;
  };
}

export interface OffsetLoad {
  readonly result: Equilibrium;
  /** Heel to the side they stand on, rad, and what stays above the water; only when it floats. */
  readonly heel?: Radians;
  readonly lowest?: Freeboard;
  /** Undefined where the method has no such limit, or nothing is computed. */
  readonly heelWithin?: boolean;
  readonly freeboardWithin?: boolean;
  readonly basis: string;
}

/**
 * How far it leans with people on one side and how much freeboard is left, against limits that are given.
 *
 * @validity still water; estimated from the drawn lines to the named method; verify by the test on the water.
 * A boat that does not float fails whatever limits are given
 * @source derived: full equilibrium; the limits are the caller's, with their source in `basis`
 */
export function offsetLoad(input: OffsetLoadInput): OffsetLoad {
  const { body, load, openings, limits } = input;
  const result = findEquilibrium(body, load, openings);
  const { basis } = limits;
  if (result.outcome === 'not computed') return { result, basis };
  if (result.outcome !== 'floats') {
    return {
      result,
      basis,
      ...(limits.heel !== undefined && { heelWithin: false }),
      ...(limits.freeboard !== undefined && { freeboardWithin: false }),
    };
  }
  const { plane } = result;
  const lowest = lowestOf(body.hull, openings, plane);
  return {
    result,
    basis,
    heel: plane.heel,
    ...(lowest && { lowest }),
    ...(limits.heel !== undefined && { heelWithin: Math.abs(plane.heel) <= limits.heel }),
    ...(limits.freeboard !== undefined && {
      freeboardWithin: (lowest?.freeboard ?? metres(0)) >= limits.freeboard,
    }),
  };
}
