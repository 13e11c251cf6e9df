import { cross, distance, fromLine, type Spot } from './plane.ts';
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

/** Radius of a key's circle and least clear space between two of them, mm. */
export const KEY_RADIUS = 2.1;
const KEY_GAP = 0.4;
/** Least distance between the centres of two keys, mm. */
export const KEY_SPACING = 2 * KEY_RADIUS + KEY_GAP;

const RINGS = Array.from({ length: 30 }, (_, ring) => 1 + ring);
const DIRECTIONS = 24;
/** How often each crowded key looks for its best spot. */
const ROUNDS = 3;
/** Places nearer together than this are one place, mm. */
const SAME_PLACE = 1;
/** What a key pays, in mm of distance, for what makes it harder to read. */
const PRICE = {
  coversPlace: 14,
  underLeader: 9,
  leaderUnderKey: 9,
  crossing: 5,
  alongCentreline: 3,
};

/**
 * Puts each key at its place, or as near to it as leaves every key clear of all others and inside the box.
 *
 * Keys with nothing near them stay on their places; the rest follow in their order, each on the best of the spots
 * around its place, and move once more when all stand. Keys of one place end up side by side. The same anchors give
 * the same keys.
 *
 * @param clear - least distance of a key from its own place, mm: 0 lets it stand on it
 * @validity the box has room (see `heightFor`); a key without any free spot is left out
 */
export function placeKeys(anchors: readonly Anchor[], box: Box, clear = 0): readonly PlacedKey[] {
  const alone = (one: Anchor): boolean =>
    clear === 0 &&
    inside(one, box) &&
    anchors.every((other) => other === one || distance(one, other) >= KEY_SPACING);
  const standing = anchors.filter(alone);
  const crowded = anchors.filter((one) => !alone(one));
  const orders = [
    crowded,
    crowded.toReversed(),
    crowded.toSorted((a, b) => a.x - b.x),
    crowded.toSorted((a, b) => a.y - b.y),
  ];
  const tried = orders.map((order) => settle(order, standing, { anchors, box, clear }));
  return tried.reduce((best, one) => (isBetter(one, best) ? one : best)).keys;
}

/** What keys are placed among. */
interface Sheet {
  readonly anchors: readonly Anchor[];
  readonly box: Box;
  readonly clear: number;
}

interface Settled {
  readonly keys: readonly PlacedKey[];
  readonly cost: number;
}

const isBetter = (one: Settled, best: Settled): boolean =>
  one.keys.length > best.keys.length ||
  (one.keys.length === best.keys.length && one.cost < best.cost - 1e-9);

/** Keys placed in this order, and each once more when all stand. */
function settle(crowded: readonly Anchor[], standing: readonly Anchor[], on: Sheet): Settled {
  const placed = new Map<Anchor, PlacedKey>();
  for (const anchor of standing) placed.set(anchor, { ...anchor, keyX: anchor.x, keyY: anchor.y });
  for (const anchor of Array.from({ length: ROUNDS }, () => crowded).flat()) {
    placed.delete(anchor);
    const spot = bestSpot(anchor, [...placed.values()], on);
    if (spot) placed.set(anchor, { ...anchor, keyX: spot.x, keyY: spot.y });
  }
  const all = [...placed.values()];
  const costs = all.map((key) => costsOf(key, all, on)(centreOf(key)));
  return {
    keys: on.anchors.flatMap((anchor) => placed.get(anchor) ?? []),
    cost: costs.reduce((sum, cost) => sum + cost, 0),
  };
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

function bestSpot(anchor: Anchor, placed: readonly PlacedKey[], on: Sheet): Spot | undefined {
  const free = (spot: Spot): boolean =>
    inside(spot, on.box) &&
    distance(spot, anchor) >= on.clear &&
    placed.every((key) => distance(spot, centreOf(key)) >= KEY_SPACING - 1e-9);
  const costOf = costsOf(anchor, placed, on);
  return (
    cheapest(spotsAround(anchor, on.clear), anchor, free, costOf) ??
    cheapest(spotsOf(on.box), anchor, free, costOf)
  );
}

function cheapest(
  spots: readonly Spot[],
  anchor: Anchor,
  free: (spot: Spot) => boolean,
  costOf: (spot: Spot) => number,
): Spot | undefined {
  let best: { readonly spot: Spot; readonly cost: number } | undefined;
  for (const spot of spots) {
    // No cost is less than the distance, so a spot farther than the best cost cannot win.
    if ((best && distance(spot, anchor) >= best.cost) || !free(spot)) continue;
    const cost = costOf(spot);
    if (!best || cost < best.cost - 1e-9) best = { spot, cost };
  }
  return best?.spot;
}

/**
 * Steps to the place itself, then to rings about it. Keys that may stand on their places begin level with them, so
 * that rows come first; keys beside theirs begin aslant, so that a leader does not hide in the centreline.
 */
const STEPS = { level: stepsFrom(0), aslant: stepsFrom(Math.SQRT1_2) };

function stepsFrom(slope: number): readonly Spot[] {
  const off = (turn: number): number => Math.abs(Math.abs(Math.sin(turn)) - slope);
  const turns = Array.from({ length: DIRECTIONS }, (_, index) => {
    const half = Math.ceil(index / 2) * (index % 2 === 0 ? 1 : -1);
    return (half * 2 * Math.PI) / DIRECTIONS;
  }).toSorted((a, b) => off(a) - off(b));
  const rings = [KEY_SPACING, 2 * KEY_SPACING, ...RINGS].toSorted((a, b) => a - b);
  const around = rings.flatMap((ring) =>
    turns.map((turn) => ({ x: ring * Math.cos(turn), y: ring * Math.sin(turn) })),
  );
  return [{ x: 0, y: 0 }, ...around];
}

function spotsAround({ x, y }: Anchor, clear: number): readonly Spot[] {
  const steps = clear === 0 ? STEPS.level : STEPS.aslant;
  return steps.map((step) => ({ x: x + step.x, y: y + step.y }));
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

/** What each spot would cost a key, among the places and keys of others. */
function costsOf(
  anchor: Anchor,
  placed: readonly PlacedKey[],
  { anchors, clear }: Sheet,
): (spot: Spot) => number {
  const others = anchors.filter((other) => distance(other, anchor) > SAME_PLACE);
  const strangers = placed
    .filter((key) => distance(key, anchor) > SAME_PLACE)
    .map((place) => ({ place, key: centreOf(place) }));
  return (spot) => {
    let cost = distance(spot, anchor);
    if (clear > 0 && Math.abs(spot.y - anchor.y) < KEY_GAP) cost += PRICE.alongCentreline;
    for (const other of others) {
      if (distance(other, spot) < KEY_RADIUS) cost += PRICE.coversPlace;
    }
    for (const { place, key } of strangers) {
      if (fromLine(spot, place, key) < KEY_RADIUS) cost += PRICE.underLeader;
      if (fromLine(key, anchor, spot) < KEY_RADIUS) cost += PRICE.leaderUnderKey;
      if (cross(anchor, spot, place, key)) cost += PRICE.crossing;
    }
    return cost;
  };
}

const centreOf = ({ keyX, keyY }: PlacedKey): Spot => ({ x: keyX, y: keyY });

function inside({ x, y }: Spot, { left, top, right, bottom }: Box): boolean {
  return (
    x >= left + KEY_RADIUS &&
    x <= right - KEY_RADIUS &&
    y >= top + KEY_RADIUS &&
    y <= bottom - KEY_RADIUS
  );
}
