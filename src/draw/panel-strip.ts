import { element, INK, sheet, SMALL_TEXT, words } from './svg.ts';
import type { Drawing } from './types.ts';
import { wrapText } from './wrap-text.ts';

/** One place of a switch panel. */
export interface PanelLabel {
  readonly position: string;
  /** Empty: a place to spare. */
  readonly name: string;
  readonly fuse: string;
}

export interface PanelStripInput {
  /** The panel, for the words. */
  readonly subject: string;
  readonly labels: readonly PanelLabel[];
  readonly fontCss: string;
}

const WIDTH = 180;
const ACROSS = 6;
const CELL = WIDTH / ACROSS;
const HEIGHT = 18;
/** One label at its own size, mm. */
export const PANEL_LABEL = { width: CELL, height: HEIGHT };
const NAME = 3.1;
const LINE = 3.5;

/**
 * Labels of a switch panel at their own size, 30 mm by 18 mm, to cut out along the lines.
 *
 * @returns a sheet 180 mm wide, six labels a row; a name longer than three lines runs on in the table, not here
 */
export function drawPanelStrip({ subject, labels, fontCss }: PanelStripInput): Drawing {
  const rows = Math.max(1, Math.ceil(labels.length / ACROSS));
  const told = labels
    .map(({ position, name, fuse }) => `${position} ${name === '' ? 'to spare' : name} ${fuse}`)
    .join('; ');
  return sheet({
    width: WIDTH,
    height: rows * HEIGHT + 0.6,
    alt: `Labels of ${subject}, to cut out: ${told.trim()}.`,
    fontCss,
    body: labels.flatMap((label, index) =>
      drawLabel(label, (index % ACROSS) * CELL, 0.3 + Math.floor(index / ACROSS) * HEIGHT),
    ),
  });
}

function drawLabel({ position, name, fuse }: PanelLabel, x: number, y: number): readonly string[] {
  const lines = wrapText(name, (CELL - 3) / NAME).slice(0, 3);
  return [
    element('rect', {
      x: x + 0.3,
      y,
      width: CELL - 0.6,
      height: HEIGHT,
      fill: INK.paper,
      stroke: INK.line,
      'stroke-width': 0.3,
    }),
    words(position, x + 2, y + 5, { 'font-size': 4.4 }),
    words(fuse, x + CELL - 2, y + 4.6, { 'font-size': SMALL_TEXT, 'text-anchor': 'end' }),
    ...lines.map((line, index) => words(line, x + 2, y + 9 + index * LINE, { 'font-size': NAME })),
  ];
}
