import { element, INK, sheet, SMALL_TEXT, stroke, words } from './svg.ts';
import type { Drawing } from './types.ts';
import { wrapText } from './wrap-text.ts';

/** One wire of the diagram; texts as they are printed. */
export interface OneLineRow {
  /** load: from the bus to a device; source: from a charger to the bus; bare: a load without a fuse here. */
  readonly kind: 'load' | 'source' | 'bare';
  /** Number on the wire's ends; empty when it has none. */
  readonly label: string;
  readonly fuse: string;
  readonly wire: string;
  readonly device: string;
}

export interface OneLineInput {
  /** What is wired, for the words: "the Dunlin 430". */
  readonly subject: string;
  /** Batteries that feed one device alone, apart from the bus: the engine's, or those joined for another voltage. */
  readonly apart: readonly { readonly lines: readonly string[]; readonly row: OneLineRow }[];
  readonly battery: readonly string[];
  readonly atBattery: readonly OneLineRow[];
  /** The switch panel with what feeds it; left out: the boat has none. */
  readonly panel?: {
    readonly lines: readonly string[];
    readonly feeder: string;
    readonly rows: readonly OneLineRow[];
  };
  readonly fontCss: string;
}

/** Places on the sheet, mm. */
const WIDTH = 180;
const BUS = 42;
const FUSE = { from: 49, to: 60 } as const;
const WIRE = 64;
const TAG = 116;
const DEVICE = 124;
const PITCH = 9.5;
const TEXT = 2.9;
const LINE = 3.5;
const EDGE = 3;
/** From the last row of the battery to the first of the panel, with the main fuse between. */
const FEED = 21;
/** From the row of a battery apart to the first of the others. */
const APART = 19;

/**
 * One-line diagram: the battery and what is wired to it, the main fuse, the switch panel and its circuits; one line
 * stands for both conductors.
 *
 * @returns a sheet 180 mm wide, black on white, as high as its rows are many
 */
export function drawOneLine(input: OneLineInput): Drawing {
  const { apart, battery, atBattery, panel, fontCss } = input;
  const first = EDGE + PITCH / 2;
  const top = first + apart.length * APART;
  const batteryRows = Math.max(atBattery.length, 1);
  const lastOfBattery = top + (batteryRows - 1) * PITCH;
  const body = [
    ...apart.flatMap(({ lines, row }, index) => [
      ...boxAt(lines, first + 2 + index * APART),
      ...drawRow(row, first + 2 + index * APART),
    ]),
    busBar(top, lastOfBattery),
    ...boxAt(battery, (top + lastOfBattery) / 2),
    ...atBattery.flatMap((row, index) => drawRow(row, top + index * PITCH)),
  ];
  let bottom = lastOfBattery;
  if (panel) {
    const begin = lastOfBattery + FEED;
    bottom = begin + Math.max(panel.rows.length - 1, 0) * PITCH;
    body.push(
      ...feederDown(panel.feeder, lastOfBattery, begin),
      busBar(begin, bottom),
      ...boxAt(panel.lines, (begin + bottom) / 2),
      ...panel.rows.flatMap((row, index) => drawRow(row, begin + index * PITCH)),
    );
  }
  return sheet({
    width: WIDTH,
    height: bottom + PITCH / 2 + EDGE,
    alt: altOf(input),
    fontCss,
    body,
  });
}

const busBar = (from: number, to: number): string =>
  stroke([BUS, from - 3], [BUS, to + 3], { 'stroke-width': 1.4 });

/** What a bus belongs to, in a frame at its left, and the line between the two. */
function boxAt(lines: readonly string[], middle: number): readonly string[] {
  const wrapped = lines.flatMap((line) => wrapText(line, (BUS - 12) / TEXT));
  const height = wrapped.length * LINE + 2.5;
  const top = middle - height / 2;
  return [
    element('rect', {
      x: 1,
      y: top,
      width: BUS - 9,
      height,
      fill: INK.paper,
      stroke: INK.line,
      'stroke-width': 0.45,
    }),
    ...wrapped.map((line, index) =>
      words(line, 2.5, top + 1.2 + LINE * (index + 0.75), {
        'font-size': TEXT,
      }),
    ),
    stroke([BUS - 8, middle], [BUS, middle], { 'stroke-width': 0.7 }),
  ];
}

