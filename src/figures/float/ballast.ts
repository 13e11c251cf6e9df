import {
  ballastEffect,
  type BallastEffect,
  drainTime,
  fillTime,
  type FloatingBody,
  type FloodedSpace,
  type Load,
  type Opening,
  surfaceAreas,
} from '../../float/index.ts';
import { areaUnder } from '../../maths/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import { metres, type Metres } from '../../units/index.ts';
import type { Ballast } from './types.ts';

/** Share of an outlet's area that a jet fills: a short pipe, a sharp edge. Common practice, no source. */
const DISCHARGE = 0.6;
const NEARLY = 0.98;
/** Share of the beam: common practice, no source. */
const GYRATION = 0.4;

/** What the ballast tank of an order does, at rest and as it gathers way, loaded as for the trial. */
export function ballastFigures(
  build: Build,
  body: FloatingBody,
  { item, space }: { readonly item: BuildItem; readonly space?: FloodedSpace },
  load: Load,
  openings: readonly Opening[],
): Ballast {
  const named = { item: item.name, itemKey: item.key };
  if (!space) return named;
  const { gyration, dimensions } = build.hull;
  const radius = gyration ?? metres(GYRATION * dimensions.beam);
  const effect = ballastEffect(body, load, space, radius, openings);
  return { ...named, effect, ...flows(item, space, effect) };
}

function flows(
  { float }: BuildItem,
  space: FloodedSpace,
  effect: BallastEffect,
): Partial<Pick<Ballast, 'drains' | 'fills' | 'leftShare'>> {
  const tank = float?.tank;
  const sea = seaLevel(effect, tank);
  if (!tank || sea === undefined) return {};
  const areas = surfaceAreas(space.form, space.permeability);
  const bottom = areas[0]?.[0] ?? 0;
  const path = {
    outlet: tank.outlet.area,
    discharge: DISCHARGE,
    ...(tank.vent !== undefined && { vent: { area: tank.vent, discharge: DISCHARGE } }),
  };
  const full = metres(Math.min(tank.top, sea));
  const extraHead = metres(((tank.to - tank.from) / 2) * Math.sin(tank.runningTrim));
  const outletHeight = tank.outlet.height;
  const empty = metres(Math.max(bottom, outletHeight - extraHead));
  return {
    drains: drainTime({ ...path, areas, from: full, to: empty, outletHeight, extraHead }),
    fills: fillTime({
      ...path,
      areas,
      from: metres(bottom),
      to: metres(bottom + NEARLY * (full - bottom)),
      outside: sea,
    }),
    leftShare: areaUnder(areas, bottom, empty) / areaUnder(areas, bottom, full),
  };
}

/** Height of the sea in the middle of the tank's length, at rest with the tank open. */
function seaLevel(
  { flooded }: BallastEffect,
  tank: NonNullable<BuildItem['float']>['tank'],
): Metres | undefined {
  const { equilibrium } = flooded;
  if (equilibrium.outcome !== 'floats' || !tank) return undefined;
  const { level, trim } = equilibrium.plane;
  const middle = (tank.from + tank.to) / 2;
  return metres((level - middle * Math.sin(trim)) / Math.cos(trim));
}
