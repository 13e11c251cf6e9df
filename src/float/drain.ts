import { interpolate, lerp, type Points } from '../maths/index.ts';
import {
  cubicMetres,
  type CubicMetres,
  GRAVITY,
  type Metres,
  seconds,
  type Seconds,
  type SquareMetres,
} from '../units/index.ts';
import { AIR_OVER_WATER } from './constants.ts';

/** Area of a tank's surface at heights above the baseline, straight between them, from low to high. */
export type SurfaceAreas = Points;

interface FlowPath {
  readonly outlet: SquareMetres;
  /** Share of the outlet's area that the jet fills. Common practice: 0.6 a sharp edge, 0.8 a short pipe. */
  readonly discharge: number;
  /** Where air enters; left out when the tank is open above. */
  readonly vent?: { readonly area: SquareMetres; readonly discharge: number };
}

export interface DrainInput extends FlowPath {
  readonly areas: SurfaceAreas;
  readonly from: Metres;
  readonly to: Metres;
  /** Height of the outlet's middle; the water outside is below it. */
  readonly outletHeight: Metres;
}

export interface FillInput extends FlowPath {
  readonly areas: SurfaceAreas;
  readonly from: Metres;
  readonly to: Metres;
  /** Height of the sea outside as it begins and as it ends: the boat sinks as it fills. */
  readonly outside: readonly [begins: Metres, ends: Metres];
}

export type FlowTime =
  | {
      readonly outcome: 'flows';
      readonly time: Seconds;
      /** Volume moved, and what moves in the first second at the first rate. */
      readonly volume: CubicMetres;
      readonly firstRate: number;
      /** Rate over that of a tank open above: 1 when the vent does not limit it. */
      readonly ventShare: number;
    }
  | { readonly outcome: 'does not flow'; readonly why: 'no head' | 'no way out' | 'no air' };

/**
 * Time in which a tank drains through an outlet into the air.
 *
 * Q = Cd a sqrt(2 g h) with the head h above the outlet; what draws the air in through the vent is taken off
 * the head: 1 / A2 = 1 / (Cd a)2 + (rho air / rho water) / (Cv av)2 gives the area A that acts.
 *
 * @validity steady flow, an outlet that is small against the surface; a wide outlet at the end of a short
 * tank drains more slowly than this at the end. Estimated by orifice flow; verify by timing it afloat
 * @source Torricelli's law, derived from Bernoulli's equation; integrated exactly over straight pieces of the
 * area
 */
export function drainTime(input: DrainInput): FlowTime {
  const head = (height: number): number => height - input.outletHeight;
  if (!(input.from > input.to && head(input.to) >= 0))
    return { outcome: 'does not flow', why: 'no head' };
  return flow(input, input.areas, head, [input.to, input.from], input.from);
}

/**
 * Time in which a tank fills from the sea through a submerged outlet.
 *
 * @validity as `drainTime`; the head is the difference of the levels, and the sea outside rises evenly
 * @source Torricelli's law, derived from Bernoulli's equation
 */
export function fillTime(input: FillInput): FlowTime {
  const [begins, ends] = input.outside;
  const head = (height: number): number =>
    lerp(begins, ends, (height - input.from) / (input.to - input.from)) - height;
  if (!(input.to > input.from && head(input.from) > 0 && head(input.to) >= 0))
    return { outcome: 'does not flow', why: 'no head' };
  return flow(input, input.areas, head, [input.from, input.to], input.from);
}

function flow(
  { outlet, discharge, vent }: FlowPath,
  areas: SurfaceAreas,
  head: (height: number) => number,
  [low, high]: readonly [number, number],
  start: number,
): FlowTime {
  const open = discharge * outlet;
  const air = vent ? vent.discharge * vent.area : Number.POSITIVE_INFINITY;
  if (!(open > 0)) return { outcome: 'does not flow', why: 'no way out' };
  if (!(air > 0)) return { outcome: 'does not flow', why: 'no air' };
  const acting = 1 / Math.sqrt(1 / open ** 2 + AIR_OVER_WATER / air ** 2);
  const inner = areas.map(([height]) => height).filter((height) => height > low && height < high);
  const heights = [low, ...inner, high];
  const areaAt = (height: number): number => interpolate(areas, height, 'held');
  let [time, volume] = [0, 0];
  heights.slice(1).forEach((top, index) => {
    const bottom = heights[index] ?? top;
    const [lower, upper] = [Math.sqrt(head(bottom)), Math.sqrt(head(top))];
    const middle = (lower + upper) / 2;
    const atMiddle = lerp(bottom, top, (middle + lower) / (2 * (upper + lower)));
    const mean = (areaAt(bottom) + 4 * areaAt(atMiddle) + areaAt(top)) / 6;
    time += (2 * mean * (top - bottom)) / ((upper + lower) * acting * Math.sqrt(2 * GRAVITY));
    volume += ((areaAt(bottom) + areaAt(top)) / 2) * (top - bottom);
  });
  return {
    outcome: 'flows',
    time: seconds(time),
    volume: cubicMetres(volume),
    firstRate: acting * Math.sqrt(2 * GRAVITY * head(start)),
    ventShare: acting / open,
  };
}
