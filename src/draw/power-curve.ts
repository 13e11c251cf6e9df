import { scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import { element, INK, sheet, SMALL_TEXT, stroke, words } from './svg.ts';
import type { Drawing } from './types.ts';
import { type Formatter, QUANTITIES } from '../units/index.ts';

/** A place in the diagram: speed in m/s, power in W. */
export interface SpeedAndPower {
  readonly speed: number;
  readonly power: number;
}

/** One loading of the boat. */
export interface PowerLine {
  /** "light: 548 kg". */
  readonly name: string;
  readonly points: readonly SpeedAndPower[];
  /** What each outboard drives it to. */
  readonly marks: readonly (SpeedAndPower & { readonly ordered: boolean })[];
}

export interface PowerCurveInput {
  readonly subject: string;
  /** At most four. */
  readonly lines: readonly PowerLine[];
  /** Name of the outboard that is ordered; empty when there is none. */
  readonly ordered: string;
  readonly format: Formatter;
  readonly fontCss: string;
}

const WIDTH = 170;
const FRAME = { left: 14, right: 168, top: 5, bottom: 82 };
const LEGEND = 92;
const DASHES = ['none', '3 1.2', '1 1', '5 1.2 1 1.2'] as const;

/**
 * Shaft power against speed, a line for each loading, a mark for each outboard, a ring around the one that is ordered.
 *
 * @returns a sheet 170 mm wide; lines end at the strongest mark, and a loading without points has none
 */
export function drawPowerCurve(input: PowerCurveInput): Drawing {
  const { subject, ordered, fontCss, format } = input;
  const lines = input.lines.map((one) => inUnits(one, format));
  const places = lines.flatMap(({ points, marks }) => [...points, ...marks]);
  const most = (axis: keyof SpeedAndPower, least: number): number =>
    Math.max(least, ...places.map((place) => place[axis]).filter(Number.isFinite));
  const across = scaleLinear([0, most('speed', 10)], [FRAME.left, FRAME.right]).nice();
  const up = scaleLinear([0, most('power', 5)], [FRAME.bottom, FRAME.top]).nice();
  const body = [
    ...axes(across, up, format),
    ...lines.flatMap((one, index) => drawLine(one, index, across, up)),
    ...legend(lines, ordered),
  ];
  const alt = `Shaft power against speed of ${subject}. ${input.lines.map((one) => sentenceOf(one, format)).join(' ')}`;
  return sheet({ width: WIDTH, height: LEGEND + 5.5 * (lines.length + 1), alt, fontCss, body });
}

const speedWord = (format: Formatter): string =>
  format.system === 'us' ? format.unit('speed') : 'knots';

/** A line in the units of the reader, so that the axes step by whole ones. */
function inUnits({ name, points, marks }: PowerLine, { system }: Formatter): PowerLine {
  const [speed, power] = [QUANTITIES.speed[system].factor, QUANTITIES.finePower[system].factor];
  const scaled = <Place extends SpeedAndPower>(place: Place): Place => ({
    ...place,
    speed: place.speed / speed,
    power: place.power / power,
  });
  return { name, points: points.map(scaled), marks: marks.map(scaled) };
}

type Axis = ReturnType<typeof scaleLinear<number, number>>;

function axes(across: Axis, up: Axis, format: Formatter): readonly string[] {
  const { left, right, top, bottom } = FRAME;
  const grid = { stroke: INK.rule, 'stroke-width': 0.2 };
  const small = { 'font-size': SMALL_TEXT, fill: INK.line };
  return [
    ...up
      .ticks(6)
      .flatMap((power) => [
        stroke([left, up(power)], [right, up(power)], grid),
        words(String(power), left - 1.4, up(power) + 0.9, { ...small, 'text-anchor': 'end' }),
      ]),
    ...across
      .ticks(9)
      .flatMap((speed) => [
        stroke([across(speed), top], [across(speed), bottom], grid),
        words(String(speed), across(speed), bottom + 3.8, { ...small, 'text-anchor': 'middle' }),
      ]),
    stroke([left, bottom], [right, bottom], { 'stroke-width': 0.35 }),
    stroke([left, top], [left, bottom], { 'stroke-width': 0.35 }),
    words(`${format.unit('finePower')} at the propeller shaft`, left, top - 1.6, small),
    words(speedWord(format), right, bottom + 7, { ...small, 'text-anchor': 'end' }),
  ];
}

function drawLine(
  { points, marks }: PowerLine,
  index: number,
  across: Axis,
  up: Axis,
): readonly string[] {
  const path = line<SpeedAndPower>()
    .x(({ speed }) => across(speed))
    .y(({ power }) => up(power))
    .curve(curveMonotoneX)
    .digits(2)(points);
  return [
    element('path', {
      d: path ?? '',
      fill: 'none',
      stroke: INK.line,
      'stroke-width': 0.4,
      'stroke-dasharray': DASHES[index] ?? 'none',
    }),
    ...marks.flatMap(({ speed, power, ordered }) => [
      mark(across(speed), up(power), index),
      ...(ordered ? [dot(across(speed), up(power), 2.2, 'none')] : []),
    ]),
  ];
}

const dot = (cx: number, cy: number, r: number, fill: string): string =>
  element('circle', { cx, cy, r, fill, stroke: INK.line, 'stroke-width': 0.35 });

/** Circles on the first two lines, squares on the next; the second of each is filled. */
function mark(cx: number, cy: number, index: number): string {
  const fill = index % 2 === 0 ? INK.paper : INK.line;
  if (index < 2) return dot(cx, cy, 0.9, fill);
  const side = { x: cx - 0.8, y: cy - 0.8, width: 1.6, height: 1.6 };
  return element('rect', { ...side, fill, stroke: INK.line, 'stroke-width': 0.35 });
}

function legend(lines: readonly PowerLine[], ordered: string): readonly string[] {
  const { left } = FRAME;
  const rows = lines.flatMap(({ name }, index) => {
    const y = LEGEND + index * 5.5;
    const dashes = { 'stroke-width': 0.4, 'stroke-dasharray': DASHES[index] ?? 'none' };
    return [
      stroke([left, y - 1], [left + 12, y - 1], dashes),
      mark(left + 6, y - 1, index),
      words(name, left + 15, y, { 'font-size': 3 }),
    ];
  });
  if (ordered === '') return rows;
  const y = LEGEND + lines.length * 5.5;
  return [
    ...rows,
    dot(left + 6, y - 1, 2.2, 'none'),
    words(`as ordered: ${ordered}`, left + 15, y, { 'font-size': 3 }),
  ];
}

function sentenceOf({ name, marks }: PowerLine, format: Formatter): string {
  const said = marks.map(
    ({ speed, power, ordered }) =>
      `${format.finePower(power)} ${format.speed(speed)}${ordered ? ', as ordered' : ''}`,
  );
  const told = said.length === 0 ? 'no outboard makes it plane' : said.join('; ');
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${told}.`;
}
