import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energyOf } from '../../src/float/energy.ts';
import { type Equilibrium, findEquilibrium } from '../../src/float/index.ts';
import { kilograms, metres } from '../../src/units/index.ts';
import { type Generated, GENERATED } from './generated.ts';

/** Share of the mass, and of the mass times length and beam, that may be left out of balance. */
const BALANCED = 1e-8;
const SAME = 1e-6;

const boats = (numRuns: number): readonly Generated[] => fc.sample(GENERATED, numRuns);
const planeOf = (result: Equilibrium) => (result.outcome === 'floats' ? result.plane : undefined);

/** The same boat with its weight from the middle of its bottom out to where it is, step by step from rest to rest. */
function byDegrees({ body, load, length, depth }: Generated): Equilibrium {
  const steps = 40;
  const { x, y, z } = load.centre;
  let last: Equilibrium | undefined;
  for (let step = 0; step <= steps; step++) {
    const share = step / steps;
    const centre = {
      x: metres(0.42 * length * (1 - share) + x * share),
      y: metres(y * share),
      z: metres(0.2 * depth * (1 - share) + z * share),
    };
    const near = last && 'plane' in last ? last.plane : undefined;
    last = findEquilibrium(body, { mass: load.mass, centre }, [], near);
    if (last.outcome === 'capsizes' || last.outcome === 'goes down') return last;
  }
  if (!last) throw new Error('no step was made');
  return last;
}

describe('5,000 generated hulls and loadings, both interpolations, 3 to 40 sections', () => {
  it('are all answered, and what floats is in balance', () => {
    const outcomes = new Map<string, number>();
    let worst = 0;
    for (const { body, load, length, beam } of boats(5000)) {
      const result = findEquilibrium(body, load);
      outcomes.set(result.outcome, (outcomes.get(result.outcome) ?? 0) + 1);
      const plane = planeOf(result);
      if (!plane) continue;
      const [force, trims, heels] = energyOf(body, load, plane).gradient;
      const left = Math.max(...[force, trims / length, heels / beam].map(Math.abs));
      worst = Math.max(worst, left / load.mass);
    }
    expect(worst).toBeLessThan(BALANCED);
    expect([...outcomes.keys()].toSorted()).toEqual(['capsizes', 'floats', 'goes down', 'swamps']);
    expect(outcomes.get('floats')).toBeGreaterThan(3000);
  }, 60_000);

  it('lie mirrored when the weight is mirrored', () => {
    for (const { body, load } of boats(500)) {
      const { mass, centre } = load;
      const mirrored = { mass, centre: { ...centre, y: metres(0 - centre.y) } };
      const [one, other] = [findEquilibrium(body, load), findEquilibrium(body, mirrored)];
      expect(other.outcome).toBe(one.outcome);
      const [plane, flipped] = [planeOf(one), planeOf(other)];
      expect(Math.abs((plane?.level ?? 0) - (flipped?.level ?? 0))).toBeLessThan(SAME);
      expect(Math.abs((plane?.heel ?? 0) + (flipped?.heel ?? 0))).toBeLessThan(SAME);
    }
  });

  it('sink, trim and heel by little when a little is added', () => {
    for (const { body, load } of boats(500)) {
      const plane = planeOf(findEquilibrium(body, load));
      if (!plane) continue;
      const more = { ...load, mass: kilograms(load.mass * 1.0001) };
      const then = planeOf(findEquilibrium(body, more)) ?? plane;
      expect(Math.abs(then.level - plane.level)).toBeLessThan(2e-3);
      expect(Math.abs(then.trim - plane.trim)).toBeLessThan(2e-3);
      expect(Math.abs(then.heel - plane.heel)).toBeLessThan(5e-3);
    }
  });

  it('are never said to go over where the weight, moved out by degrees, leaves them floating', () => {
    const lost = boats(1500).filter(({ body, load }) => {
      const { outcome } = findEquilibrium(body, load);
      return outcome === 'capsizes' || outcome === 'goes down';
    });
    expect(lost.length).toBeGreaterThan(50);
    const missed = lost.filter((boat) => byDegrees(boat).outcome === 'floats');
    expect(missed).toEqual([]);
  });
});
