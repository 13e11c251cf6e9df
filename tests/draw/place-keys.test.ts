import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Anchor,
  heightFor,
  KEY_RADIUS,
  KEY_SPACING,
  placeKeys,
  type PlacedKey,
} from '../../src/draw/place-keys.ts';
import type { Box } from '../../src/draw/types.ts';

const boxOf = (width: number, height: number): Box => ({
  left: 2,
  top: 5,
  right: 2 + width,
  bottom: 5 + height,
});
const ROOMY = boxOf(176, 60);

const anchorsIn = (box: Box, most: number): fc.Arbitrary<readonly Anchor[]> =>
  fc
    .array(
      fc.record({
        x: fc.double({ min: box.left - 5, max: box.right + 5, noNaN: true }),
        y: fc.double({ min: box.top - 5, max: box.bottom + 5, noNaN: true }),
      }),
      { maxLength: most },
    )
    .map((places) => places.map((place, index) => ({ ...place, number: String(index + 1) })));

const leastGap = (keys: readonly PlacedKey[]): number =>
  Math.min(
    ...keys.flatMap((one, index) =>
      keys
        .slice(index + 1)
        .map((other) => Math.hypot(one.keyX - other.keyX, one.keyY - other.keyY)),
    ),
  );

const outside = (keys: readonly PlacedKey[], box: Box): readonly PlacedKey[] =>
  keys.filter(
    ({ keyX, keyY }) =>
      keyX < box.left + KEY_RADIUS ||
      keyX > box.right - KEY_RADIUS ||
      keyY < box.top + KEY_RADIUS ||
      keyY > box.bottom - KEY_RADIUS,
  );

describe('placing keys', () => {
  it('leaves every key clear of all others, inside the box, and leaves none out', () => {
    fc.assert(
      fc.property(anchorsIn(ROOMY, 30), fc.constantFrom(0, 3), (anchors, clear) => {
        const keys = placeKeys(anchors, ROOMY, clear);
        expect(keys.map(({ number }) => number)).toEqual(anchors.map(({ number }) => number));
        expect(leastGap(keys)).toBeGreaterThanOrEqual(KEY_SPACING - 1e-6);
        expect(outside(keys, ROOMY)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  it('finds room for all keys of one place in a box of the height that it asks for', () => {
    for (const count of [1, 7, 40]) {
      const box = boxOf(176, heightFor(count, 176));
      const anchors = Array.from({ length: count }, (_, index) => ({
        number: String(index),
        x: 90,
        y: (box.top + box.bottom) / 2,
      }));
      const keys = placeKeys(anchors, box);
      expect(keys).toHaveLength(count);
      expect(outside(keys, box)).toEqual([]);
      expect(leastGap(keys)).toBeGreaterThanOrEqual(KEY_SPACING - 1e-6);
    }
  });

  it('keeps a key with nothing near it on its place', () => {
    const anchors = [
      { number: '1', x: 30, y: 30 },
      { number: '2', x: 60, y: 30 },
    ];
    expect(placeKeys(anchors, ROOMY)).toEqual(
      anchors.map((anchor) => ({ ...anchor, keyX: anchor.x, keyY: anchor.y })),
    );
  });

  it('puts two keys of one place side by side', () => {
    const [one, two] = placeKeys(
      [
        { number: '1', x: 30, y: 30 },
        { number: '2', x: 30, y: 30 },
      ],
      ROOMY,
    );
    expect(one?.keyY).toBe(30);
    expect(two?.keyY).toBe(30);
    expect(Math.abs((one?.keyX ?? 0) - (two?.keyX ?? 0))).toBeCloseTo(KEY_SPACING, 9);
  });

  it('keeps a key off its own place when asked to', () => {
    const [key] = placeKeys([{ number: '1', x: 30, y: 30 }], ROOMY, 3.3);
    expect(Math.hypot((key?.keyX ?? 0) - 30, (key?.keyY ?? 0) - 30)).toBeGreaterThanOrEqual(3.3);
  });
});
