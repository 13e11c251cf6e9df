import type { Build, BuildItem } from '../resolve/index.ts';
import { type Amperes, amperes, type Kilograms, kilograms, type Point3 } from '../units/index.ts';

/** One placed thing: an item in quantity two is two of them. */
export interface Instance {
  /** Unique within the Build: the item's own, with `#1`, `#2` and so on where there are several. */
  readonly key: string;
  readonly at: Point3;
  readonly mass: Kilograms;
  readonly current: Amperes;
  /** The room that it takes up, when it is known. */
  readonly size?: NonNullable<BuildItem['float']>['size'];
}

export interface DerivedItem extends BuildItem {
  /** One for each that is ordered, all where the item is. */
  readonly instances: readonly [Instance, ...Instance[]];
}

/** A Build with what follows from what was typed: complete for every room. */
export interface DerivedBuild extends Build {
  readonly items: readonly DerivedItem[];
}

/** Completes a Build; what was derived of it before is derived anew. */
export const derive = (build: Build): DerivedBuild => ({
  ...build,
  items: build.items.map((item) => {
    const others = Array.from({ length: item.quantity - 1 }, (_, index) => index + 2);
    return {
      ...item,
      instances: [instanceOf(item, 1), ...others.map((one) => instanceOf(item, one))],
    };
  }),
});

function instanceOf(
  { key, quantity, at, mass, current, float }: BuildItem,
  number: number,
): Instance {
  return {
    key: quantity > 1 ? `${key}#${number}` : key,
    at,
    mass: kilograms(mass / quantity),
    current: amperes(current / quantity),
    ...(float?.size && { size: float.size }),
  };
}
