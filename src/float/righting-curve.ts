import { clamp, findRoot, findSummit } from '../maths/index.ts';
import { metres, type Metres, radians, type Radians } from '../units/index.ts';
import { energyOf, rightingArm } from './energy.ts';
import { lowestOpening, sheerOf } from './freeboard.ts';
import { immerse } from './immerse.ts';
import { levelFor, solveEquilibrium } from './solve-equilibrium.ts';
import type { FloatingBody, Load, Opening, WaterPlane } from './types.ts';

const STEP = Math.PI / 36;
const LAST = Math.PI / 2;
const ANGLE_TOLERANCE = 1e-6;
const SUMMIT_TOLERANCE = 1e-4;

export interface RightingArm {
  readonly heel: Radians;
  /** GZ. */
  readonly arm: Metres;
  readonly trim: Radians;
  readonly level: Metres;
}

export interface RightingCurve {
  /** Every 5 degrees from upright; it ends early where no level and trim balance. */
  readonly arms: readonly RightingArm[];
  readonly greatest: RightingArm;
  /** Heel at which the arm turns back to zero; undefined when it does not before 90 degrees. */
  readonly vanishing?: Radians;
  /** Heel at which water first comes aboard, and where; undefined when it does not before 90 degrees. */
  readonly downflooding?: { readonly heel: Radians; readonly opening: string };
  /** Area under the arms up to the downflooding angle, the vanishing angle or the last, m.rad, as work done. */
  readonly area: number;
}

/**
 * Righting arms from upright to 90 degrees, from the true heeled volume, level and trim free at each heel.
 *
 * @param side - that it heels to
 * @param openings - where water comes aboard, besides the sheer, which always counts
 * @returns undefined when the hull cannot carry the mass
 * @validity the hull is closed at the sheer: beyond the downflooding angle the arms hold only for a boat that
 * stays dry. An estimate from the drawn lines; verify by an inclining test
 * @source derived: GZ = distance across the water between the centres of buoyancy and of mass
 */
export function rightingCurve(
  body: FloatingBody,
  load: Load,
  side: 'starboard' | 'port' = 'starboard',
  openings: readonly Opening[] = [],
): RightingCurve | undefined {
  const turned = side === 'port' ? mirrored(body, load, openings) : { body, load, openings };
  const arms = sweep(turned.body, turned.load);
  const [upright] = arms;
  if (!upright) return undefined;
  const near = (heel: number): RightingArm | undefined => {
    const start = arms[clamp(Math.round(heel / STEP), 0, arms.length - 1)] ?? upright;
    return armAt(turned.body, turned.load, heel, start);
  };
  const greatest = summitOf(arms, near) ?? upright;
  const vanishing = vanishingOf(arms, greatest, near);
  const downflooding = downfloodingOf(arms, near, [...turned.openings, ...sheerOf(body.hull)]);
  const until = Math.min(vanishing ?? LAST, downflooding?.heel ?? LAST);
  const last = near(until) ?? arms.at(-1) ?? upright;
  return {
    arms,
    greatest,
    ...(vanishing !== undefined && { vanishing }),
    ...(downflooding && { downflooding }),
    area: workBetween(turned.body, turned.load, upright, last),
  };
}

/**
 * Righting arm at one heel, level and trim free; undefined when none balance.
 *
 * @param near - level and trim to begin with, when some are known
 * @source derived: minimum of potential energy with the heel held
 */
export function armAt(
  body: FloatingBody,
  load: Load,
  heel: number,
  near?: { readonly trim: number; readonly level: number },
): RightingArm | undefined {
  const start = near
    ? { level: metres(near.level), trim: radians(near.trim), heel: radians(heel) }
    : levelFor(body, load, 0, heel);
  const settled = start && solveEquilibrium(body, load, start, true);
  if (settled?.outcome !== 'rests') return undefined;
  const { plane } = settled;
  const arm = rightingArm(immerse(body, plane), load, plane);
  return { heel: radians(heel), arm: metres(arm), trim: plane.trim, level: plane.level };
}

