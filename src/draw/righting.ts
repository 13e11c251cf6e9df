import { scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import { interpolate } from '../maths/index.ts';
import { drawKeys } from './keys.ts';
import { LEGEND_STEP } from './legend.ts';
import { element, INK, sheet, stroke, words } from './svg.ts';
import type { Drawing } from './types.ts';

export interface RightingMark {
  /** What happens at that heel, as printed. */
  readonly name: string;
  /** Degrees. */
  readonly heel: number;
}

export interface RightingInput {
  readonly subject: string;
  /** Pairs of heel in degrees and arm in `unit`, from upright. */
  readonly arms: readonly (readonly [heel: number, arm: number])[];
  readonly unit: string;
  readonly marks: readonly RightingMark[];
  readonly fontCss: string;
}

const WIDTH = 180;
const LEFT = 16;
const RIGHT = 176;
const TOP = 9;
const BOTTOM = 69;
const LEGEND = 82;
const STEP = 10;

/**
 * Righting arm against heel, with a numbered mark at each heel at which something happens.
 *
 * @returns a sheet 180 mm wide
 */
export function drawRighting({ subject, arms, unit, marks, fontCss }: RightingInput): Drawing {
  const last = Math.max(STEP, ...arms.map(([heel]) => heel));
  const values = arms.map(([, arm]) => arm);
  const across = scaleLinear().domain([0, last]).range([LEFT, RIGHT]);
  const up = scaleLinear()
    .domain([Math.min(0, ...values), Math.max(0.1, ...values)])
    .nice(5)
    .range([BOTTOM, TOP]);
  const draw = line<readonly [number, number]>()
    .x(([heel]) => across(heel))
    .y(([, arm]) => up(arm))
    .curve(curveMonotoneX)
    .digits(2);
  const curve = element('path', {
    d: draw(arms) ?? '',
    fill: 'none',
    stroke: INK.line,
    'stroke-width': 0.6,
  });
  const shown = marks.filter(({ heel }) => heel >= 0 && heel <= last);
  const spots = shown.map(({ heel }, index) => {
    const x = across(heel);
    const y = up(interpolate(arms, heel, 'held'));
    return { number: String(index + 1), x, y, keyX: x, keyY: Math.min(y + 8, BOTTOM - 3) };
  });
  const body = [
    frame(across, up, last, unit),
    curve,
    ...shown.map(({ heel }) =>
      stroke([across(heel), TOP], [across(heel), BOTTOM], { 'stroke-dasharray': '1.2 1' }),
    ),
    drawKeys(spots),
    ...shown.map(({ name }, index) =>
      words(`${index + 1}  ${name}`, LEFT, LEGEND + index * LEGEND_STEP),
    ),
  ];
  const alt =
    `Righting arm of ${subject} against heel, from upright to ${Math.round(last)} degrees; ` +
    `${shown.map(({ name }) => name).join('; ')}.`;
  const height = LEGEND + shown.length * LEGEND_STEP - 1;
  return sheet({ width: WIDTH, height, alt, fontCss, body });
}

type Axis = ReturnType<typeof scaleLinear<number, number>>;

function frame(across: Axis, up: Axis, last: number, unit: string): string {
  const fine = { stroke: INK.rule, 'stroke-width': 0.18 };
  const heels = Array.from({ length: Math.floor(last / STEP) + 1 }, (_, index) => index * STEP);
  return [
    ...heels.map(
      (heel) =>
        stroke([across(heel), TOP], [across(heel), BOTTOM], fine) +
        words(String(heel), across(heel), BOTTOM + 3.6, { 'text-anchor': 'middle' }),
    ),
    ...up
      .ticks(5)
      .map(
        (arm) =>
          stroke([LEFT, up(arm)], [RIGHT, up(arm)], arm === 0 ? {} : fine) +
          words(String(arm), LEFT - 1.5, up(arm) + 0.9, { 'text-anchor': 'end' }),
      ),
    words(`righting arm, ${unit}`, LEFT, TOP - 3, { fill: INK.quiet }),
    words('heel, degrees', RIGHT, BOTTOM + 7.4, { fill: INK.quiet, 'text-anchor': 'end' }),
  ].join('\n');
}
