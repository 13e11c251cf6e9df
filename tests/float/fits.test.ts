import { describe, expect, it } from 'vitest';
import { buildHull, endArea, hydrostatics, standsOut } from '../../src/float/index.ts';
import { kilograms, metres } from '../../src/units/index.ts';
import { at, box, formOf, linesOf, plane } from './boats.ts';

const BARGE = box(5, 2, 0.8);
/** A vee 5 m long, 1 m up at 1 m out. */
const VEE = formOf(
  buildHull(
    linesOf(
      [0, 2.5, 5].map((x) => [
        x,
        [
          [0, 0],
          [1, 1],
        ],
      ]),
    ),
  ),
);

describe('how far a box stands out', () => {
  const crate = (x: number, y: number, z: number) => ({
    name: 'crate',
    mass: kilograms(1),
    at: at(x, y, z),
    size: { length: metres(0.4), breadth: metres(0.3), height: metres(0.2) },
  });

  it('is nothing inside, and over the sheer between the sides', () => {
    expect(standsOut(BARGE.hull, crate(2, 0.85, 0.1))).toBe(0);
    expect(standsOut(BARGE.hull, crate(2, -0.85, 1.5))).toBe(0);
  });

  it('is as far as it must move in, or up, whichever is less', () => {
    expect(standsOut(BARGE.hull, crate(2, 0.95, 0.4))).toBeCloseTo(0.1, 12);
    expect(standsOut(BARGE.hull, crate(2, -0.95, 0.4))).toBeCloseTo(0.1, 12);
    expect(standsOut(BARGE.hull, crate(2, 0, 0.07))).toBeCloseTo(0.03, 12);
    // Its lower corner at 0.65 m out and 0.5 m up: the skin is 0.15 m away either way.
    expect(standsOut(VEE, crate(2, 0.5, 0.6))).toBeCloseTo(0.15, 12);
    expect(standsOut(VEE, crate(2, 0.5, 0.75))).toBeCloseTo(0, 12);
    // Beyond the sheer it can only go in.
    expect(standsOut(VEE, crate(2, 1, 0.9))).toBeCloseTo(1.15 - 0.8, 12);
  });

  it('has no end past the transom or the stem', () => {
    expect(standsOut(BARGE.hull, crate(0.1, 0, 0.4))).toBe(Infinity);
    expect(standsOut(BARGE.hull, crate(4.9, 0, 0.4))).toBe(Infinity);
    expect(standsOut(BARGE.hull, crate(0.2, 0, 0.4))).toBe(0);
  });
});

it('the bulkhead at the aft end has the area of its section', () => {
  expect(endArea(BARGE.hull)).toBeCloseTo(1.6, 12);
  expect(endArea(VEE)).toBeCloseTo(1, 12);
});

describe('hydrostatics of the barge as it lies', () => {
  it('heeled with upright sides wet: the waterplane is broader by the secant', () => {
    const [sine, cosine] = [Math.sin(0.2), Math.cos(0.2)];
    const all = hydrostatics(BARGE, plane(0.3 * cosine, 0, 0.2));
    expect(all?.volume).toBeCloseTo(3, 9);
    expect(all?.waterplaneArea).toBeCloseTo(10 / cosine, 9);
    expect(all?.transverseInertia).toBeCloseTo((5 * (2 / cosine) ** 3) / 12, 9);
    // From the dry bilge to where the lower side leaves the water.
    const beam = 2 * cosine + (0.3 + sine / cosine) * sine;
    expect(all?.coefficients.waterplane).toBeCloseTo(2 / cosine / beam, 6);
  });

  it('with a bilge dry: the middle of the waterplane has moved out', () => {
    // The deck awash: a triangle 1.5 m along the bottom and 0.8 m up the side, its long side 1.7 m.
    const heel = Math.atan(0.8 / 1.5);
    const all = hydrostatics(BARGE, plane(0.8 * (15 / 17) - 8 / 17, 0, heel));
    expect(all?.volume).toBeCloseTo(3, 9);
    expect(all?.waterplaneArea).toBeCloseTo(5 * 1.7, 9);
    expect(all?.transverseInertia).toBeCloseTo((5 * 1.7 ** 3) / 12, 8);
    expect(all?.transverseRadius).toBeCloseTo((5 * 1.7 ** 3) / 36, 8);
    const { x, y, z } = all?.centreOfFlotation ?? {};
    expect([x, y, z]).toEqual([2.5, 0.25, 0.4].map((one) => expect.closeTo(one, 9)));
    const middle = all?.centreOfBuoyancy;
    expect(middle?.y).toBeCloseTo(0.5, 9);
    expect(middle?.z).toBeCloseTo(0.8 / 3, 9);
  });

  it('wholly under water has no waterplane, and its middle there is that of the volume', () => {
    const all = hydrostatics(BARGE, plane(2));
    expect(all?.waterplaneArea).toBe(0);
    expect(all?.centreOfFlotation).toEqual({ ...at(2.5, 0, 2), x: expect.closeTo(2.5, 9) });
    expect(hydrostatics(BARGE, plane(-1))).toBeUndefined();
  });
});
