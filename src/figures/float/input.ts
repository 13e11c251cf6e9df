import { type FloatingBody, type HullLines, type Opening, tankForm } from '../../float/index.ts';
import type { FloodedSpace } from '../../float/index.ts';
import { type Build, type BuildItem, placeInHull } from '../../resolve/index.ts';
import { decimalToNumber, metres } from '../../units/index.ts';

/** The lines of a hull as the room that floats it takes them. */
export function hullLines({ hull }: Build): HullLines {
  return {
    stations: hull.lines,
    between: hull.linesBetween,
    length: hull.dimensions.length,
    ...(hull.bow && { bow: hull.bow }),
  };
}

/** Where water comes aboard. */
export function openingsOf({ hull }: Build): readonly Opening[] {
  const { dimensions, openings, lines } = hull;
  if (openings.length > 0)
    return openings.map(({ name, at }) => ({ name, at: placeInHull(at, dimensions) }));
  const keel = lines[0]?.points[0]?.[1] ?? 0;
  const z = metres(keel + dimensions.transomHeight);
  return [{ name: 'transom cut-out', at: { x: metres(0), y: metres(0), z } }];
}

/** A ballast tank of the order, and the space it takes; no space when it lies outside the hull. */
export function ballastTank(
  build: Build,
  body: FloatingBody,
): { readonly item: BuildItem; readonly space?: FloodedSpace } | undefined {
  const item = build.items.find(({ float }) => float?.tank !== undefined);
  const tank = item?.float?.tank;
  if (!item || !tank) return undefined;
  const { from, to, top, halfBreadth, permeability } = tank;
  const form = tankForm(body.hull, {
    from,
    to,
    top,
    ...(halfBreadth !== undefined && { halfBreadth }),
  });
  return {
    item,
    ...(form && { space: { form, permeability: decimalToNumber(permeability) } }),
  };
}