/** A fuse: a box with the line going through. */
const fuseBox = (x: number, y: number, width: number, height: number): string =>
  element('rect', {
    x,
    y,
    width,
    height,
    fill: 'none',
    stroke: INK.line,
    'stroke-width': 0.4,
  });

function drawRow({ kind, label, fuse, wire, device }: OneLineRow, y: number): readonly string[] {
  const names = wrapText(device, (WIDTH - DEVICE - 3) / TEXT).slice(0, 2);
  return [
    stroke([BUS, y], [DEVICE, y], { 'stroke-width': 0.4 }),
    ...(kind === 'load' ? [fuseBox(FUSE.from, y - 1.5, FUSE.to - FUSE.from, 3)] : []),
    ...(kind === 'source' ? [arrowLeft(y)] : []),
    ...(fuse === ''
      ? []
      : [
          words(fuse, (FUSE.from + FUSE.to) / 2, y - 2.1, {
            'font-size': SMALL_TEXT,
            'text-anchor': 'middle',
          }),
        ]),
    words(wire, WIRE, y - 0.9, { 'font-size': SMALL_TEXT }),
    ...tag(label, y),
    element('rect', {
      x: DEVICE,
      y: y - 4.1,
      width: WIDTH - DEVICE - 0.5,
      height: 8.2,
      rx: kind === 'source' ? 4 : 0,
      fill: INK.paper,
      stroke: INK.line,
      'stroke-width': 0.35,
    }),
    ...names.map((name, index) =>
      words(name, DEVICE + 1.8, y + TEXT * 0.35 + (index - (names.length - 1) / 2) * LINE, {
        'font-size': TEXT,
      }),
    ),
  ];
}

const arrowLeft = (y: number): string =>
  element('path', {
    d: `M${BUS + 1} ${y} l5 -1.8 v3.6 z`,
    fill: INK.line,
    stroke: INK.line,
    'stroke-width': 0.2,
  });

function tag(label: string, y: number): readonly string[] {
  if (label === '') return [];
  return [
    element('circle', {
      cx: TAG,
      cy: y,
      r: 3.1,
      fill: INK.paper,
      stroke: INK.line,
      'stroke-width': 0.35,
    }),
    words(label, TAG, y + 1, { 'text-anchor': 'middle' }),
  ];
}

/** From the battery's bus down to the panel's, through the main fuse. */
function feederDown(text: string, from: number, to: number): readonly string[] {
  const middle = (from + to) / 2;
  return [
    stroke([BUS, from + 3], [BUS, to - 3], { 'stroke-width': 0.7 }),
    fuseBox(BUS - 1.8, middle - 4, 3.6, 8),
    ...wrapText(text, (WIDTH - BUS - 8) / TEXT).map((line, index, all) =>
      words(line, BUS + 5, middle + TEXT * 0.35 + (index - (all.length - 1) / 2) * LINE, {
        'font-size': TEXT,
      }),
    ),
  ];
}

function altOf({ subject, apart, battery, atBattery, panel }: OneLineInput): string {
  const told = (rows: readonly OneLineRow[]): string =>
    rows.length === 0
      ? 'nothing'
      : rows
          .map(({ label, device, fuse, wire }) =>
            [label, device, fuse === '' ? '' : `fuse ${fuse}`, wire].filter(Boolean).join(', '),
          )
          .join('; ');
  const behind = panel
    ? ` ${panel.feeder}, to ${panel.lines.join(', ')}: ${told(panel.rows)}.`
    : '';
  const alone = apart
    .map(({ lines, row }) => ` ${lines.join(', ')} alone: ${told([row])}.`)
    .join('');
  return `One-line diagram of ${subject}.${alone} At ${battery.join(', ')}: ${told(atBattery)}.${behind}`;
}
