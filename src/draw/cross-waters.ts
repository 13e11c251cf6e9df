import type { Scale } from './hull-views.ts';
import { dashOf, letterOf } from './legend.ts';
import { element, INK, stroke, words } from './svg.ts';
import type { Box } from './types.ts';

/** The surface of the water across the boat, in one condition. */
export interface CrossWater {
  readonly name: string;
  /** Height on the centreline, m above the baseline. */
  readonly height: number;
  /** To starboard above zero, rad. */
  readonly heel: number;
}

interface CrossPlan {
  readonly across: Scale;
  readonly up: Scale;
  readonly box: Box;
  readonly half: number;
}

/** Each surface from side to side of the plan, as far as it lies within its height, with its letter. */
export function crossWaters(waters: readonly CrossWater[], plan: CrossPlan): string {
  return waters
    .slice(0, 3)
    .flatMap((water, index) => {
      const ends = endsOf(water, plan);
      if (!ends) return [];
      const [left, right] = ends;
      // Letters stand a little inside the ends, each further in than the one before, so that none share a place.
      const share = 0.97 - 0.06 * index;
      const x = left.x + share * (right.x - left.x);
      const y = left.y + share * (right.y - left.y);
      return [
        stroke([left.x, left.y], [right.x, right.y], dashOf(index)),
        // A patch of paper under the letter: text with an outline is not printed as text.
        element('rect', {
          x: x - 1.2,
          y: y - 3.2,
          width: 2.4,
          height: 2.8,
          fill: INK.paper,
        }),
        words(letterOf(index), x, y - 0.9, { 'text-anchor': 'middle' }),
      ];
    })
    .join('\n');
}

function endsOf({ height, heel }: CrossWater, { across, up, box, half }: CrossPlan) {
  const slope = Math.tan(heel);
  if (!Number.isFinite(height + slope)) return undefined;
  const at = (breadth: number) => ({ x: across(breadth), y: up(height + slope * breadth) });
  const [from, to] = [at(-half), at(half)];
  const shareAt = (y: number): number => (y - from.y) / (to.y - from.y);
  const level = Math.abs(to.y - from.y) < 1e-9;
  const crossings = level ? [0, 1] : [shareAt(box.top), shareAt(box.bottom)];
  const [enter, leave] = crossings.toSorted((a, b) => a - b);
  const start = Math.max(0, enter ?? 0);
  const end = Math.min(1, leave ?? 1);
  if (start >= end) return undefined;
  const along = (share: number) => ({
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
  });
  return [along(start), along(end)] as const;
}
