import { interpolate, lerp, type Points } from '../../maths/index.ts';
import { LENGTH_TOLERANCE } from '../constants.ts';
import type { HullLines } from '../types.ts';
import type { HalfSection } from './form.ts';

/** Sections that the stem is built of; it is short and mostly above the water. */
const SECTIONS = 8;

/**
 * Sections forward of the last station: each line runs straight from there to the stem, and the keel follows
 * the stem up. None when the lines already end in a point or when no length and no bow is given.
 *
 * @validity a line meets the stem at the share of the stem's height that it has of the last section's. Meant
 * for V-shaped ends; where a flat bottom ends at a raked stem the first piece is smoothed over
 * @source common practice, no source: the ending of lines at a stem
 */
export function stemSections(
  { bow, length }: HullLines,
  stations: readonly HalfSection[],
): readonly HalfSection[] {
  const last = stations.at(-1);
  const [, keel] = last?.points[0] ?? [0, 0];
  const [, sheer] = last?.points.at(-1) ?? [0, 0];
  if (!last) return [];
  const profile = bow ?? straightStem(stations, last, length, keel, sheer);
  const [head, headHeight] = profile.at(-1) ?? [last.x, sheer];
  if (head <= last.x + LENGTH_TOLERANCE) return [];
  const [, foot] = profile[0] ?? [0, keel];
  const byHeight = profile.map(([x, height]) => [height, x] as const);
  const ends = last.points.map(([, height]) => {
    const share = sheer > keel ? (height - keel) / (sheer - keel) : 1;
    const meets = lerp(foot, headHeight, share);
    return [interpolate(byHeight, meets, 'straight on'), meets] as const;
  });
  return Array.from({ length: SECTIONS }, (_, index) => {
    const x = last.x + ((head - last.x) * (index + 1)) / SECTIONS;
    return { x, points: sectionWithin(last, ends, x) };
  });
}

function straightStem(
  stations: readonly HalfSection[],
  last: HalfSection,
  length: number | undefined,
  keel: number,
  sheer: number,
): Points {
  if (length === undefined) return [];
  const before = stations.at(-2);
  const [, sheerBefore] = before?.points.at(-1) ?? [0, sheer];
  const slope = before ? (sheer - sheerBefore) / (last.x - before.x) : 0;
  return [
    [last.x, keel],
    [length, sheer + slope * (length - last.x)],
  ];
}

/** Each line as far forward as x; those that end before it follow the stem up. */
function sectionWithin(last: HalfSection, ends: Points, x: number): HalfSection['points'] {
  const lowest = interpolate(ends, x, 'held');
  return last.points.map(([halfBreadth, height], index) => {
    const [endX, endHeight] = ends[index] ?? [x, height];
    if (endX < x - LENGTH_TOLERANCE) return [0, lowest] as const;
    const share = Math.min(1, (x - last.x) / (endX - last.x));
    return [halfBreadth * (1 - share), lerp(height, endHeight, share)] as const;
  });
}