function sweep(body: FloatingBody, load: Load): readonly RightingArm[] {
  const arms: RightingArm[] = [];
  for (let index = 0; index * STEP <= LAST + ANGLE_TOLERANCE; index++) {
    const arm = armAt(body, load, index * STEP, arms.at(-1));
    if (!arm) break;
    arms.push(arm);
  }
  return arms;
}

type ArmNear = (heel: number) => RightingArm | undefined;

function summitOf(arms: readonly RightingArm[], near: ArmNear): RightingArm | undefined {
  const most = arms.reduce((best, one, at) => (one.arm > (arms[best]?.arm ?? 0) ? at : best), 0);
  const [before, after] = [arms[Math.max(most - 1, 0)], arms[Math.min(most + 1, arms.length - 1)]];
  if (!before || !after) return undefined;
  const armOf = (heel: number): number => near(heel)?.arm ?? Number.NEGATIVE_INFINITY;
  const summit = near(findSummit(armOf, before.heel, after.heel, SUMMIT_TOLERANCE));
  const highest = arms[most];
  return summit && highest && summit.arm < highest.arm ? highest : summit;
}

/** Where the search does not end, the last heel at which the arm is known to right it. */
function vanishingOf(
  arms: readonly RightingArm[],
  greatest: RightingArm,
  near: ArmNear,
): Radians | undefined {
  if (greatest.arm <= 0) return undefined;
  const beyond = arms.findIndex(({ heel, arm }) => heel > greatest.heel && arm < 0);
  const [before, after] = [arms[beyond - 1], arms[beyond]];
  if (!before || !after) return undefined;
  const from = before.heel > greatest.heel ? before : greatest;
  const root = findRoot((heel) => near(heel)?.arm, [from.heel, from.arm], [after.heel, after.arm], {
    within: ANGLE_TOLERANCE,
  });
  return radians(root.outcome === 'found' ? root.at : from.heel);
}

/** Where the search does not end, the last heel at which it is known to be dry. */
function downfloodingOf(
  arms: readonly RightingArm[],
  near: ArmNear,
  openings: readonly Opening[],
): RightingCurve['downflooding'] {
  const lowest = (plane: WaterPlane | undefined) => plane && lowestOpening(plane, openings);
  const heights = arms.map((arm) => lowest(arm)?.freeboard ?? 0);
  const wet = heights.findIndex((height) => height < 0);
  const arm = arms[wet];
  if (!arm) return undefined;
  const before = arms[wet - 1];
  const opening = lowest(arm)?.name ?? '';
  if (!before) return { heel: arm.heel, opening };
  const root = findRoot(
    (heel) => lowest(near(heel))?.freeboard,
    [before.heel, heights[wet - 1] ?? 0],
    [arm.heel, heights[wet] ?? 0],
    { within: ANGLE_TOLERANCE },
  );
  if (root.outcome !== 'found') return { heel: before.heel, opening };
  return { heel: radians(root.at), opening: lowest(near(root.at))?.name ?? opening };
}

/** What it takes to heel it so far, over its weight: the rise of weight against buoyancy. */
function workBetween(body: FloatingBody, load: Load, from: WaterPlane, to: WaterPlane): number {
  const rise = energyOf(body, load, to).value - energyOf(body, load, from).value;
  return rise / load.mass;
}

function mirrored(
  body: FloatingBody,
  load: Load,
  openings: readonly Opening[],
): { readonly body: FloatingBody; readonly load: Load; readonly openings: readonly Opening[] } {
  const flip = ({ x, y, z }: Load['centre']): Load['centre'] => ({ x, y: metres(0 - y), z });
  return {
    body,
    load: { ...load, centre: flip(load.centre) },
    openings: openings.map(({ name, at }) => ({ name, at: flip(at) })),
  };
}
