import { describe, expect, it } from 'vitest';
import { trailerLoad } from '../../src/tow/index.ts';
import { kilograms } from '../../src/units/index.ts';

describe('the load of a trailer', () => {
  const load = (boat: number) =>
    trailerLoad({ boat: kilograms(boat), tare: kilograms(200), rating: kilograms(750) });

  it('leaves nothing at the rating itself', () => {
    expect(load(550)).toEqual({ total: 750, left: 0 });
  });

  it('leaves less than nothing a kilogram above it', () => {
    expect(load(551).left).toBe(-1);
  });
});
