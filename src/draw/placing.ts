import { scaleLinear } from 'd3-scale';
import { hullCurves } from './hull-curves.ts';
import { planView, type Scale } from './hull-views.ts';
import { drawKeys, drawMarks } from './keys.ts';
import { outboardFromAbove, outboardReach } from './outboard.ts';
import { heightFor, KEY_RADIUS, placeKeys } from './place-keys.ts';
import { INK, sheet, stroke, words } from './svg.ts';
import type { Box, Drawing, DrawnItem, HullShape, OutboardShape } from './types.ts';

export interface PlacingInput {
  readonly hull: HullShape;
  /** Items to place; one with a coordinate that is no number is left out. */
  readonly items: readonly DrawnItem[];
  readonly outboard?: OutboardShape;
  readonly fontCss: string;
}

/** Width of the sheet, mm. */
const WIDTH = 180;
/** Room for the rulers' numbers at the left, right, top and below, mm. */
const RULERS = { left: 15, right: 2, top: 4.5, below: 9 };
const PAD = KEY_RADIUS + 1.5;
const MOST_HEIGHT = 200;
/** Step of the grid, m. */
const STEP = 0.5;
/** A key stands beside the cross at its item's place, never on it, mm. */
const BESIDE = KEY_RADIUS + 1.2;

/**
 * The plan view for the workshop: a grid from the transom and the centreline with rulers in millimetres, a cross at
 * each item's place, and its number beside the cross. Black on white.
 *
 * @returns a sheet 180 mm wide
 */
export function drawPlacing(input: PlacingInput): Drawing {
  const { hull, outboard, fontCss } = input;
  const items = input.items.filter(({ at }) => Number.isFinite(at.x) && Number.isFinite(at.y));
  const layout = layOut({ ...input, items });
  const { across, sideways, box } = layout;
  const anchors = items.map(({ number, at }) => ({
    number,
    x: across(at.x),
    y: sideways(at.y),
  }));
  const body = [
    planView(hullCurves(hull), across, sideways, INK.paper),
    outboard ? outboardFromAbove(outboard, across, sideways) : '',
    grid(layout),
    drawMarks(anchors),
    drawKeys(placeKeys(anchors, box, BESIDE)),
  ];
  const height = box.bottom + RULERS.below;
  return sheet({ width: WIDTH, height, alt: altText(hull, items), fontCss, body });
}

interface Layout {
  readonly across: Scale;
  readonly sideways: Scale;
  readonly box: Box;
  /** Metres that the grid covers. */
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

function layOut({ hull, items, outboard }: PlacingInput): Layout {
  const aft = outboard ? outboardReach(outboard).aft : 0;
  const xs = [0, hull.length, -aft, ...items.map(({ at }) => at.x)];
  const breadths = hull.lines.flatMap(({ points }) => points.map(([breadth]) => breadth));
  const ys = [...breadths, ...items.map(({ at }) => Math.abs(at.y))];
  const x = [Math.min(...xs), Math.max(...xs)] as const;
  const half = Math.max(...ys);
  const left = RULERS.left;
  const room = WIDTH - left - RULERS.right;
  const scale = Math.min((room - 2 * PAD) / (x[1] - x[0]), MOST_HEIGHT / (2 * half));
  const tall = Math.max(2 * half * scale + 2 * PAD, heightFor(items.length, room));
  const box = { left, right: WIDTH - RULERS.right, top: RULERS.top, bottom: RULERS.top + tall };
  const start = left + PAD;
  const middle = (box.top + box.bottom) / 2;
  return {
    across: scaleLinear()
      .domain([x[0], x[0] + 1])
      .range([start, start + scale]),
    sideways: scaleLinear()
      .domain([0, 1])
      .range([middle, middle + scale]),
    box,
    x: [x[0] - PAD / scale, x[0] + (box.right - start) / scale],
    y: [-tall / 2 / scale, tall / 2 / scale],
  };
}

function grid(layout: Layout): string {
  const { across, sideways, box, x, y } = layout;
  const along = stepsIn(x).map((at) => {
    const label = { 'text-anchor': 'middle' };
    const millimetres = `${at < 0 ? '−' : ''}${millimetresOf(at)}`;
    return [
      gridLine([across(at), box.top], [across(at), box.bottom], at === 0),
      words(millimetres, across(at), box.top - 1.2, label),
      words(millimetres, across(at), box.bottom + 3.2, label),
    ].join('');
  });
  const sides = stepsIn(y).map((at) => {
    const label = { 'text-anchor': 'end' };
    return [
      gridLine([box.left, sideways(at)], [box.right, sideways(at)], at === 0),
      words(sideText(at), box.left - 1, sideways(at) + 0.9, label),
    ].join('');
  });
  const note =
    'Along: mm forward of the transom. Across: mm from the centreline, P to port, S to starboard.';
  const below = words(note, box.left, box.bottom + 7.4, { fill: INK.quiet });
  return [...along, ...sides, below].join('\n');
}

const sideText = (at: number): string => {
  if (at === 0) return '0';
  return `${Math.round(Math.abs(at) * 1000)} ${at < 0 ? 'P' : 'S'}`;
};

const gridLine = (
  from: readonly [number, number],
  to: readonly [number, number],
  datum: boolean,
): string =>
  stroke(from, to, {
    stroke: datum ? INK.line : INK.quiet,
    'stroke-width': datum ? 0.25 : 0.12,
    ...(datum ? {} : { 'stroke-dasharray': '0.6 0.9' }),
  });

/** Whole steps of the grid from one end of a ruler to the other. */
function stepsIn([from, to]: readonly [number, number]): readonly number[] {
  const first = Math.ceil(from / STEP);
  const count = Math.max(Math.floor(to / STEP) - first + 1, 0);
  // Adding 0 makes a -0 into 0.
  return Array.from({ length: count }, (_, index) => (first + index) * STEP + 0);
}

function altText({ name }: HullShape, items: readonly DrawnItem[]): string {
  const each = items.map(({ number, name: item, at }) => {
    const aft = at.x < 0 ? 'behind' : 'forward of';
    const side = Math.abs(at.y) < 0.0005 ? 'on the centreline' : offCentre(at.y);
    return `${number} ${item}, ${millimetresOf(at.x)} mm ${aft} the transom, ${side}`;
  });
  const listed = each.length > 0 ? ` ${each.join('; ')}.` : '';
  return `Plan view of the ${name}, bow to the right, on a grid of 500 mm from the transom and the centreline.${listed}`;
}

const millimetresOf = (metres: number): number => Math.round(Math.abs(metres) * 1000);

const offCentre = (y: number): string =>
  `${millimetresOf(y)} mm to ${y < 0 ? 'port' : 'starboard'}`;
