import { element, INK, sheet, stroke, words } from './svg.ts';
import type { Drawing } from './types.ts';
import { wrapText } from './wrap-text.ts';

/** A fact of the plate; an empty value is a blank to fill. */
export interface PlateFact {
  readonly label: string;
  readonly value: string;
}

export interface CapacityPlateInput {
  /** "Draft: for the builder to confirm and sign". */
  readonly standing: string;
  readonly boat: string;
  readonly facts: readonly PlateFact[];
  /** What the figures rest on, and who confirms them. */
  readonly cautions: readonly string[];
  readonly fontCss: string;
}

const WIDTH = 130;
const EDGE = 4;
const LABELS = 62;
const TEXT = 3.1;
const LINE = 4.1;
const BETWEEN = 1.6;
const SMALL = 2.6;

/**
 * A draft of the plate that goes on the boat: facts with their values, blanks to fill, a line to sign.
 *
 * @returns a sheet 130 mm wide; texts run over as many lines as they take and are never cut
 */
export function drawCapacityPlate(input: CapacityPlateInput): Drawing {
  const { standing, boat, facts, cautions, fontCss } = input;
  const body = [
    words(standing, EDGE, 7.5, { 'font-size': TEXT }),
    words(boat, EDGE, 13.5, { 'font-size': 4.4 }),
  ];
  let top = 17;
  for (const fact of facts) {
    const { drawn, tall } = drawFact(fact, top);
    body.push(...drawn);
    top += tall;
  }
  top += 3;
  for (const row of cautions.flatMap((text) => wrapText(text, (WIDTH - 2 * EDGE) / SMALL))) {
    body.push(words(row, EDGE, top, { 'font-size': SMALL }));
    top += 3.4;
  }
  top += 9;
  for (const [index, label] of ['Confirmed by the builder', 'Signature', 'Date'].entries()) {
    const from = EDGE + index * 41;
    body.push(stroke([from, top], [from + 38, top]));
    body.push(words(label, from, top + 3.6, { 'font-size': SMALL }));
  }
  const height = Math.ceil(top + 8);
  const frame = { x: 1, y: 1, width: WIDTH - 2, height: height - 2, rx: 2 };
  body.unshift(element('rect', { ...frame, fill: 'none', stroke: INK.line, 'stroke-width': 0.5 }));
  const told = facts.map(({ label, value }) => `${label}: ${value === '' ? 'blank' : value}`);
  const alt = `${standing}. Capacity plate of ${boat}. ${told.join('; ')}. ${cautions.join(' ')}`;
  return sheet({ width: WIDTH, height, alt, fontCss, body });
}

function drawFact(
  { label, value }: PlateFact,
  top: number,
): { readonly drawn: readonly string[]; readonly tall: number } {
  const left = wrapText(label, (LABELS - EDGE) / TEXT);
  const right = wrapText(value, (WIDTH - LABELS - 2 * EDGE) / TEXT);
  const tall = Math.max(left.length, right.length) * LINE + BETWEEN;
  const column = (texts: readonly string[], x: number, fill: string): readonly string[] =>
    texts.map((text, row) => words(text, x, top + 3.6 + row * LINE, { 'font-size': TEXT, fill }));
  const bottom = top + tall;
  return {
    drawn: [
      ...column(left, EDGE, INK.quiet),
      ...column(right, LABELS + 2, INK.line),
      stroke([EDGE, bottom], [WIDTH - EDGE, bottom], { stroke: INK.quiet, 'stroke-width': 0.18 }),
    ],
    tall,
  };
}
