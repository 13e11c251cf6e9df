import {
  ballastEffect,
  type BallastEffect,
  drainTime,
  endArea,
  fillTime,
  type FloatingBody,
  type FloodedSpace,
  type Load,
  type Opening,
  type SurfaceAreas,
  surfaceAreas,
} from '../../float/index.ts';
import { areaUnder, findRoot } from '../../maths/index.ts';
import type { BuildItem } from '../../resolve/index.ts';
import { metres, type Metres, squareMetres } from '../../units/index.ts';
import type { Ballast } from './types.ts';

/** Share of an outlet's area that a jet fills: a short pipe, a sharp edge. Common practice, no source. */
const DISCHARGE = 0.6;
const NEARLY = 0.98;

type Tank = NonNullable<NonNullable<BuildItem['float']>['tank']>;

/** What the ballast tank of an order does, at rest and as it gathers way, loaded as for the trial. */
export function ballastFigures(
  body: FloatingBody,
  { item, space }: { readonly item: BuildItem; readonly space?: FloodedSpace },
  load: Load,
  openings: readonly Opening[],
): Ballast {
  const named = { item: item.name, itemKey: item.key };
  const tank = item.float?.tank;
  if (!space || !tank) return named;
  const effect = ballastEffect(body, load, space, openings);
  const atRest = surfaceAreas(space.form, space.permeability);
  const end = endArea(space.form);
  const top = (atRest.at(-1)?.[1] ?? 0) / space.permeability;
  return {
    ...named,
    effect,
    ...flows(tank, space, effect, atRest),
    tooLarge: [
      { name: 'outlet', area: tank.outlet.area, in: 'its aft end', of: end },
      { name: 'vent', area: tank.vent ?? squareMetres(0), in: 'its top', of: squareMetres(top) },
    ].filter(({ area, of }) => area > of),
  };
}

function flows(
  tank: Tank,
  space: FloodedSpace,
  { dry, flooded, water }: BallastEffect,
  atRest: SurfaceAreas,
): Partial<Pick<Ballast, 'drains' | 'fills' | 'leftShare'>> {
  const [begins, ends] = [seaLevel(dry, tank), seaLevel(flooded, tank)];
  if (begins === undefined || ends === undefined || !water) return {};
  const path = {
    outlet: tank.outlet.area,
    discharge: DISCHARGE,
    ...(tank.vent !== undefined && { vent: { area: tank.vent, discharge: DISCHARGE } }),
  };
  const bottom = atRest[0]?.[0] ?? 0;
  const full = Math.min(tank.top, ends);
  // Under way what it holds lies towards its aft end, where the outlet is.
  const areas = surfaceAreas(space.form, space.permeability, { trim: tank.runningTrim });
  const held = areaUnder(atRest, bottom, full);
  const [low, high] = [areas[0]?.[0] ?? 0, areas.at(-1)?.[0] ?? 0];
  const more = (height: number): number => areaUnder(areas, low, height) - held;
  const root = findRoot(more, [low, more(low)], [high, more(high)], { within: 1e-6 });
  const from = metres(root.outcome === 'found' ? root.at : high);
  const outletHeight = tank.outlet.height;
  const to = metres(Math.max(low, outletHeight));
  return {
    drains: drainTime({ ...path, areas, from, to, outletHeight }),
    fills: fillTime({
      ...path,
      areas: atRest,
      from: metres(bottom),
      to: metres(bottom + NEARLY * (full - bottom)),
      outside: [begins, ends],
    }),
    leftShare: areaUnder(areas, low, to) / held,
  };
}

/** Height of the sea in the middle of the tank's length, at rest. */
function seaLevel({ equilibrium }: BallastEffect['dry'], tank: Tank): Metres | undefined {
  if (equilibrium.outcome !== 'floats') return undefined;
  const { level, trim } = equilibrium.plane;
  const middle = (tank.from + tank.to) / 2;
  return metres((level - middle * Math.sin(trim)) / Math.cos(trim));
}
