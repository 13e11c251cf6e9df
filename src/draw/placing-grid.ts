import { scaleLinear } from 'd3-scale';
import type { Scale } from './hull-views.ts';
import { type Measure, measured } from './measure.ts';
import { outboardReach } from './outboard.ts';
import { heightFor, KEY_RADIUS } from './place-keys.ts';
import { stroke, words } from './svg.ts';
import type { Box, DrawnItem, HullShape, OutboardShape } from './types.ts';

/** Width of the sheet, mm. */
export const WIDTH = 180;
/** Room for the rulers' numbers at the left, right, top and below, mm. */
export const RULERS = { left: 15, right: 2, top: 4.5, below: 9 };
export const PAD = KEY_RADIUS + 1.5;
/** A key stands beside the cross at its item's place, never on it, mm. */
export const BESIDE = KEY_RADIUS + 1.2;

export interface GridLayout {
  readonly across: Scale;
  /** From metres sideways or up to millimetres down the sheet. */
  readonly down: Scale;
  readonly box: Box;
  /** Metres that the grid covers along the boat, and sideways or up. */
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

/**
 * Where the boat lies on the sheet: as large as its width and a greatest height let it be, with room for the keys.
 *
 * @param x - how far it reaches along, m
 * @param y - how far it reaches the other way, m
 * @param keys - how many numbers must find room
 * @param mostHeight - mm
 * @param datumOf - where the other way begins on the sheet, mm down it
 * @param way - 1: the other way grows down the sheet, -1: up it
 */
export function layOutGrid(
  x: readonly [number, number],
  y: readonly [number, number],
  keys: number,
  mostHeight: number,
  datumOf: (box: Box, scale: number) => number,
  way: 1 | -1,
): GridLayout {
  const room = WIDTH - RULERS.left - RULERS.right;
  const scale = Math.min((room - 2 * PAD) / (x[1] - x[0]), mostHeight / (y[1] - y[0]));
  const tall = Math.max((y[1] - y[0]) * scale + 2 * PAD, heightFor(keys, room));
  const { left, top } = RULERS;
  const box = { left, right: WIDTH - RULERS.right, top, bottom: top + tall };
  const start = left + PAD;
  const datum = datumOf(box, scale);
  const ends = [(box.top - datum) / (way * scale), (box.bottom - datum) / (way * scale)] as const;
  return {
    across: scaleLinear()
      .domain([x[0], x[0] + 1])
      .range([start, start + scale]),
    down: scaleLinear()
      .domain([0, 1])
      .range([datum, datum + way * scale]),
    box,
    x: [x[0] - PAD / scale, x[0] + (box.right - start) / scale],
    y: [Math.min(...ends), Math.max(...ends)],
  };
}

/** How far boat, outboard and items reach along the boat, m from the transom. */
export function reachAlong(
  hull: HullShape,
  items: readonly DrawnItem[],
  outboard: OutboardShape | undefined,
): readonly [number, number] {
  const aft = outboard ? outboardReach(outboard).aft : 0;
  const xs = [0, hull.length, -aft, ...items.map(({ at }) => at.x)];
  return [Math.min(...xs), Math.max(...xs)];
}

/**
 * A grid with rulers: along the boat from the transom, and the other way from a datum.
 *
 * @param label - what stands at a step of the other ruler, m
 */
export function placingGrid(
  { across, down, box, x, y }: GridLayout,
  measure: Measure,
  label: (at: number) => string,
  note: string,
): string {
  const step = measure.placingStep;
  const along = stepsIn(x, step).map((at) => {
    const middle = { 'text-anchor': 'middle' };
    const distance = fromDatum(at, measure);
    return [
      gridLine([across(at), box.top], [across(at), box.bottom], at === 0),
      words(distance, across(at), box.top - 1.2, middle),
      words(distance, across(at), box.bottom + 3.2, middle),
    ].join('');
  });
  const other = stepsIn(y, step).map((at) =>
    [
      gridLine([box.left, down(at)], [box.right, down(at)], at === 0),
      words(label(at), box.left - 1, down(at) + 0.9, { 'text-anchor': 'end' }),
    ].join(''),
  );
  const below = words(note, box.left, box.bottom + 7.4);
  return [...along, ...other, below].join('\n');
}

/** "−250", "1250": with the sign that `measured` leaves off. */
export const fromDatum = (at: number, measure: Measure): string =>
  `${at < 0 ? '−' : ''}${measured(at, measure)}`;

const gridLine = (
  from: readonly [number, number],
  to: readonly [number, number],
  datum: boolean,
): string =>
  stroke(from, to, {
    'stroke-width': datum ? 0.25 : 0.18,
    ...(datum ? {} : { 'stroke-dasharray': '0.6 0.9' }),
  });

/** Whole steps of the grid from one end of a ruler to the other. */
function stepsIn([from, to]: readonly [number, number], step: number): readonly number[] {
  const first = Math.ceil(from / step);
  const count = Math.max(Math.floor(to / step) - first + 1, 0);
  // Adding 0 makes a -0 into 0.
  return Array.from({ length: count }, (_, index) => (first + index) * step + 0);
}
