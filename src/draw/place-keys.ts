import type { Box } from './types.ts';

/** A number and the place on the sheet that it belongs to, mm. */
export interface Anchor {
  readonly number: string;
  readonly x: number;
  readonly y: number;
}

export interface PlacedKey extends Anchor {
  /** Centre of the number's circle, mm. */
  readonly keyX: number;
  readonly keyY: number;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Radius of a key's circle and least clear space between two of them, mm. */
export const KEY_RADIUS = 2.1;
export const KEY_GAP = 0.4;
/** Least distance between the centres of two keys, mm. */
export const KEY_SPACING = 2 * KEY_RADIUS + KEY_GAP;

const RINGS = Array.from({ length: 30 }, (_, ring) => 1 + ring);
const DIRECTIONS = 24;
/** Places nearer together than this are one place, mm. */
const SAME_PLACE = 1;
/** What a key pays, in mm of distance, for what makes it harder to read. */
const PRICE = { coversPlace: 6, underLeader: 9, leaderUnderKey: 9, crossing: 5 };

/**
 * Puts each key at its place, or as near to it as leaves every key clear of all others and inside the box.
 *
 * Keys with nothing near them stay on their places; the rest follow in their order, each on the best of the spots
 * around its place. Keys of one place end up side by side. The same anchors give the same keys.
 *
 * @param clear - least distance of a key from its own place, mm: 0 lets it stand on it
 * @validity the box has room (see `heightFor`); a key without any free spot is left out
 */
export function placeKeys(anchors: readonly Anchor[], box: Box, clear = 0): readonly PlacedKey[] {
  const placed: PlacedKey[] = [];
  const alone = (one: Anchor): boolean =>
    clear === 0 &&
    inside(one, box) &&
    anchors.every((other) => other === one || distance(one, other) >= KEY_SPACING);
  for (const anchor of anchors.filter(alone)) {
    placed.push({ ...anchor, keyX: anchor.x, keyY: anchor.y });
  }
  for (const anchor of anchors.filter((one) => !alone(one))) {
    const spot = bestSpot(anchor, anchors, placed, box, clear);
    if (spot) placed.push({ ...anchor, keyX: spot.x, keyY: spot.y });
  }
  return placed;
}

/**
 * Height of a box of this width in which so many keys always find room, mm.
 *
 * @source derived: a key blocks a disc of the spacing's radius for the centres of all others
 */
export function heightFor(count: number, width: number): number {
  const blocked = count * Math.PI * KEY_SPACING ** 2 * 1.4;
  return blocked / (width - 2 * KEY_RADIUS) + 2 * KEY_RADIUS;
}

function bestSpot(
  anchor: Anchor,
  anchors: readonly Anchor[],
  placed: readonly PlacedKey[],
  box: Box,
  clear: number,
): Spot | undefined {
  const free = (spot: Spot): boolean =>
    inside(spot, box) &&
    distance(spot, anchor) >= clear &&
    placed.every((key) => distance(spot, centreOf(key)) >= KEY_SPACING - 1e-9);
  const near = spotsAround(anchor).filter(free);
  const spots = near.length > 0 ? near : spotsOf(box).filter(free);
  let best: { readonly spot: Spot; readonly cost: number } | undefined;
  for (const spot of spots) {
    const cost = costOf(spot, anchor, anchors, placed);
    if (!best || cost < best.cost - 1e-9) best = { spot, cost };
  }
  return best?.spot;
}

/** The place itself, then rings about it; to the right first, then to the left, so that rows come first. */
function spotsAround({ x, y }: Anchor): readonly Spot[] {
  const turns = Array.from({ length: DIRECTIONS }, (_, index) => {
    const half = Math.ceil(index / 2) * (index % 2 === 0 ? 1 : -1);
    return (half * 2 * Math.PI) / DIRECTIONS;
  });
  const rings = [KEY_SPACING, 2 * KEY_SPACING, ...RINGS].toSorted((a, b) => a - b);
  const sides = turns.toSorted((a, b) => Math.abs(Math.sin(a)) - Math.abs(Math.sin(b)));
  const around = rings.flatMap((ring) =>
    sides.map((turn) => ({ x: x + ring * Math.cos(turn), y: y + ring * Math.sin(turn) })),
  );
  return [{ x, y }, ...around];
}

/** Every spot of the box, on a grid of a quarter of the keys' spacing. */
function spotsOf({ left, top, right, bottom }: Box): readonly Spot[] {
  const step = KEY_SPACING / 4;
  const steps = (from: number, to: number): readonly number[] =>
    Array.from(
      { length: Math.max(Math.floor((to - from - 2 * KEY_RADIUS) / step) + 1, 0) },
      (_, index) => from + KEY_RADIUS + index * step,
    );
  const across = steps(left, right);
  return steps(top, bottom).flatMap((y) => across.map((x) => ({ x, y })));
}

function costOf(
  spot: Spot,
  anchor: Anchor,
  anchors: readonly Anchor[],
  placed: readonly PlacedKey[],
): number {
  const others = anchors.filter((other) => distance(other, anchor) > SAME_PLACE);
  const strangers = placed.filter((key) => distance(key, anchor) > SAME_PLACE);
  const covers = others.filter((other) => distance(other, spot) < KEY_RADIUS).length;
  const on = strangers.filter((key) => fromLine(spot, key, centreOf(key)) < KEY_RADIUS).length;
  const under = strangers.filter(
    (key) => fromLine(centreOf(key), anchor, spot) < KEY_RADIUS,
  ).length;
  const crossed = strangers.filter((key) => cross(anchor, spot, key, centreOf(key))).length;
  return (
    distance(spot, anchor) +
    covers * PRICE.coversPlace +
    on * PRICE.underLeader +
    under * PRICE.leaderUnderKey +
    crossed * PRICE.crossing
  );
}

const centreOf = ({ keyX, keyY }: PlacedKey): Spot => ({ x: keyX, y: keyY });
const distance = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);

function inside({ x, y }: Spot, { left, top, right, bottom }: Box): boolean {
  return (
    x >= left + KEY_RADIUS &&
    x <= right - KEY_RADIUS &&
    y >= top + KEY_RADIUS &&
    y <= bottom - KEY_RADIUS
  );
}

/** Distance of a spot from a straight line between two others. */
function fromLine(spot: Spot, from: Spot, to: Spot): number {
  const length = distance(from, to);
  if (length === 0) return distance(spot, from);
  const along =
    ((spot.x - from.x) * (to.x - from.x) + (spot.y - from.y) * (to.y - from.y)) / length ** 2;
  const share = Math.min(Math.max(along, 0), 1);
  return distance(spot, {
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
  });
}

function cross(a: Spot, b: Spot, c: Spot, d: Spot): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

const side = (from: Spot, to: Spot, spot: Spot): number =>
  (to.x - from.x) * (spot.y - from.y) - (to.y - from.y) * (spot.x - from.x);
