import { INK, SMALL_TEXT, stroke, words } from './svg.ts';

/** Dashes that are told apart without colour: for the first line, the second, the third. */
export const DASHES = ['none', '3.2 1.4', '5 1.2 0.8 1.2'] as const;

/** Height of one line of a legend, mm. */
export const LEGEND_STEP = SMALL_TEXT + 2;

/** Weight of a water's surface, mm. */
const WATER_WEIGHT = 0.35;

/** How the line of a place in a list is drawn. */
export function dashOf(index: number): Readonly<Record<string, string | number>> {
  const dash = DASHES[index % DASHES.length] ?? 'none';
  return {
    stroke: INK.line,
    'stroke-width': WATER_WEIGHT,
    ...(dash !== 'none' && { 'stroke-dasharray': dash }),
  };
}

/** Samples of lines with what they mean, one below the other from a height down. */
export function lineLegend(names: readonly string[], left: number, top: number): string {
  return names
    .map((name, index) => {
      const y = top + (index + 1) * LEGEND_STEP;
      const sample = stroke([left, y - 0.9], [left + 14, y - 0.9], dashOf(index));
      return sample + words(`${letterOf(index)}  ${name}`, left + 16.5, y);
    })
    .join('\n');
}

/** What a line is called beside itself: A, B, C. */
export const letterOf = (index: number): string => String.fromCodePoint(65 + index);
