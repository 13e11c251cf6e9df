import { areaUnder, interpolate, sum } from '../maths/index.ts';
import { type Metres, type SquareMetres, squareMetres, type Station } from '../units/index.ts';

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
  const sheers = lines.map(
    ({ x, points }) => [x, Math.max(0, (points.at(-1)?.[1] ?? draught) - draught)] as const,
  );
  const height = Math.max(0, ...sheers.map(([, above]) => above));
  const strip = height / STRIPS;
  const strips = Array.from({ length: STRIPS }, (_, index) => {
    const level = draught + (index + 0.5) * strip;
    return 2 * strip * Math.max(0, ...lines.map((station) => halfBreadthAt(station, level)));
  });
  return { front: squareMetres(sum(strips)), side: squareMetres(areaUnder(sheers)) };
}

function halfBreadthAt({ points }: Station, level: number): number {
  return (
    interpolate(
      points.map(([half, height]) => [height, half] as const),
      level,
    ) ?? 0
  );
}
