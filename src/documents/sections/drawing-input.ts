import type { DrawnItem, HullShape, OutboardShape } from '../../draw/index.ts';
import type { CustomerBuild } from '../../figures/index.ts';
import type { Shaft } from '../../schema/index.ts';
import { metres } from '../../units/index.ts';

/**
 * Length of each shaft from the clamp to the plate above the propeller, m: 15, 20 and 25 inches.
 *
 * @source common practice, no source
 */
const SHAFT_LENGTH: Readonly<Record<Shaft, number>> = {
  short: 0.381,
  long: 0.508,
  'extra-long': 0.635,
};

/** Options, one-off items and the outboard, numbered from 1 in the order of the Build. */
export function drawnItems({
  items,
  hull,
}: Pick<CustomerBuild, 'items' | 'hull'>): readonly DrawnItem[] {
  const { length, depth } = hull.dimensions;
  // What weighs nothing and was given no position counts as placed, in the middle of the boat: a colour, a marking.
  const nowhere = ({ mass, at }: CustomerBuild['items'][number]): boolean =>
    mass === 0 && at.x === length / 2 && at.y === 0 && at.z === depth / 2;
  return items
    .filter(({ kind }) => kind === 'option' || kind === 'extra' || kind === 'outboard')
    .filter((item) => item.placed && !nowhere(item))
    .map(({ key, name, at }, index) => ({ key, number: String(index + 1), name, at }));
}

/** The number of each drawn item, by the item's key. */
export function drawnNumbers(
  build: Pick<CustomerBuild, 'items' | 'hull'>,
): ReadonlyMap<string, string> {
  return new Map(drawnItems(build).map(({ key, number }) => [key, number]));
}

/** The hull as it is drawn: without lines a sketch of its dimensions. */
export function hullShape({ hull, yard }: Pick<CustomerBuild, 'hull' | 'yard'>): HullShape {
  const { name, dimensions, lines } = hull;
  const shape = lines.length > 0 ? lines : sketched(dimensions);
  return { name, length: dimensions.length, lines: shape, units: yard.units };
}

function sketched({
  length,
  beam,
  transomBeam,
  depth,
}: CustomerBuild['hull']['dimensions']): HullShape['lines'] {
  const section = (x: number, keel: number, half: number): HullShape['lines'][number] => ({
    x: metres(x),
    points: [
      [metres(0), metres(keel)],
      [metres(half), metres(depth)],
    ],
  });
  return [
    section(0, 0, transomBeam / 2),
    section(length / 2, 0, beam / 2),
    section(length, depth / 2, beam / 20),
  ];
}

/** The outboard as it is sketched; nothing when the boat has none. */
export function outboardShape({ outboard, hull }: Pick<CustomerBuild, 'outboard' | 'hull'>): {
  readonly outboard?: OutboardShape;
} {
  if (!outboard) return {};
  const keel = hull.lines[0]?.points[0]?.[1] ?? 0;
  return {
    outboard: {
      clampHeight: keel + hull.dimensions.transomHeight,
      shaft: SHAFT_LENGTH[outboard.shaft],
      mass: outboard.mass,
    },
  };
}
