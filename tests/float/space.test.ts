import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clash, sideBySide, type Space, standsIn } from '../../src/float/index.ts';
import { metres } from '../../src/units/index.ts';
import { at } from './boats.ts';

const spaceAt = (x: number, y = 0, z = 0): Space => ({
  at: at(x, y, z),
  size: { length: metres(0.4), breadth: metres(0.2), height: metres(0.3) },
});

describe('two things in one boat', () => {
  it('clash when they meet along, across and up, and not when they only touch', () => {
    const one = spaceAt(1);
    for (const [inside, outside] of [
      [spaceAt(1.399), spaceAt(1.4)],
      [spaceAt(1, -0.199), spaceAt(1, -0.2)],
      [spaceAt(1, 0, 0.299), spaceAt(1, 0, 0.3)],
    ] as const) {
      expect(clash(one, inside)).toBe(true);
      expect(clash(one, outside)).toBe(false);
    }
    expect(clash(spaceAt(1.39, 0.19, 0.29), one)).toBe(true);
    expect(clash(spaceAt(1.39, 0.19, 0.31), one)).toBe(false);
  });

  it('stand in one another by the least way out, and by nothing when they only touch', () => {
    const one = spaceAt(1);
    expect(standsIn(one, spaceAt(1.1, 0.15, 0.05))).toBeCloseTo(0.05, 12);
    expect(standsIn(one, spaceAt(1.39))).toBeCloseTo(0.01, 12);
    expect(standsIn(one, spaceAt(1.4))).toBe(0);
    expect(standsIn(one, spaceAt(1.1, 5))).toBe(0);
  });

  it('clash one with the other as the other with the one', () => {
    const place = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(place, place, place, (x, y, z) => {
        const [one, other] = [spaceAt(0), spaceAt(x, y, z)];
        expect(clash(one, other)).toBe(clash(other, one));
      }),
    );
  });

  it('of a kind stand side by side across the boat', () => {
    expect(sideBySide(spaceAt(1), 3).size.breadth).toBeCloseTo(0.6, 12);
    expect(clash(sideBySide(spaceAt(1), 3), spaceAt(1, 0.39))).toBe(true);
    expect(clash(sideBySide(spaceAt(1), 3), spaceAt(1, 0.4))).toBe(false);
  });
});
