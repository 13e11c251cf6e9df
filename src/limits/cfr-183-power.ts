import { wholeUp } from '../maths/index.ts';
import { DEGREE, FOOT, HORSEPOWER, INCH, type Watts, watts } from '../units/index.ts';
import { TWENTY_FEET } from './us-units.ts';
import type { Computed, RatedHull } from './types.ts';

/** Table 183.53: greatest factor (nearest whole number) of each step, and its horsepower. */
export const POWER_STEPS: readonly (readonly [factor: number, horsepower: number])[] = [
  [35, 3],
  [39, 5],
  [42, 7.5],
  [45, 10],
  [52, 15],
];

/** Deadrise below which a hard-chine bottom counts as flat; the law draws no line, 5° is ISO 11592-1's. */
const FLAT = 5 * DEGREE;

export interface PowerCapacity {
  /** Length x transom width, square feet. */
  readonly factor: number;
  /** As the formula or the table gives it. */
  readonly computed: number;
  /** What may be marked: raised to the next multiple of 5 where the law allows it. */
  readonly horsepower: number;
  readonly power: Watts;
  /** Which part of the section was used. */
  readonly rule: string;
}

/**
 * Greatest horsepower that may be marked on an outboard boat.
 *
 * F = L x Tw in feet. F to 52.5: the table, at F to the nearest whole number, one step lower for a flat bottom with
 * hard chines. Above: 2F - 90 with remote steering and a transom of 20 in or more; else 0.5F - 15 for a flat bottom
 * with hard chines, 0.8F - 25 for others; the result may be raised to the next multiple of 5.
 *
 * @returns `notComputed` for boats that the law does not cover
 * @validity monohull outboard boats shorter than 20 ft; F of exactly 52.5, in neither rule, is read from the table
 * @source 33 CFR 183.53(a) and table 183.53
 */
export function powerCapacity(hull: RatedHull): Computed<PowerCapacity> {
  const why = outsideLaw(hull);
  if (why) return { notComputed: why };
  const isFull = hull.transomBeam > hull.beam / 2;
  const width = isFull ? hull.transomBeam : (hull.afterBeam ?? hull.transomBeam);
  const factor = (hull.length * width) / FOOT ** 2;
  if (!(factor > 0)) return { notComputed: 'the transom has no width' };
  const isFlat = hull.hardChine && hull.deadrise < FLAT;
  if (factor > 52.5 + 1e-9) return byFormula(hull, factor, isFlat);
  const nearest = Math.min(Math.round(factor + 1e-9), 52);
  const step = POWER_STEPS.findIndex(([greatest]) => nearest <= greatest) - (isFlat ? 1 : 0);
  const horsepower = POWER_STEPS[step]?.[1];
  if (horsepower === undefined) {
    return { notComputed: 'a flat bottom with hard chines has no step below 3 hp in the table' };
  }
  const rule = isFlat ? 'table 183.53, one step lower: flat bottom, hard chines' : 'table 183.53';
  return capacity(factor, horsepower, horsepower, rule);
}

/**
 * Why 33 CFR 183 asks nothing of a hull; undefined when it does.
 *
 * @source 33 CFR 183.31, 183.51, 183.201: monohull outboard boats shorter than 20 ft
 */
export function outsideLaw({ length, monohull }: RatedHull): string | undefined {
  if (!(length > 0)) return 'the hull has no length';
  if (length >= TWENTY_FEET - 1e-9) {
    return 'not required by 33 CFR 183: the boat is 20 ft or longer';
  }
  return monohull ? undefined : 'not required by 33 CFR 183: the boat is not a monohull';
}

function byFormula(hull: RatedHull, factor: number, isFlat: boolean): PowerCapacity {
  const isRemote = hull.steering === 'remote' && hull.transomHeight >= 20 * INCH - 1e-9;
  const [computed, rule] = isRemote
    ? ([2 * factor - 90, '2F - 90: remote steering, transom of 20 in or more'] as const)
    : isFlat
      ? ([0.5 * factor - 15, '0.5F - 15: flat bottom, hard chines'] as const)
      : ([0.8 * factor - 25, '0.8F - 25'] as const);
  return capacity(factor, computed, wholeUp(computed / 5) * 5, rule);
}

function capacity(
  factor: number,
  computed: number,
  horsepower: number,
  rule: string,
): PowerCapacity {
  return { factor, computed, horsepower, power: watts(horsepower * HORSEPOWER), rule };
}
