import { describe, expect, it } from 'vitest';
import {
  findEquilibrium,
  type GrowthInput,
  type GrowthLimit,
  growthUntil,
  withMasses,
} from '../../src/float/index.ts';
import { kilograms, metres, radians } from '../../src/units/index.ts';
import { at, box, DEGREE, loadAt } from './boats.ts';

const BARGE = box(5, 2, 0.8);

const grown = (change: Partial<GrowthInput> = {}): GrowthInput => ({
  body: BARGE,
  load: loadAt(3075, 2.5, 0, 0.6),
  at: at(2.5, 0, 0.6),
  openings: [],
  most: kilograms(3000),
  ...change,
});
const until = (input: GrowthInput, limit: GrowthLimit): number => {
  const margin = growthUntil(input, limit);
  return margin.outcome === 'met' ? margin.growth : Number.NaN;
};
const freeboard = (least: number): GrowthLimit => ({ kind: 'freeboard', least: metres(least) });

describe('growth until a limit', () => {
  it('is the mass of the water between freeboard and limit, for a box that it is put into the middle of', () => {
    // 3075 kg: 0.3 m deep, 0.5 m of freeboard; 10250 kg for each metre.
    expect(until(grown(), freeboard(0.4))).toBeCloseTo(1025, 1);
    expect(until(grown(), freeboard(0.499))).toBeCloseTo(10.25, 1);
  });

  it('is nothing where the limit is past already, and not met where it holds to the end', () => {
    expect(growthUntil(grown(), freeboard(0.501))).toEqual({ outcome: 'already past' });
    expect(growthUntil(grown({ most: kilograms(1000) }), freeboard(0.4))).toEqual({
      outcome: 'not met',
    });
  });

  it('counts an opening that stands lower than the sheer', () => {
    const openings = [{ name: 'scupper', at: at(2.5, 0, 0.5) }];
    expect(until(grown({ openings }), freeboard(0.1))).toBeCloseTo(1025, 1);
  });

  it('brings her to the edge of the trim band, and to the heel, that it is asked for', () => {
    const aft = grown({ at: at(1, 0, 0.6) });
    const band = { least: radians(-0.01), most: radians(2 * DEGREE) };
    const list = grown({ at: at(2.5, 0.5, 0.6) });
    for (const [input, limit, angle] of [
      [aft, { kind: 'trim', ...band }, 'trim'],
      [list, { kind: 'heel', most: radians(3 * DEGREE) }, 'heel'],
    ] as const) {
      const growth = until(input, limit);
      const load = withMasses(input.load, [{ mass: kilograms(growth), at: input.at }]);
      const rest = findEquilibrium(BARGE, load);
      const reached = rest.outcome === 'floats' ? rest.plane[angle] : Number.NaN;
      expect(reached).toBeCloseTo(limit.most, 5);
    }
  });

  it('ends where she no longer floats upright, when the limit itself is never met', () => {
    const high = grown({ at: at(2.5, 0, 3), most: kilograms(4000) });
    const growth = until(high, { kind: 'trim', least: radians(-1), most: radians(1) });
    const rest = (more: number) =>
      findEquilibrium(
        BARGE,
        withMasses(high.load, [{ mass: kilograms(growth + more), at: high.at }]),
      );
    expect(rest(1).outcome).not.toBe('floats');
    expect(rest(-1).outcome).toBe('floats');
  });
});
