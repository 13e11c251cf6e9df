import { element, INK, words } from './svg.ts';
import type { Scale } from './hull-views.ts';

/** Height that a ruler with its numbers and words takes, mm. */
export const RULER_HEIGHT = 9;

/** A ruler in metres from the transom forward: the scale of the drawing, and where its distances begin. */
export function metreRuler(length: number, across: Scale, top: number): string {
  const halves = Array.from({ length: Math.floor(length * 2) }, (_, index) => index / 2);
  const bars = halves.map((from, index) =>
    element('rect', {
      x: across(from),
      y: top,
      width: across(from + 0.5) - across(from),
      height: 1.2,
      fill: index % 2 === 0 ? INK.line : INK.paper,
      stroke: INK.line,
      'stroke-width': 0.2,
    }),
  );
  const whole = Array.from({ length: Math.floor(length) + 1 }, (_, metre) =>
    words(String(metre), across(metre), top + 4.2, { 'text-anchor': 'middle' }),
  );
  const note = words('metres forward of the transom', across(0), top + 7.6, { fill: INK.quiet });
  return [...bars, ...whole, note].join('\n');
}
