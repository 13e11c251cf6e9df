import { findRoot } from '../maths/index.ts';
import {
  kilograms,
  type Kilograms,
  type Metres,
  type NotComputed,
  type Point3,
  type Radians,
  searchFailed,
} from '../units/index.ts';
import { findEquilibrium } from './equilibrium.ts';
import { lowestOf } from './freeboard.ts';
import type { FloatingBody, Load, Opening, WaterPlane } from './types.ts';
import { withMasses } from './with-masses.ts';

export interface GrowthInput {
  readonly body: FloatingBody;
  /** As it is loaded now, with nothing put on. */
  readonly load: Load;
  /** Where what it puts on lies. */
  readonly at: Point3;
  readonly openings: readonly Opening[];
  /** Growth beyond which nobody asks, kg. */
  readonly most: Kilograms;
}

/** What has to hold while it grows. */
export type GrowthLimit =
  | { readonly kind: 'freeboard'; readonly least: Metres }
  | { readonly kind: 'trim'; readonly least: Radians; readonly most: Radians }
  | { readonly kind: 'heel'; readonly most: Radians };

export type GrowthMargin =
  | { readonly outcome: 'met'; readonly growth: Kilograms }
  | { readonly outcome: 'already past' }
  | { readonly outcome: 'not met' }
  /** The limit is passed on the way, but the search for it did not end. */
  | ({ readonly outcome: 'not found' } & NotComputed);

const NOT_FOUND = {
  outcome: 'not found',
  ...searchFailed('the search for it did not end'),
} as const;
/** Kilograms that growth is found to. */
const TOLERANCE = 0.01;
/** Short of a limit by so much, m or rad, when it does not float at all. */
const LOST = -0.1;

/**
 * How much it can put on until a limit is met.
 *
 * @returns `already past` when the limit does not hold as it is; `not met` when it holds with `most` put on
 * @validity still water; the limit is passed once on the way. An estimate from the drawn lines; verify by weighing
 * and by draught marks
 * @source derived: full equilibrium at each growth, false position to 0.01 kg
 */
export function growthUntil(input: GrowthInput, limit: GrowthLimit): GrowthMargin {
  const { body, load, at, openings, most } = input;
  const slack = (growth: number): number | undefined => {
    const grown = withMasses(load, [{ mass: kilograms(growth), at }]);
    const result = findEquilibrium(body, grown, openings);
    if (result.outcome === 'not computed') return undefined;
    if (result.outcome !== 'floats') return LOST;
    return slackOf(limit, result.plane, input);
  };
  const now = slack(0);
  const then = slack(most);
  if (now === undefined || then === undefined) return NOT_FOUND;
  if (now < 0) return { outcome: 'already past' };
  if (then >= 0) return { outcome: 'not met' };
  const root = findRoot(slack, [0, now], [most, then], { within: TOLERANCE });
  return root.outcome === 'found' ? { outcome: 'met', growth: kilograms(root.at) } : NOT_FOUND;
}

/** What is left to a limit, m or rad. */
function slackOf(limit: GrowthLimit, plane: WaterPlane, { body, openings }: GrowthInput): number {
  switch (limit.kind) {
    case 'freeboard': {
      const lowest = lowestOf(body.hull, openings, plane);
      return (lowest?.freeboard ?? 0) - limit.least;
    }
    case 'trim':
      return Math.min(plane.trim - limit.least, limit.most - plane.trim);
    case 'heel':
      return limit.most - Math.abs(plane.heel);
  }
}
