import { scaleLinear } from 'd3-scale';
import { BAR_FILLS, type BarKind, legend, LEGEND_HEIGHT, PATTERNS } from './plan-keys.ts';
import { element, INK, sheet, SMALL_TEXT, stroke, words } from './svg.ts';
import type { Drawing } from './types.ts';
import { widthOf, wrapText } from './wrap-text.ts';

/** A stretch of time in a lane. */
export interface PlanBar {
  /** Days from the left edge of the chart; parts of a day count. */
  readonly from: number;
  readonly to: number;
  readonly kind: BarKind;
  /** Written into the bar where there is room for it. */
  readonly label: string;
  /** Which row of its lane, from 0. */
  readonly row: number;
}

export interface PlanLane {
  readonly name: string;
  /** How many rows its bars need. */
  readonly rows: number;
  readonly bars: readonly PlanBar[];
  /** A day to mark, in days from the left edge. */
  readonly promised?: number;
}

export interface PlanGroup {
  readonly heading: string;
  readonly lanes: readonly PlanLane[];
}

export interface PlanChartInput {
  /** How many days the chart shows, whole weeks. */
  readonly days: number;
  /** Today, in days from the left edge. */
  readonly today: number;
  /** What stands over the first day of each week. */
  readonly weeks: readonly string[];
  /** Stretches in which nobody works, longer than a weekend. */
  readonly closed: readonly { readonly from: number; readonly to: number }[];
  readonly groups: readonly PlanGroup[];
  /** What the chart shows, in sentences. */
  readonly alt: string;
  readonly fontCss: string;
}

/** Width of the sheet, mm: a landscape A4 between its margins. */
const WIDTH = 262;
const NAMES = 44;
const HEAD = 8;
const ROW = 4.6;
const BAR = 3.6;
const BETWEEN = 1.4;
const HEADING = 6;
const TEXT = 2.8;
const LINE = 3.4;
/** Least distance between two week labels, mm. */
const LABEL = 13;

type Across = (day: number) => number;

/**
 * Weeks across; below each other the lanes of each group, with a bar for each stretch of work.
 *
 * @returns a sheet 262 mm wide; names run over more lines and are never cut; fills differ without colour
 */
export function drawPlanChart(input: PlanChartInput): Drawing {
  const across = scaleLinear()
    .domain([0, input.days])
    .range([NAMES, WIDTH - 2]);
  const lanes: string[] = [];
  let top = HEAD;
  for (const { heading, lanes: inside } of input.groups) {
    lanes.push(words(heading, 0.5, top + HEADING - 1.6, { 'font-size': 3, 'font-weight': 600 }));
    top += HEADING;
    for (const lane of inside) {
      const lines = wrapText(lane.name, (NAMES - 3) / TEXT);
      lanes.push(...drawLane(lane, lines, across, top));
      top += laneHeight(lane, lines);
    }
  }
  const body = [
    PATTERNS,
    ...input.closed.map((one) => closedBand(one, across, top)),
    ...weekLines(input.weeks, across, top),
    ...lanes,
    ...todayLine(input.today, across, top),
    ...legend(NAMES, top + 3),
  ];
  const height = top + 3 + LEGEND_HEIGHT;
  return sheet({ width: WIDTH, height, alt: input.alt, fontCss: input.fontCss, body });
}

const laneHeight = ({ rows }: PlanLane, lines: readonly string[]): number =>
  Math.max(rows * ROW, lines.length * LINE + 0.8) + BETWEEN;

function drawLane(
  lane: PlanLane,
  lines: readonly string[],
  across: Across,
  top: number,
): readonly string[] {
  const bottom = top + laneHeight(lane, lines);
  return [
    ...lines.map((line, index) =>
      words(line, 0.5, top + 2.8 + index * LINE, { 'font-size': TEXT }),
    ),
    stroke([0, bottom - BETWEEN / 2], [WIDTH - 2, bottom - BETWEEN / 2], { stroke: INK.rule }),
    ...lane.bars.flatMap((bar) => drawBar(bar, across, top + bar.row * ROW)),
    ...(lane.promised === undefined
      ? []
      : [promisedMark(across(lane.promised), top, bottom - BETWEEN)]),
  ];
}

function drawBar(bar: PlanBar, across: Across, top: number): readonly string[] {
  const x = across(bar.from);
  const width = Math.max(across(bar.to) - x, 0.3);
  const { fill, ink } = BAR_FILLS[bar.kind];
  if (bar.kind === 'wait') return [stroke([x, top + BAR / 2], [x + width, top + BAR / 2])];
  const attributes = { x, y: top, width, height: BAR, fill, stroke: INK.line };
  const rectangle = element('rect', { ...attributes, 'stroke-width': 0.25 });
  const room = width > widthOf(bar.label) * SMALL_TEXT + 0.4;
  if (!room || bar.label === '') return [rectangle];
  const label = words(bar.label, x + width / 2, top + BAR - 0.95, {
    'text-anchor': 'middle',
    fill: ink,
  });
  return [rectangle, label];
}

function promisedMark(x: number, top: number, bottom: number): string {
  const triangle = element('path', {
    d: `M${x.toFixed(2)} ${(top + 2.4).toFixed(2)}l-1.5 -2.6h3z`,
    fill: INK.line,
    stroke: INK.paper,
    'stroke-width': 0.2,
  });
  return stroke([x, top], [x, bottom], { 'stroke-width': 0.5 }) + triangle;
}

function closedBand(
  { from, to }: PlanChartInput['closed'][number],
  across: Across,
  bottom: number,
): string {
  return element('rect', {
    x: across(from),
    y: HEAD,
    width: across(to) - across(from),
    height: bottom - HEAD,
    fill: INK.tint,
  });
}

function weekLines(
  weeks: PlanChartInput['weeks'],
  across: Across,
  bottom: number,
): readonly string[] {
  const every = Math.ceil(LABEL / (across(7) - across(0)));
  return weeks.flatMap((label, week) => {
    const x = across(week * 7);
    const line = stroke([x, HEAD - 3], [x, bottom], { stroke: INK.rule });
    return week % every === 0 ? [line, words(label, x + 0.6, HEAD - 3.4)] : [line];
  });
}

function todayLine(today: number, across: Across, bottom: number): readonly string[] {
  const x = across(today);
  return [stroke([x, HEAD - 2], [x, bottom], { 'stroke-width': 0.45, 'stroke-dasharray': '2 1' })];
}
