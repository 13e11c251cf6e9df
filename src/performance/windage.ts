import { type Metres, type SquareMetres, squareMetres } from '../units/index.ts';
import type { Station } from './bottom.ts';
import { interpolate } from './interpolate.ts';

/** Strips that the view from ahead is summed over: a thousandth of the area at the worst. */
const STRIPS = 200;

/**
 * Area of the hull above the water as the wind sees it, from its lines.
 *
 * Side: the height of the sheer above the water along the hull, in trapezes. Front: at each height the greatest breadth
 * of any station.
 *
 * @param lines - stations from the transom forward; the keel first, the sheer last, heights rising
 * @param draught - height of the water above the baseline
 * @returns m²; 0 where nothing stands out of the water. People, canopies and the outboard are the caller's to add
 * @validity upright, without trim
 * @source derived
 */
export function windageFrom(
  lines: readonly Station[],
  draught: Metres,
): { readonly front: SquareMetres; readonly side: SquareMetres } {
  const sheers = lines.map(({ x, points }) => ({
    x,
    above: Math.max(0, (points.at(-1)?.[1] ?? draught) - draught),
  }));
  const side = sheers.reduce((sum, { x, above }, index) => {
    const before = sheers[index - 1];
    return before ? sum + ((x - before.x) * (above + before.above)) / 2 : sum;
  }, 0);
  const height = Math.max(0, ...sheers.map(({ above }) => above));
  const strip = height / STRIPS;
  const front = Array.from({ length: STRIPS }, (_, index) => {
    const level = draught + (index + 0.5) * strip;
    return 2 * strip * Math.max(0, ...lines.map((station) => halfBreadthAt(station, level)));
  }).reduce((sum, area) => sum + area, 0);
  return { front: squareMetres(front), side: squareMetres(side) };
}

function halfBreadthAt({ points }: Station, level: number): number {
  return (
    interpolate(
      points.map(([half, height]) => [height, half] as const),
      level,
    ) ?? 0
  );
}
