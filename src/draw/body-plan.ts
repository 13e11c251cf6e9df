import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { wholeUp } from '../maths/index.ts';
import { type CrossWater, crossWaters } from './cross-waters.ts';
import { inOrder } from './hull-curves.ts';
import { LEGEND_STEP, letterOf, lineLegend } from './legend.ts';
import type { Scale } from './hull-views.ts';
import { type Measure, measured, measureOf } from './measure.ts';
import { spread } from './spread.ts';
import { element, INK, sheet, SMALL_TEXT, stroke, words } from './svg.ts';
import type { Box, Drawing, HullShape, Station } from './types.ts';

export interface BodyPlanInput {
  readonly hull: HullShape;
  /** Surfaces of the water as they lie amidships, up to three; starboard is on the right. */
  readonly waters?: readonly CrossWater[];
  readonly fontCss: string;
}

/** Width of the sheet, mm. */
const WIDTH = 180;
/** Room for the stations' labels at either side, and for the grid's numbers below, mm. */
const SIDES = 26;
const TOP = 7;
const BELOW = 9;
const MAX_HEIGHT = 110;
/** Least distance between the baselines of two labels, mm. */
const LABEL_STEP = SMALL_TEXT + 0.5;

/**
 * The sections of a hull at its stations: from amidships forward on the right, aft of it on the left, on a grid of
 * 100 mm or 4 in from baseline and centreline. Sections are straight between their points, so that chines stay sharp.
 *
 * @returns a sheet 180 mm wide
 */
export function drawBodyPlan({ hull, waters = [], fontCss }: BodyPlanInput): Drawing {
  const stations = inOrder(hull.lines);
  const bow = stations.filter(({ x }) => x >= hull.length / 2);
  const stern = stations.filter(({ x }) => x < hull.length / 2);
  const measure = measureOf(hull);
  const plan = layOut(stations, measure);
  const names = waters.map(({ name }) => name);
  const body = [
    grid(plan),
    ...stern.map((station) => section(station, -1, plan)),
    ...bow.map((station) => section(station, 1, plan)),
    crossWaters(waters, plan),
    labels(stern, -1, plan),
    labels(bow, 1, plan),
    words('Aft of amidships', plan.box.left, 3.2, { fill: INK.quiet }),
    words('Forward of amidships', plan.box.right, 3.2, { fill: INK.quiet, 'text-anchor': 'end' }),
    words(
      `grid of ${measured(measure.sectionStep, measure)} ${measure.unit} from baseline and {centreline}; stations in ${measure.unit} forward of the transom`,
      plan.box.left,
      plan.box.bottom + 7.4,
      { fill: INK.quiet },
    ),
    lineLegend(names, plan.box.left, plan.box.bottom + BELOW),
  ];
  const alt =
    `Body plan of the ${hull.name}: its sections at ${stations.length} stations, ` +
    `${stern.length} aft of amidships on the left and ${bow.length} forward of it on the right.${surfaceWords(names)}`;
  const height = plan.box.bottom + BELOW + names.length * LEGEND_STEP + (names.length > 0 ? 1 : 0);
  return sheet({ width: WIDTH, height, alt, fontCss, body });
}

function surfaceWords(names: readonly string[]): string {
  if (names.length === 0) return '';
  const told = names.map((name, index) => `${letterOf(index)}, ${name}`).join('; ');
  return ` The surface of the water amidships: ${told}.`;
}

interface Plan {
  readonly across: Scale;
  readonly up: Scale;
  readonly box: Box;
  readonly half: number;
  readonly heights: readonly [number, number];
  readonly measure: Measure;
}

