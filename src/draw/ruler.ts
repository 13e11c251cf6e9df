import { wholeDown } from '../maths/index.ts';
import { element, INK, words } from './svg.ts';
import type { Scale } from './hull-views.ts';
import { measureOf } from './measure.ts';
import type { HullShape } from './types.ts';

/** Height that a ruler with its numbers and words takes, mm. */
export const RULER_HEIGHT = 9;

/** A ruler in metres or feet from the transom forward: the scale of the drawing, and where its distances begin. */
export function hullRuler(hull: HullShape, across: Scale, top: number): string {
  const { rulerStep, rulerBars, rulerUnit } = measureOf(hull);
  const bar = rulerStep / rulerBars;
  // A length of whole bars has its last one, whatever the last bit of the division says.
  const count = (step: number): number => wholeDown(hull.length / step);
  const bars = Array.from({ length: count(bar) }, (_, index) =>
    element('rect', {
      x: across(index * bar),
      y: top,
      width: across((index + 1) * bar) - across(index * bar),
      height: 1.2,
      fill: index % 2 === 0 ? INK.line : INK.paper,
      stroke: INK.line,
      'stroke-width': 0.2,
    }),
  );
  const whole = Array.from({ length: count(rulerStep) + 1 }, (_, step) =>
    words(String(step), across(step * rulerStep), top + 4.2, { 'text-anchor': 'middle' }),
  );
  const note = words(`${rulerUnit} forward of the transom`, across(0), top + 7.6, {
    fill: INK.quiet,
  });
  return [...bars, ...whole, note].join('\n');
}
