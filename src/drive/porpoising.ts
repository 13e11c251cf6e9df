import { type Radians, radians } from '../units/index.ts';
import { interpolate } from './interpolate.ts';
import { LOADINGS, PORPOISING_TRIMS } from './porpoising-table.ts';
import type { Computed } from './types.ts';

/**
 * The trim above which a planing hull begins to porpoise.
 *
 * @param lift - CL of the hull on the square of its beam
 * @param deadrise - β
 * @returns the trim; `notComputed` outside the chart, as a very lightly loaded hull is
 * @validity 0.13 <= √(CL/2) <= 0.35, 0° <= β <= 20°; a prismatic hull; the limit is read off a chart to some 0.3°
 * @source Savitsky 1964, figure 18 (porpoising limits for prismatic planing hulls), points as read off by others to
 * 0.1°, straight lines between them; the figure itself was not at hand
 */
export function porpoisingTrim(lift: number, deadrise: Radians): Computed<Radians> {
  const loading = Math.sqrt(lift / 2);
  const columns = PORPOISING_TRIMS.map(([degrees, trims]) => {
    const points = LOADINGS.map((one, index) => [one, trims[index] ?? Number.NaN] as const);
    return [degrees, interpolate(points, loading)] as const;
  });
  const limits = columns.flatMap(([degrees, trim]) =>
    trim === undefined ? [] : [[degrees, trim] as const],
  );
  if (limits.length === 0) {
    return {
      notComputed: 'the square root of CL/2 is outside 0.13 to 0.35, the range of the chart',
    };
  }
  const limit = interpolate(limits, (deadrise * 180) / Math.PI);
  if (limit === undefined) {
    return { notComputed: 'the deadrise is outside 0° to 20°, the range of the chart' };
  }
  return radians((limit * Math.PI) / 180);
}
