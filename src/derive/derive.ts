import type { Build, BuildItem } from '../resolve/index.ts';
import { type Amperes, amperes, type Kilograms, kilograms, type Point3 } from '../units/index.ts';

/** One placed thing: an item in quantity two is two of them. */
export interface Instance {
  /** Unique within the Build: the item's own, with `#1`, `#2` and so on where there are several. */
  readonly key: string;
  /** Key of its item. */
  readonly item: string;
  readonly at: Point3;
  readonly mass: Kilograms;
  readonly current: Amperes;
  /** The room that it takes up, when it is known. */
  readonly size?: NonNullable<BuildItem['float']>['size'];
}

/** A Build with what follows from what was typed: complete for every room. */
export interface DerivedBuild extends Build {
  /** Every thing in it, in the order of its items; those of one item all where the item is. */
  readonly instances: readonly Instance[];
}

/** Completes a Build; what was derived of it before is derived anew. */
export const derive = (build: Build): DerivedBuild => ({ ...build, instances: instancesIn(build) });

const instancesIn = ({ items }: Build): readonly Instance[] =>
  items.flatMap(({ key, quantity, at, mass, current, float }) =>
    Array.from({ length: quantity }, (_, index) => ({
      key: quantity > 1 ? `${key}#${index + 1}` : key,
      item: key,
      at,
      mass: kilograms(mass / quantity),
      current: amperes(current / quantity),
      ...(float?.size && { size: float.size }),
    })),
  );

/** The things that an item is, one for each that is ordered. */
export function instancesOf(
  { instances }: Pick<DerivedBuild, 'instances'>,
  { key }: BuildItem,
): readonly [Instance, ...Instance[]] {
  const [first, ...others] = instances.filter(({ item }) => item === key);
  if (!first) throw new Error(`${key} is no item of the Build that was derived`);
  return [first, ...others];
}
