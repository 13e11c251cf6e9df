import { scaleLinear } from 'd3-scale';
import { hullCurves } from './hull-curves.ts';
import { sideView } from './hull-views.ts';
import { dashOf, LEGEND_STEP, letterOf, lineLegend } from './legend.ts';
import { outboardFromSide, outboardReach } from './outboard.ts';
import { hullRuler, RULER_HEIGHT } from './ruler.ts';
import { INK, sheet, SMALL_TEXT, stroke, words } from './svg.ts';
import { spread } from './spread.ts';
import type { Drawing, HullShape, OutboardShape } from './types.ts';

/** The surface of the water in one condition. */
export interface DrawnWater {
  /** The condition and what it comes to, as printed. */
  readonly name: string;
  /** Height of the surface above the baseline on the centreline, at the transom and at the hull's length, m. */
  readonly aft: number;
  readonly fore: number;
}

export interface WaterlinesInput {
  readonly hull: HullShape;
  readonly outboard?: OutboardShape;
  /** Up to three. */
  readonly waters: readonly DrawnWater[];
  readonly fontCss: string;
}

const WIDTH = 180;
/** Room at either side for the letters of the lines, mm. */
const SIDES = 9;
const TOP = 4;
/** How far the lines run beyond the boat, m. */
const BEYOND = 0.15;

/**
 * The boat from the starboard side, keel level, with the surface of the water in up to three conditions.
 *
 * @returns a sheet 180 mm wide
 */
export function drawWaterlines({ hull, outboard, waters, fontCss }: WaterlinesInput): Drawing {
  const shown = waters.slice(0, 3).filter(({ aft, fore }) => Number.isFinite(aft + fore));
  const layout = layOut(hull, outboard);
  const { across, up, bottom } = layout;
  const curves = hullCurves(hull);
  const legendTop = bottom + 1 + RULER_HEIGHT;
  const body = [
    sideView(curves, across, up),
    outboard ? outboardFromSide(outboard, across, up) : '',
    surfaces(shown, hull.length, layout),
    hullRuler(hull, across, bottom + 1),
    lineLegend(
      shown.map(({ name }) => name),
      SIDES,
      legendTop,
    ),
  ];
  const alt =
    `The ${hull.name} from the starboard side with the surface of the water: ` +
    `${shown.map(({ name }, index) => `${letterOf(index)}, ${name}`).join('; ')}.`;
  const height = legendTop + shown.length * LEGEND_STEP + 2;
  return sheet({ width: WIDTH, height, alt, fontCss, body });
}

function layOut(hull: HullShape, outboard: OutboardShape | undefined) {
  const heights = hull.lines.flatMap(({ points }) => points.map(([, height]) => height));
  const reach = outboard ? outboardReach(outboard) : { aft: 0, above: 0, below: 0 };
  const clamp = outboard?.clampHeight ?? 0;
  const low = Math.min(0, ...heights, clamp - reach.below);
  const high = Math.max(0.1, ...heights, clamp + reach.above);
  const aft = -Math.max(reach.aft, BEYOND);
  const fore = hull.length + BEYOND;
  const scale = (WIDTH - 2 * SIDES) / (fore - aft);
  const bottom = TOP + scale * (high - low);
  return {
    across: scaleLinear()
      .domain([aft, fore])
      .range([SIDES, WIDTH - SIDES]),
    up: scaleLinear().domain([low, high]).range([bottom, TOP]),
    aft,
    bottom,
  };
}

/** Each surface with its letter at the bow end, led to where there is room for it. */
function surfaces(
  waters: readonly DrawnWater[],
  length: number,
  { across, up, aft, bottom }: ReturnType<typeof layOut>,
): string {
  const right = across(length + BEYOND);
  const ends = waters.map((water) => {
    const at = (x: number): number => up(water.aft + ((water.fore - water.aft) / length) * x);
    return { from: at(aft), to: at(length + BEYOND) };
  });
  const labels = spread(
    ends.map(({ to }) => to),
    SMALL_TEXT + 0.4,
    TOP,
    bottom,
  );
  return ends
    .map(({ from, to }, index) => {
      const y = labels[index] ?? to;
      const line = stroke([across(aft), from], [right, to], dashOf(index));
      const leader = stroke([right + 0.6, to], [right + 3, y], { stroke: INK.quiet });
      return line + leader + words(letterOf(index), right + 3.8, y + 0.9);
    })
    .join('\n');
}
