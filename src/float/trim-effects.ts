import { kilograms, type Kilograms, type Point3, radians, type Radians } from '../units/index.ts';
import { findEquilibrium } from './equilibrium.ts';
import type { FloatingBody, Load, Opening, WaterPlane } from './types.ts';
import { type PointMass, withMasses } from './with-masses.ts';

export interface NamedMass extends PointMass {
  readonly name: string;
}

export interface TrimEffect {
  readonly name: string;
  readonly mass: Kilograms;
  /** What the item does to it, against the same boat without it. */
  readonly trim: Radians;
  readonly heel: Radians;
}

/**
 * The items that move trim most, greatest first: for each, the trim with it less the trim without it.
 *
 * @returns empty when the boat does not float; items without which it does not float are left out
 * @source derived: full equilibrium with and without each item
 */
export function trimEffects(
  body: FloatingBody,
  load: Load,
  items: readonly NamedMass[],
  count = 5,
): readonly TrimEffect[] {
  const whole = findEquilibrium(body, load);
  if (whole.outcome !== 'floats') return [];
  const effects = items.flatMap(({ name, mass, at }) => {
    const rest = withMasses(load, [{ mass: kilograms(0 - mass), at }]);
    const without = findEquilibrium(body, rest, [], whole.plane);
    if (without.outcome !== 'floats') return [];
    return [
      {
        name,
        mass,
        trim: radians(whole.plane.trim - without.plane.trim),
        heel: radians(whole.plane.heel - without.plane.heel),
      },
    ];
  });
  return effects.toSorted((a, b) => Math.abs(b.trim) - Math.abs(a.trim)).slice(0, count);
}

export interface Place {
  readonly name: string;
  readonly at: Point3;
}

export interface PlaceTried extends Place {
  readonly plane: WaterPlane;
  /** How far the trim is outside the preferred band; 0 within it. */
  readonly outside: Radians;
}

export interface BestPlaceInput {
  readonly body: FloatingBody;
  /** The boat without the item that moves. */
  readonly others: Load;
  readonly item: NamedMass;
  readonly places: readonly Place[];
  /** Trim by the stern that the hull likes. */
  readonly band: { readonly least: Radians; readonly most: Radians };
  readonly openings: readonly Opening[];
}

export interface BestPlace {
  /** Where it is now; undefined when it does not float so. */
  readonly now?: PlaceTried;
  /** Places in which it floats, the best first: nearest to the band, then most upright, then least far to move. */
  readonly tried: readonly PlaceTried[];
  /** How much nearer to the band the best place brings it, rad; 0 when the item is best where it is. */
  readonly gain: Radians;
}

/**
 * The place for a movable item that brings the trim nearest to the preferred band.
 *
 * @validity the places that are given, no others
 * @source derived: full equilibrium for each place
 */
export function bestPlace(input: BestPlaceInput): BestPlace {
  const { item, places } = input;
  const now = tryPlace(input, { name: item.name, at: item.at });
  const tried = places
    .flatMap((place) => tryPlace(input, place, now) ?? [])
    .toSorted(
      (a, b) =>
        compare(a.outside, b.outside) ||
        compare(Math.abs(a.plane.heel), Math.abs(b.plane.heel)) ||
        compare(distance(a.at, item.at), distance(b.at, item.at)),
    );
  const gain = now && tried[0] ? Math.max(0, now.outside - tried[0].outside) : 0;
  return { ...(now && { now }), tried, gain: radians(gain) };
}

function tryPlace(
  { body, others, item, band, openings }: BestPlaceInput,
  { name, at }: Place,
  near?: PlaceTried,
): PlaceTried | undefined {
  const load = withMasses(others, [{ mass: item.mass, at }]);
  const result = findEquilibrium(body, load, openings, near?.plane);
  if (result.outcome !== 'floats') return undefined;
  const { trim } = result.plane;
  const outside = radians(Math.max(0, band.least - trim, trim - band.most));
  return { name, at, plane: result.plane, outside };
}

/** Differences that no one can see count as none. */
function compare(a: number, b: number): number {
  return Math.abs(a - b) < 1e-6 ? 0 : a - b;
}

function distance(a: Point3, b: Point3): number {
  return Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
}
