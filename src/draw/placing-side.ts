import { hullCurves } from './hull-curves.ts';
import { sideView } from './hull-views.ts';
import { drawKeys, drawMarks } from './keys.ts';
import { type Measure, measured, measureOf } from './measure.ts';
import { outboardFromSide, outboardReach } from './outboard.ts';
import { placeKeys } from './place-keys.ts';
import {
  BESIDE,
  fromDatum,
  type GridLayout,
  layOutGrid,
  PAD,
  placingGrid,
  reachAlong,
  RULERS,
  WIDTH,
} from './placing-grid.ts';
import type { PlacingInput } from './placing.ts';
import { INK, sheet } from './svg.ts';
import type { Box, Drawing, OutboardShape } from './types.ts';

const MAX_HEIGHT = 120;
const note = ({ unit }: Measure): string =>
  `Along: ${unit} forward of the transom. Up: ${unit} from the baseline.`;

/**
 * The boat from the starboard side for the workshop: a grid from the transom and the baseline with rulers in
 * millimetres, a cross at each item's place, and its number beside the cross. Black on white.
 *
 * @returns a sheet 180 mm wide
 */
export function drawPlacingSide(input: PlacingInput): Drawing {
  const { hull, outboard, fontCss } = input;
  const measure = measureOf(hull);
  const { unit } = measure;
  const items = input.items.filter(({ at }) => Number.isFinite(at.x) && Number.isFinite(at.z));
  const layout = layOut({ ...input, items });
  const { across, down, box } = layout;
  const anchors = items.map(({ number, at }) => ({ number, x: across(at.x), y: down(at.z) }));
  const body = [
    sideView(hullCurves(hull), across, down, INK.paper),
    outboard ? outboardFromSide(outboard, across, down) : '',
    placingGrid(layout, measure, (at) => fromDatum(at, measure), note(measure)),
    drawMarks(anchors),
    drawKeys(placeKeys(anchors, box, BESIDE)),
  ];
  const each = items.map(({ number, name, at }) => {
    const way = at.z < 0 ? 'below' : 'above';
    return `${number} ${name}, ${measured(at.z, measure)} ${unit} ${way} the baseline`;
  });
  const listed = each.length > 0 ? ` ${each.join('; ')}.` : '';
  const alt = `The ${hull.name} from the starboard side, bow to the right, on a grid of ${measured(measure.placingStep, measure)} ${unit} from the transom and the baseline.${listed}`;
  return sheet({ width: WIDTH, height: box.bottom + RULERS.below, alt, fontCss, body });
}

function layOut({ hull, items, outboard }: PlacingInput): GridLayout {
  const heights = hull.lines.flatMap(({ points }) => points.map(([, height]) => height));
  const zs = [0, ...heights, ...outboardHeights(outboard), ...items.map(({ at }) => at.z)];
  const x = reachAlong(hull, items, outboard);
  const [least, most] = [Math.min(...zs), Math.max(...zs)];
  const baseline = ({ bottom }: Box, scale: number): number => bottom - PAD + least * scale;
  return layOutGrid(x, [least, most], items.length, MAX_HEIGHT, baseline, -1);
}

function outboardHeights(outboard: OutboardShape | undefined): readonly number[] {
  if (!outboard) return [];
  const { above, below } = outboardReach(outboard);
  return [outboard.clampHeight + above, outboard.clampHeight - below];
}
