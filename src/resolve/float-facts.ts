import type { Hull, Option } from '../schema/index.ts';
import type { KilogramsPerCubicMetre, Point3 } from '../units/index.ts';
import { placeInHull } from './hull-coordinates.ts';

/** What an option does to how it floats, beside its mass and its place. */
export interface FloatFacts {
  readonly tank?: NonNullable<Option['tank']>;
  /** Fuel that one holds when full. */
  readonly fuelTank?: NonNullable<Option['fuelTank']>;
  readonly liveWell?: NonNullable<Option['liveWell']>;
  /** Other places that it may go to, boat axes. */
  readonly places: readonly { readonly name: string; readonly at: Point3 }[];
  /** Room that one takes up, when it is known. */
  readonly size?: NonNullable<Option['size']>;
  /** Keys of the items that it may stand in. */
  readonly within: readonly string[];
  readonly density: KilogramsPerCubicMetre;
  /** True when it lies under water when it is swamped. */
  readonly submerged: boolean;
}

/** Key of an option among the items of a Build. */
export const optionKey = (id: string): string => `option:${id}`;

/** The facts of an option in its hull. */
export function floatFacts(option: Option, { dimensions }: Hull): FloatFacts {
  const { tank, fuelTank, liveWell, places, size, within, density, submerged } = option;
  return {
    ...(tank && { tank }),
    ...(fuelTank !== undefined && { fuelTank }),
    ...(liveWell && { liveWell }),
    ...(size && { size }),
    places: places.map(({ name, at }) => ({ name, at: placeInHull(at, dimensions) })),
    within: within.map(optionKey),
    density,
    submerged,
  };
}
