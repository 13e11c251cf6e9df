import { TOUCHES } from './constants.ts';
import type { HalfSection } from './form.ts';
import type { HullLines } from './types.ts';

type Profile = readonly (readonly [x: number, height: number])[];

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
  if (head <= last.x + TOUCHES) return [];
  const [, foot] = profile[0] ?? [0, keel];
  const ends = last.points.map(([, height]) => {
    const share = sheer > keel ? (height - keel) / (sheer - keel) : 1;
    return onStem(profile, foot + share * (headHeight - foot));
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
): Profile {
  if (length === undefined) return [];
  const before = stations.at(-2);
  const [, sheerBefore] = before?.points.at(-1) ?? [0, sheer];
  const slope = before ? (sheer - sheerBefore) / (last.x - before.x) : 0;
  return [
    [last.x, keel],
    [length, sheer + slope * (length - last.x)],
  ];
}

/** Where the stem has a height. */
function onStem(profile: Profile, height: number): readonly [x: number, height: number] {
  const above = profile.findIndex(([, top], index) => index > 0 && top >= height);
  const end = above === -1 ? profile.length - 1 : above;
  const [fromX, fromHeight] = profile[end - 1] ?? [0, 0];
  const [toX, toHeight] = profile[end] ?? [0, 0];
  const share = (height - fromHeight) / (toHeight - fromHeight);
  return [fromX + share * (toX - fromX), height];
}

function sectionWithin(
  last: HalfSection,
  ends: readonly (readonly [x: number, height: number])[],
  x: number,
): HalfSection['points'] {
  const lowest = stemHeight(ends, x);
  return last.points.map(([halfBreadth, height], index) => {
    const [endX, endHeight] = ends[index] ?? [x, height];
    if (endX < x - TOUCHES) return [0, lowest] as const;
    const share = Math.min(1, (x - last.x) / (endX - last.x));
    return [halfBreadth * (1 - share), height + (endHeight - height) * share] as const;
  });
}

/** Height of the stem at x, along the ends of the lines. */
function stemHeight(ends: readonly (readonly [x: number, height: number])[], x: number): number {
  const ahead = ends.findIndex(([place]) => place >= x);
  const [toX, toHeight] = ends[ahead === -1 ? ends.length - 1 : ahead] ?? [x, 0];
  const [fromX, fromHeight] = ends[ahead - 1] ?? [toX, toHeight];
  return toX > fromX
    ? fromHeight + ((toHeight - fromHeight) * (x - fromX)) / (toX - fromX)
    : toHeight;
}
