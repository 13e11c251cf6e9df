import { scaleLinear } from 'd3-scale';
import { hullCurves } from './hull-curves.ts';
import { planView, type Scale, sideView } from './hull-views.ts';
import { drawKeys } from './keys.ts';
import { outboardFromAbove, outboardFromSide, outboardReach } from './outboard.ts';
import { heightFor, KEY_RADIUS, placeKeys } from './place-keys.ts';
import { hullRuler, RULER_HEIGHT } from './ruler.ts';
import { INK, sheet, stroke, words } from './svg.ts';
import type { Box, Drawing, DrawnItem, HullShape, OutboardShape, Place } from './types.ts';

export interface ArrangementInput {
  readonly hull: HullShape;
  /** Items to number; one with a coordinate that is no number is left out. */
  readonly items: readonly DrawnItem[];
  readonly outboard?: OutboardShape;
  /** Height of the water, m above the baseline; left out: no waterline is drawn. */
  readonly waterline?: number;
  /** The hull's length in the reader's own unit, for the words. */
  readonly lengthText: string;
  readonly fontCss: string;
}

/** Width of the sheet, mm. */
const WIDTH = 180;
const MARGIN = 2;
/** Room for the words above a view. */
const TITLE = 5;
/** Room about the boat within a view, so that keys at its edge stay inside. */
const PAD = KEY_RADIUS + 1.5;
/** Both views together are never higher than this, mm. */
const MAX_HEIGHT = 190;

/**
 * The boat from the starboard side and, on the same scale below it, from above; bow to the right, with a numbered
 * key at each item in both views.
 *
 * @returns a sheet 180 mm wide
 */
export function drawArrangement(input: ArrangementInput): Drawing {
  const { hull, outboard, fontCss, waterline } = input;
  const items = input.items.filter(({ at }) => [at.x, at.y, at.z].every(Number.isFinite));
  const curves = hullCurves(hull);
  const layout = layOut({ ...input, items });
  const { across, up, sideways, side, plan } = layout;
  const keysIn = (box: Box, down: (at: Place) => number): string =>
    drawKeys(
      placeKeys(
        items.map(({ number, at }) => ({ number, x: across(at.x), y: down(at) })),
        box,
      ),
    );
  const body = [
    title('From the starboard side', side),
    waterline === undefined ? '' : water(waterline, layout),
    sideView(curves, across, up),
    outboard ? outboardFromSide(outboard, across, up) : '',
    keysIn(side, ({ z }) => up(z)),
    title('From above', plan),
    planView(curves, across, sideways),
    outboard ? outboardFromAbove(outboard, across, sideways) : '',
    keysIn(plan, ({ y }) => sideways(y)),
    hullRuler(hull, across, plan.bottom + 1),
  ];
  const height = plan.bottom + 1 + RULER_HEIGHT;
  return sheet({ width: WIDTH, height, alt: altText({ ...input, items }), fontCss, body });
}

/**
 * The boat from its starboard side alone, bow to the right.
 *
 * @returns a sheet 180 mm wide
 */
export function drawProfile(input: Omit<ArrangementInput, 'items' | 'waterline'>): Drawing {
  const { hull, outboard, fontCss, lengthText } = input;
  const { across, up, side } = layOut({ ...input, items: [] });
  const body = [
    sideView(hullCurves(hull), across, up),
    outboard ? outboardFromSide(outboard, across, up) : '',
  ];
  const engine = outboard ? ' with its outboard' : '';
  const alt = `The ${hull.name}, ${lengthText} long,${engine} from the starboard side.`;
  return sheet({ width: WIDTH, height: side.bottom, alt, fontCss, body });
}

interface Layout {
  readonly across: Scale;
  readonly up: Scale;
  readonly sideways: Scale;
  readonly side: Box;
  readonly plan: Box;
}

interface Extent {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly z: readonly [number, number];
}

/** Both views on one scale: the largest at which the boat, its outboard and all items fit. */
function layOut(input: ArrangementInput): Layout {
  const { x, y, z } = extentOf(input);
  const room = WIDTH - 2 * MARGIN - 2 * PAD;
  const scale = Math.min(room / (x[1] - x[0]), MAX_HEIGHT / (z[1] - z[0] + y[1] - y[0]));
  const left = (WIDTH - scale * (x[1] - x[0])) / 2;
  const least = heightFor(input.items.length, WIDTH - 2 * MARGIN);
  const side = boxFrom(TITLE, Math.max(scale * (z[1] - z[0]) + 2 * PAD, least));
  const plan = boxFrom(side.bottom + TITLE, Math.max(scale * (y[1] - y[0]) + 2 * PAD, least));
  const middle = (box: Box): number => (box.top + box.bottom) / 2;
  const about = (centre: number, at: number, sign: 1 | -1): Scale =>
    scaleLinear()
      .domain([centre, centre + 1])
      .range([at, at + sign * scale]);
  return {
    across: scaleLinear()
      .domain(x)
      .range([left, left + scale * (x[1] - x[0])]),
    up: about((z[0] + z[1]) / 2, middle(side), -1),
    sideways: about((y[0] + y[1]) / 2, middle(plan), 1),
    side,
    plan,
  };
}

const boxFrom = (top: number, height: number): Box => ({
  left: MARGIN,
  right: WIDTH - MARGIN,
  top,
  bottom: top + height,
});

/** What has to be on the sheet, m. */
function extentOf({ hull, items, outboard, waterline }: ArrangementInput): Extent {
  const points = hull.lines.flatMap((station) => station.points);
  const breadths = points.map(([halfBreadth]) => halfBreadth);
  const { keel, sheer } = hullCurves(hull);
  const reach = outboard && outboardReach(outboard);
  const clamp = outboard?.clampHeight ?? 0;
  const range = (values: readonly number[]): readonly [number, number] => [
    Math.min(...values),
    Math.max(...values),
  ];
  return {
    x: range([0, hull.length, -(reach?.aft ?? 0), ...items.map(({ at }) => at.x)]),
    y: range([...breadths, ...breadths.map((breadth) => -breadth), ...items.map(({ at }) => at.y)]),
    z: range([
      ...[...keel, ...sheer].map(({ height }) => height),
      ...(reach ? [clamp + reach.above, clamp - reach.below] : []),
      ...(waterline === undefined ? [] : [waterline]),
      ...items.map(({ at }) => at.z),
    ]),
  };
}

const title = (text: string, { left, top }: Box): string =>
  words(text, left, top - 1.2, { fill: INK.quiet });

function water(height: number, { up, side }: Layout): string {
  const at = up(height);
  return stroke([side.left, at], [side.right, at], {
    stroke: INK.quiet,
    'stroke-dasharray': '3 1.2',
  });
}

function altText({ hull, lengthText, items, outboard, waterline }: ArrangementInput): string {
  const drive = outboard ? ', with its outboard' : '';
  const afloat = waterline === undefined ? '' : ', with its waterline';
  const listed = items.map(({ number, name }) => `${number} ${name}`).join('; ');
  const keys = listed === '' ? '' : ` Numbered in both: ${listed}.`;
  return (
    `Side view and plan view of the ${hull.name}, ${lengthText} long, bow to the right` +
    `${drive}${afloat}.${keys}`
  );
}
