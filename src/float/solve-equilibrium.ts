import { solveSpd, type Triple } from '../maths/index.ts';
import { metres, radians } from '../units/index.ts';
import { boundsOf } from './hull/form.ts';
import { energyOf, type Energy } from './energy.ts';
import type { FloatingBody, Load, WaterPlane } from './types.ts';

/** Steps this small, m and rad, end the search; the step that is left is far smaller. */
const SMALL = 1e-8;
/** What rounding leaves of force and moments, over the mass and the mass times the hull's length and beam. */
const ROUNDING = 2e-15;
const MAX_STEPS = 160;
const MAX_HALVINGS = 30;
/** The longest single step in level, trim and heel, m and rad; short in heel, so as to step over no lean that it rests at. */
const LONGEST: Triple = [0.3, 0.15, 0.05];
/** A lean that a boat which balances on a ridge is pushed by, so that it falls to one side, rad. */
const PUSH = 0.02;
/** Steps from a ridge that call for the push, m and rad. */
const HARDLY_MOVES = 1e-4;
/** Share of the box's stiffness that is tried first where the energy is no bowl. */
const MIN_DAMPING = 1e-6;
/** A search that did not come to rest is made again in steps so many times shorter. */
const FINER = 8;
/** Beyond these, rad, it goes over: on end, or more than upside down. */
const MAX_TRIM = 1.4;
const MAX_HEEL = 4;

interface Solved {
  readonly plane: WaterPlane;
  readonly energy: Energy;
}

interface Searched {
  readonly body: FloatingBody;
  readonly load: Load;
  readonly heelIsHeld: boolean;
  readonly scale: Triple;
}

/** Where a search ends: at rest, on its way over or on end without a place to rest before it, or nowhere. */
export type Search =
  | ({ readonly outcome: 'rests' } & Solved)
  | { readonly outcome: 'goes over'; readonly plane: WaterPlane }
  | { readonly outcome: 'not found' };

/**
 * The plane in which it comes to rest, from a plane to begin with.
 *
 * Newton's method on the potential energy of boat and water, with its exact second derivatives. Where these
 * are not those of a bowl they are stiffened until they are, and a step that neither lowers the energy nor, in a bowl,
 * brings forces and moments nearer to balance is halved. It ends where the next step, which
 * is what is out of balance over its stiffness, is too small to matter, or where what is out of balance is no more
 * than rounding. Where it stands still without being stable it is pushed once, to the side that its weight lies
 * on; if it stands still again it is neutral there, and that counts as rest. A search that does not come to rest is
 * made once more in steps an eighth as long, so that no place to rest is stepped over; both are bounded.
 *
 * @param heelIsHeld - true to find level and trim only
 * @returns `goes over` beyond 80 degrees of trim or 229 of heel, with the plane that it passed there
 * @source derived: equilibrium is a minimum of potential energy; Levenberg-Marquardt damping and Armijo
 * halving as in Nocedal and Wright, Numerical Optimization, 2nd ed., sections 3.1 and 3.4 (from memory)
 */
export function solveEquilibrium(
  body: FloatingBody,
  load: Load,
  start: WaterPlane,
  heelIsHeld: boolean,
): Search {
  const boat = { body, load, heelIsHeld, scale: scaleOf(body) };
  const first = search(boat, start, 1);
  if (first.outcome === 'rests') return first;
  const second = search(boat, start, 1 / FINER);
  return second.outcome === 'not found' ? first : second;
}

/** One search, its longest steps shortened to a share. */
function search(boat: Searched, start: WaterPlane, share: number): Search {
  const { body, load, heelIsHeld, scale } = boat;
  const rounding = roundingOf(body, load);
  let plane = start;
  let energy = energyOf(body, load, plane);
  let pushed = false;
  for (let count = 0; count * share < MAX_STEPS; count++) {
    const free = heelIsHeld ? holdHeel(energy) : energy;
    const { step, damped } = downhill(free, scale, share);
    const longest = Math.max(...step.map(Math.abs));
    const balanced = free.gradient.every((left, index) => Math.abs(left) < (rounding[index] ?? 0));
    if (balanced && !damped) return { outcome: 'rests', plane, energy };
    if (longest < SMALL) {
      if (!damped) return { outcome: 'rests', plane: moved(plane, step, 1), energy };
      if (heelIsHeld) return { outcome: 'not found' };
      if (pushed) return { outcome: 'rests', plane, energy };
    }
    if (damped && !pushed && !heelIsHeld && longest < HARDLY_MOVES) {
      pushed = true;
      plane = moved(plane, [0, 0, load.centre.y < 0 ? -PUSH : PUSH], 1);
      energy = energyOf(body, load, plane);
      continue;
    }
    const next = descend(boat, { plane, energy: free }, step, damped);
    if (!next) return { outcome: 'not found' };
    ({ plane, energy } = next);
    if (Math.abs(plane.trim) > MAX_TRIM || Math.abs(plane.heel) > MAX_HEEL) {
      return { outcome: 'goes over', plane };
    }
  }
  return { outcome: 'not found' };
}

