import {
  DEGREE,
  KNOT,
  type MetresPerSecond,
  metresPerSecond,
  type Watts,
  watts,
} from '../units/index.ts';
import type { Computed, RatedHull } from './types.ts';

export interface IsoPower {
  /** Length x transom beam, m². */
  readonly factor: number;
  readonly power: Watts;
  readonly rule: string;
  /** Above this speed the standard wants the avoidance test, whatever the power. */
  readonly testAbove: MetresPerSecond;
}

/** Deadrise below which the standard takes a bottom for flat. */
const FLAT = 5 * DEGREE;

/**
 * Starting value for the greatest power of an outboard boat in the manner of ISO 11592-1, annex C.
 *
 * FD = LH x BT. FD to 5.1: 6 FD - 18.1 kW below 5° of deadrise, else 5.4762 FD - 12.929. Above: 16 FD - 67 with a
 * wheel; with a tiller 4.2 FD - 11 below 5° of deadrise, else 6.4 FD - 19.
 *
 * @returns `notComputed` from 8 m on, and where the formula gives no power
 * @validity LH below 8 m; informative: the rating is set by the manoeuvring test of annex A
 * @source ISO 11592-1:2016 annex C, second hand (a transcription of the standard); test above 7 √LH knots
 */
export function isoPower(hull: RatedHull): Computed<IsoPower> {
  if (!(hull.length > 0 && hull.length < 8)) {
    return { notComputed: 'ISO 11592-1 is for hulls shorter than 8 m' };
  }
  const factor = hull.length * hull.transomBeam;
  const [kilowatts, rule] = formulaFor(hull, factor);
  if (!(kilowatts > 0))
    return { notComputed: `the formula ${rule} gives no power for so small a hull` };
  const testAbove = metresPerSecond(7 * Math.sqrt(hull.length) * KNOT);
  return { factor, power: watts(kilowatts * 1000), rule, testAbove };
}

function formulaFor({ deadrise, steering }: RatedHull, factor: number): readonly [number, string] {
  const isFlat = deadrise < FLAT;
  if (factor <= 5.1) {
    return isFlat
      ? [6 * factor - 18.1, '6 FD - 18.1']
      : [5.4762 * factor - 12.929, '5.4762 FD - 12.929'];
  }
  if (steering === 'remote') return [16 * factor - 67, '16 FD - 67'];
  return isFlat ? [4.2 * factor - 11, '4.2 FD - 11'] : [6.4 * factor - 19, '6.4 FD - 19'];
}
