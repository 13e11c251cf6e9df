import { hullCurves } from './hull-curves.ts';
import { planView } from './hull-views.ts';
import { drawKeys, drawMarks } from './keys.ts';
import { type Measure, measured, measureOf } from './measure.ts';
import { outboardFromAbove } from './outboard.ts';
import { placeKeys } from './place-keys.ts';
import {
  BESIDE,
  type GridLayout,
  layOutGrid,
  placingGrid,
  reachAlong,
  RULERS,
  WIDTH,
} from './placing-grid.ts';
import { INK, sheet } from './svg.ts';
import type { Box, Drawing, DrawnItem, HullShape, OutboardShape } from './types.ts';

export interface PlacingInput {
  readonly hull: HullShape;
  /** Items to place; one with a coordinate that is no number is left out. */
  readonly items: readonly DrawnItem[];
  readonly outboard?: OutboardShape;
  readonly fontCss: string;
}

const MAX_HEIGHT = 200;
const note = ({ unit }: Measure): string =>
  `Along: ${unit} forward of the transom. Across: ${unit} from the {centreline}, P to port, S to starboard.`;

/**
 * The plan view for the workshop: a grid from the transom and the centreline with rulers, a cross at
 * each item's place, and its number beside the cross. Black on white.
 *
 * @returns a sheet 180 mm wide
 */
export function drawPlacing(input: PlacingInput): Drawing {
  const { hull, outboard, fontCss } = input;
  const measure = measureOf(hull);
  const items = input.items.filter(({ at }) => Number.isFinite(at.x) && Number.isFinite(at.y));
  const layout = layOut({ ...input, items });
  const { across, down: sideways, box } = layout;
  const anchors = items.map(({ number, at }) => ({
    number,
    x: across(at.x),
    y: sideways(at.y),
  }));
  const body = [
    planView(hullCurves(hull), across, sideways, INK.paper),
    outboard ? outboardFromAbove(outboard, across, sideways) : '',
    placingGrid(layout, measure, (at) => sideText(at, measure), note(measure)),
    drawMarks(anchors),
    drawKeys(placeKeys(anchors, box, BESIDE)),
  ];
  const height = box.bottom + RULERS.below;
  return sheet({ width: WIDTH, height, alt: altText(hull, items), fontCss, body });
}

function layOut({ hull, items, outboard }: PlacingInput): GridLayout {
  const breadths = hull.lines.flatMap(({ points }) => points.map(([breadth]) => breadth));
  const half = Math.max(...breadths, ...items.map(({ at }) => Math.abs(at.y)));
  const x = reachAlong(hull, items, outboard);
  const middle = ({ top, bottom }: Box): number => (top + bottom) / 2;
  return layOutGrid(x, [-half, half], items.length, MAX_HEIGHT, middle, 1);
}

/** "200 P", "0", "200 S". */
const sideText = (at: number, measure: Measure): string => {
  if (at === 0) return '0';
  return `${measured(at, measure)} ${at < 0 ? 'P' : 'S'}`;
};

function altText(hull: HullShape, items: readonly DrawnItem[]): string {
  const measure = measureOf(hull);
  const { unit } = measure;
  const each = items.map(({ number, name: item, at }) => {
    const aft = at.x < 0 ? 'behind' : 'forward of';
    const side = Math.abs(at.y) < 0.0005 ? 'on the {centreline}' : offCentre(at.y, measure);
    return `${number} ${item}, ${measured(at.x, measure)} ${unit} ${aft} the transom, ${side}`;
  });
  const listed = each.length > 0 ? ` ${each.join('; ')}.` : '';
  return `Plan view of the ${hull.name}, bow to the right, on a grid of ${measured(measure.placingStep, measure)} ${unit} from the transom and the {centreline}.${listed}`;
}

const offCentre = (y: number, measure: Measure): string =>
  `${measured(y, measure)} ${measure.unit} to ${y < 0 ? 'port' : 'starboard'}`;