function layOut(stations: readonly Station[], measure: Measure): Plan {
  const step = measure.sectionStep;
  const points = stations.flatMap((station) => station.points);
  const onGrid = (value: number): number => wholeUp(value / step) * step;
  const half = onGrid(Math.max(step, ...points.map(([breadth]) => breadth)));
  const top = onGrid(Math.max(step, ...points.map(([, height]) => height)));
  const foot = -onGrid(Math.max(0, ...points.map(([, height]) => -height)));
  const room = WIDTH - 2 * SIDES;
  const most = Math.max(stations.length * LABEL_STEP, 20);
  const scale = Math.min(room / (2 * half), MAX_HEIGHT / (top - foot));
  const tall = Math.max(scale * (top - foot), most);
  const box = {
    left: WIDTH / 2 - scale * half,
    right: WIDTH / 2 + scale * half,
    top: TOP,
    bottom: TOP + tall,
  };
  return {
    across: scaleLinear()
      .domain([0, 1])
      .range([WIDTH / 2, WIDTH / 2 + scale]),
    up: scaleLinear()
      .domain([foot, foot + 1])
      .range([box.bottom, box.bottom - scale]),
    box,
    half,
    heights: [foot, top],
    measure,
  };
}

function section({ points }: Station, side: 1 | -1, { across, up }: Plan): string {
  const draw = line<readonly [number, number]>()
    .x(([breadth]) => across(side * breadth))
    .y(([, height]) => up(height))
    .digits(2);
  return element('path', {
    d: draw(points) ?? '',
    fill: 'none',
    stroke: INK.line,
    'stroke-width': 0.3,
    'stroke-linejoin': 'round',
  });
}

function grid({ across, up, box, half, heights: [foot, top], measure }: Plan): string {
  const step = measure.sectionStep;
  const steps = (from: number, to: number): readonly number[] =>
    Array.from(
      { length: Math.round((to - from) / step) + 1 },
      (_, index) => Math.round(from / step + index) * step,
    );
  const fine = { stroke: INK.rule, 'stroke-width': 0.12 };
  const heavy = { stroke: INK.line, 'stroke-width': 0.3 };
  const level = (height: number): string =>
    stroke([box.left, up(height)], [box.right, up(height)], height === 0 ? heavy : fine);
  const upright = (breadth: number): string =>
    stroke(
      [across(breadth), up(top)],
      [across(breadth), up(foot)],
      breadth === 0 ? { ...heavy, 'stroke-dasharray': '5 1 1 1' } : fine,
    );
  const numbers = steps(-half, half).filter(
    (_, index, all) => ((all.length - 1) / 2) % 2 === index % 2,
  );
  return [
    ...steps(foot, top).map(level),
    ...steps(-half, half).map(upright),
    ...steps(foot, top)
      .filter((height) => height !== 0 && Math.round(height / step) % 2 === 0)
      .map((height) =>
        words(signed(height, measure), across(0) - 0.8, up(height) - 0.6, {
          'text-anchor': 'end',
          fill: INK.quiet,
        }),
      ),
    ...numbers.map((breadth) =>
      words(measured(breadth, measure), across(breadth), up(foot) + 3.2, {
        'text-anchor': 'middle',
        fill: INK.quiet,
      }),
    ),
  ].join('\n');
}

/** Each station's distance from the transom, led to the top of its section. */
function labels(stations: readonly Station[], side: 1 | -1, plan: Plan): string {
  const { across, up, box, measure } = plan;
  const ends = stations.map(({ x, points }) => {
    const [breadth = 0, height = 0] = points.at(-1) ?? [];
    return { text: signed(x, measure), x: across(side * breadth), y: up(height) };
  });
  const heights = spread(
    ends.map(({ y }) => y),
    LABEL_STEP,
    box.top,
    box.bottom,
  );
  const edge = side === 1 ? box.right : box.left;
  return ends
    .map(({ text, x, y }, index) => {
      const at = heights[index] ?? y;
      const knee = edge + side * 8;
      const points = [
        [x, y],
        [edge + side * 1.5, y],
        [knee, at],
        [knee + side * 1.5, at],
      ];
      const leader = element('polyline', {
        points: points.map((pair) => pair.map((value) => value.toFixed(2)).join(',')).join(' '),
        fill: 'none',
        stroke: INK.quiet,
        'stroke-width': 0.12,
      });
      const anchor = { 'text-anchor': side === 1 ? 'start' : 'end' };
      return leader + words(text, knee + side * 2.2, at + 0.9, anchor);
    })
    .join('\n');
}

const signed = (metres: number, measure: Measure): string =>
  `${metres < 0 ? '-' : ''}${measured(metres, measure)}`;