/**
 * The plane under a trim and heel in which it displaces its mass, to a thousandth of it; undefined when it
 * cannot.
 *
 * @source derived: Newton's method with bisection where it leaves the bracket; not `findRoot`, for the area of the
 * waterplane is the slope, and this takes half the steps
 */
export function levelFor(
  body: FloatingBody,
  load: Load,
  trim: number,
  heel: number,
): WaterPlane | undefined {
  const at = (level: number): WaterPlane => ({
    level: metres(level),
    trim: radians(trim),
    heel: radians(heel),
  });
  const { length, beam, height } = boundsOf(body.hull);
  let [low, high] = [-length - beam - height, length + beam + height];
  let level = height / 4;
  for (let count = 0; count < MAX_STEPS; count++) {
    const { gradient, curvature } = energyOf(body, load, at(level));
    const [excess] = gradient;
    if (Math.abs(excess) < 1e-3 * load.mass) return at(level);
    if (excess > 0) high = level;
    else low = level;
    const newton = level - excess / curvature[0];
    level = newton > low && newton < high ? newton : (low + high) / 2;
  }
  return undefined;
}

/** Stiffness of a box as large as the hull: what a step is measured against. */
function scaleOf({ hull, water }: FloatingBody): Triple {
  const { length, beam } = boundsOf(hull);
  const stiffness = water * length * beam;
  return [stiffness, (stiffness * length * length) / 12, (stiffness * beam * beam) / 12];
}

/** Force and moments that arithmetic cannot tell from none. */
function roundingOf({ hull }: FloatingBody, { mass }: Load): Triple {
  const { length, beam } = boundsOf(hull);
  const force = ROUNDING * mass;
  return [force, force * length, force * beam];
}

function holdHeel({ value, gradient, curvature }: Energy): Energy {
  const [level, trim] = gradient;
  const [levelLevel, levelTrim, , trimTrim] = curvature;
  return {
    value,
    gradient: [level, trim, 0],
    curvature: [levelLevel, levelTrim, 0, trimTrim, 0, 1],
  };
}

/** A step that leads down; `damped` when the energy is no bowl here. */
function downhill(
  { gradient, curvature }: Energy,
  scale: Triple,
  share: number,
): { readonly step: Triple; readonly damped: boolean } {
  const right: Triple = [-gradient[0], -gradient[1], -gradient[2]];
  let damping = 0;
  for (let count = 0; count < 12; count++) {
    const [a, b, c, d, e, f] = curvature;
    const stiffened = [
      a + damping * scale[0],
      b,
      c,
      d + damping * scale[1],
      e,
      f + damping * scale[2],
    ] as const;
    const step = solveSpd(stiffened, right, scale);
    if (step) return { step: limited(step, share), damped: damping > 0 };
    damping = damping === 0 ? MIN_DAMPING : damping * 10;
  }
  return { step: [0, 0, 0], damped: true };
}

function limited(step: Triple, share: number): Triple {
  const excess = Math.max(
    1,
    ...step.map((part, index) => Math.abs(part) / (share * (LONGEST[index] ?? 1))),
  );
  return [step[0] / excess, step[1] / excess, step[2] / excess];
}

/**
 * As much of the step as lowers the energy or, in a bowl, brings it nearer to balance: volumes between twisted lines
 * are integrated to a few parts in a million, so that near rest the energy no longer tells.
 */
function descend(boat: Searched, from: Solved, step: Triple, damped: boolean): Solved | undefined {
  const { body, load, heelIsHeld, scale } = boat;
  const { value, gradient } = from.energy;
  const slope = gradient.reduce((sum, part, index) => sum + part * (step[index] ?? 0), 0);
  const rounding = 1e-13 * load.mass;
  const unbalanced = (energy: Energy): number =>
    (heelIsHeld ? holdHeel(energy) : energy).gradient.reduce(
      (sum, part, index) => sum + part ** 2 / (scale[index] ?? 1),
      0,
    );
  const before = unbalanced(from.energy);
  let share = 1;
  for (let count = 0; count < MAX_HALVINGS; count++) {
    const plane = moved(from.plane, step, share);
    const energy = energyOf(body, load, plane);
    const isLower = energy.value <= value + 1e-4 * share * slope + rounding;
    if (isLower || (!damped && unbalanced(energy) < before * (1 - share / 2))) {
      return { plane, energy };
    }
    share /= 2;
  }
  return undefined;
}

function moved({ level, trim, heel }: WaterPlane, step: Triple, share: number): WaterPlane {
  return {
    level: metres(level + share * step[0]),
    trim: radians(trim + share * step[1]),
    heel: radians(heel + share * step[2]),
  };
}
