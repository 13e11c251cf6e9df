import { scaleLinear } from 'd3-scale';
import { element, INK, sheet, stroke, words } from './svg.ts';
import type { Drawing } from './types.ts';
import { wrapText } from './wrap-text.ts';

/** One bar. */
export interface MassBar {
  readonly name: string;
  /** Mass, kg; a bar of nothing, or of what is no number, is as long as nothing. */
  readonly mass: number;
  /** The mass and what else stands behind the bar, as printed: "48 kg, 9 %". */
  readonly figure: string;
}

export interface MassBarsInput {
  /** What is weighed, for the words: "the Dunlin 430". */
  readonly subject: string;
  readonly groups: readonly MassBar[];
  readonly fontCss: string;
}

/** Width of the sheet, mm. */
const WIDTH = 180;
const NAMES = 62;
const FIGURES = 34;
const TEXT = 3;
const LINE = 3.8;
const BAR = 3.4;
const BETWEEN = 1.8;
const EDGE = 1.5;

/**
 * Mass by group as horizontal bars from one line, each with its name before it and its figure behind it.
 *
 * @returns a sheet 180 mm wide; names that are longer than their column run over more lines and are never cut
 */
export function drawMassBars({ subject, groups, fontCss }: MassBarsInput): Drawing {
  const rows = groups.map((group) => ({
    ...group,
    mass: Number.isFinite(group.mass) ? Math.max(group.mass, 0) : 0,
    lines: wrapText(group.name, (NAMES - 2) / TEXT),
    figures: wrapText(group.figure, (FIGURES - 2) / TEXT),
  }));
  const length = scaleLinear()
    .domain([0, Math.max(...rows.map(({ mass }) => mass), Number.MIN_VALUE)])
    .range([0, WIDTH - NAMES - FIGURES]);
  const body: string[] = [];
  let top = EDGE;
  for (const row of rows) {
    const tall = Math.max(row.lines.length, row.figures.length) * LINE;
    body.push(...drawRow(row, length(row.mass), top + tall / 2));
    top += tall + BETWEEN;
  }
  const bottom = Math.max(top - BETWEEN + EDGE, 2 * EDGE);
  body.push(stroke([NAMES, 0], [NAMES, bottom], { 'stroke-width': 0.3 }));
  const listed = groups.map(({ name, figure }) => `${name} ${figure}`).join('; ');
  const alt = `Mass of ${subject} by group, as bars: ${listed === '' ? 'nothing is weighed' : listed}.`;
  return sheet({ width: WIDTH, height: bottom, alt, fontCss, body });
}

interface Row {
  readonly lines: readonly string[];
  readonly figures: readonly string[];
}

function drawRow({ lines, figures }: Row, length: number, middle: number): readonly string[] {
  const write = (texts: readonly string[], x: number, anchor: string): readonly string[] =>
    texts.map((text, index) =>
      words(text, x, middle + (index - (texts.length - 1) / 2) * LINE + TEXT * 0.33, {
        'font-size': TEXT,
        'text-anchor': anchor,
      }),
    );
  const bar = element('rect', {
    x: NAMES,
    y: middle - BAR / 2,
    width: length,
    height: BAR,
    fill: INK.rule,
    stroke: INK.line,
    'stroke-width': 0.25,
  });
  return [
    ...write(lines, NAMES - 1.6, 'end'),
    bar,
    ...write(figures, NAMES + length + 1.6, 'start'),
  ];
}
