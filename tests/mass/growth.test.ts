import { describe, expect, it } from 'vitest';
import { centreOf, growthOf } from '../../src/mass/index.ts';
import { kilograms, metres } from '../../src/units/index.ts';

const boat = {
  mass: kilograms(200),
  centre: { x: metres(1.8), y: metres(0.05), z: metres(0.4) },
};

describe('growth over a boat’s life', () => {
  it('raises her centre of mass by what is allowed, and leaves it where it is otherwise', () => {
    const growth = growthOf(boat, { share: 0.05, rise: metres(0.02) });
    expect(growth.mass).toBeCloseTo(10, 12);
    const { mass, centre } = centreOf([{ mass: boat.mass, at: boat.centre }, growth]);
    expect(mass).toBeCloseTo(210, 12);
    expect(centre.z).toBeCloseTo(0.42, 12);
    expect([centre.x, centre.y]).toEqual([
      expect.closeTo(boat.centre.x, 12),
      expect.closeTo(boat.centre.y, 12),
    ]);
  });

  it('is nothing, at her own centre, where none is allowed for', () => {
    expect(growthOf(boat, { share: 0, rise: metres(0.02) })).toEqual({
      mass: 0,
      at: boat.centre,
    });
  });
});
