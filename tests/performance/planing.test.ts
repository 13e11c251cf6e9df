import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Computed,
  planeAt,
  type PlaningHull,
  type PlaningState,
  runAt,
  SEA_WATER,
} from '../../src/performance/index.ts';
import {
  kilograms,
  metres,
  metresPerSecond,
  radians,
  squareMetres,
} from '../../src/units/index.ts';
import { hullOf } from './generic-boats.ts';

const KNOT = 1852 / 3600;
const DEGREE = Math.PI / 180;

function running(state: Computed<PlaningState>): PlaningState {
  if ('notComputed' in state) throw new Error(state.notComputed);
  return state;
}
const at = (knots: number, hull: PlaningHull = hullOf()) =>
  runAt({ hull, water: SEA_WATER }, metresPerSecond(knots * KNOT));
const held = (knots: number, degrees: number, hull: PlaningHull = hullOf()) =>
  planeAt({ hull, water: SEA_WATER }, metresPerSecond(knots * KNOT), radians(degrees * DEGREE));
const because = (result: object): unknown => 'notComputed' in result && result.notComputed;

describe('a planing hull in balance', () => {
  it('has no moment left, and carries her weight', () => {
    const state = running(at(25));
    expect(Math.abs(state.moment)).toBeLessThan(1e-6);
    const lift = state.lift * 0.5 * 1025 * state.speed ** 2 * 1.7 ** 2;
    expect(lift).toBeCloseTo(1100 * 9.80665, 6);
  });

  it('lowers her bow the faster she goes', () => {
    const trims = [18, 22, 26, 30, 34].map((knots) => running(at(knots)).trim);
    expect(trims).toEqual(trims.toSorted((a, b) => b - a));
  });

  it('raises her bow when the mass moves aft', () => {
    const aft = hullOf({ centre: { x: metres(1.7), z: metres(0.45) } });
    expect(running(at(25, aft)).trim).toBeGreaterThan(running(at(25)).trim);
  });

  it('raises her bow when the thrust is lower, and when it is tilted down', () => {
    const lower = hullOf({ thrust: { x: metres(0), z: metres(-0.5), angle: radians(0) } });
    const out = hullOf({ thrust: { x: metres(0), z: metres(-0.25), angle: radians(-0.1) } });
    expect(running(at(25, lower)).trim).toBeGreaterThan(running(at(25)).trim);
    expect(running(at(25, out)).trim).toBeGreaterThan(running(at(25)).trim);
  });

  it('never drags less than the slope of her own weight, whatever she weighs', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 300, max: 2000, noNaN: true }),
        fc.double({ min: 12, max: 45, noNaN: true }),
        fc.double({ min: 0, max: 25, noNaN: true }),
        (mass, knots, deadrise) => {
          const hull = hullOf({ mass: kilograms(mass), deadrise: radians(deadrise * DEGREE) });
          const state = at(knots, hull);
          if ('notComputed' in state) return;
          expect(state.bareDrag).toBeGreaterThan(mass * 9.80665 * Math.tan(state.trim));
          expect(state.wettedChine).toBeGreaterThan(-1e-9);
          expect(
            Object.values(state)
              .flat()
              .every((one) => !Number.isNaN(one)),
          ).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('adds the drag of air and fittings without turning her', () => {
    const plate = {
      name: 'screen',
      medium: 'air',
      area: squareMetres(1),
      coefficient: 0.7,
    } as const;
    const speed = metresPerSecond(10);
    const bare = running(runAt({ hull: hullOf(), water: SEA_WATER }, speed));
    const added = running(runAt({ hull: hullOf(), water: SEA_WATER, added: [plate] }, speed));
    expect(added.drag - bare.drag).toBeCloseTo(0.5 * 1.225 * 100 * 0.7, 9);
    expect(added.trim).toBe(bare.trim);
  });
});

describe('the ranges of the method', () => {
  it('are named just outside and not just inside: trim of 2° and of 15°', () => {
    expect(running(held(20, 2)).outside).not.toContain('trim below 2°');
    expect(running(held(20, 1.99)).outside).toContain('trim below 2°');
    expect(running(held(20, 15)).outside).not.toContain('trim above 15°');
    expect(running(held(20, 15.01)).outside).toContain('trim above 15°');
  });

  it('are named just outside and not just inside: speed coefficient of 0.60 and of 13', () => {
    const knots = (coefficient: number) => (coefficient * Math.sqrt(9.80665 * 1.7)) / KNOT;
    expect(running(held(knots(0.601), 4)).outside).not.toContain('speed coefficient below 0.60');
    expect(running(held(knots(0.599), 4)).outside).toContain('speed coefficient below 0.60');
    const flat = hullOf({ deadrise: radians(0), mass: kilograms(9000) });
    expect(running(held(knots(12.99), 4, flat)).outside).not.toContain(
      'speed coefficient above 13',
    );
    expect(running(held(knots(13.01), 4, flat)).outside).toContain('speed coefficient above 13');
  });

  it('are named just outside and not just inside: wetted length of 4 beams', () => {
    const short = running(held(20, 2.2, hullOf({ mass: kilograms(1500) })));
    expect(short.wettedRatio).toBeLessThan(4);
    expect(short.outside).not.toContain('wetted length more than 4 beams');
    const long = running(held(20, 2.2, hullOf({ mass: kilograms(2400) })));
    expect(long.wettedRatio).toBeGreaterThan(4);
    expect(long.outside).toContain('wetted length more than 4 beams');
  });

  it('take the wetted beam where the chines run dry, with no step where that begins', () => {
    const dry = 'chines dry: computed on the wetted beam';
    const speeds = Array.from({ length: 601 }, (_, index) => 20 + index * 0.05);
    const states = speeds.map((knots) => running(held(knots, 3)));
    const first = states.findIndex(({ outside }) => outside.includes(dry));
    const [before, after] = [states[first - 1], states[first]];
    expect(before?.wettedChine).toBeGreaterThan(0);
    expect(after?.wettedBeam).toBeLessThan(1.7);
    expect(after?.wettedBeam).toBeGreaterThan(1.65);
    expect((after?.bareDrag ?? 0) / (before?.bareDrag ?? 1)).toBeCloseTo(1, 2);
  });

  it('keep his equations on the wetted beam too', () => {
    const { wettedBeam, wettedRatio, speed, lift, flatLift, wettedChine } = running(held(45, 3));
    expect(wettedBeam).toBeLessThan(1.7);
    expect(wettedChine).toBeCloseTo(0, 9);
    const squared = speed ** 2 / (9.80665 * wettedBeam);
    const ofTrim = 0.012 * Math.sqrt(wettedRatio) + (0.0055 * wettedRatio ** 2.5) / squared;
    expect(flatLift).toBeCloseTo(3 ** 1.1 * ofTrim, 12);
    expect(lift).toBeCloseTo(flatLift - 0.0065 * 15 * flatLift ** 0.6, 12);
    expect(lift * 0.5 * 1025 * speed ** 2 * wettedBeam ** 2).toBeCloseTo(1100 * 9.80665, 6);
  });

  it('say "not computed" below planing, with the reason', () => {
    expect(because(at(5))).toMatch(/^pre-planing/);
    expect(because(at(12, hullOf({ length: metres(3.5) })))).toMatch(/more keel/);
    expect('notComputed' in at(20)).toBe(false);
  });

  it('refuse what is faster than the method goes, and not what is just inside', () => {
    // Almost no boat: 5 kg on a beam of 0.2 m, so that she balances above 2° at a coefficient of 13.
    const knots = (coefficient: number) => (coefficient * Math.sqrt(9.80665 * 0.2)) / KNOT;
    const tiny = hullOf({
      beam: metres(0.2),
      length: metres(2),
      mass: kilograms(25),
      deadrise: radians(0),
      centre: { x: metres(0.2), z: metres(0.05) },
      thrust: { x: metres(0), z: metres(-0.03), angle: radians(0) },
    });
    expect(because(at(knots(13.01), tiny))).toMatch(/above 13/);
    expect('notComputed' in at(knots(12.99), tiny)).toBe(false);
  });

  it('give numbers or a reason, and an end, for anything at all', () => {
    const any = fc.oneof(
      fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      fc.double(),
      fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-300, 1e300),
    );
    fc.assert(
      fc.property(any, any, any, any, any, any, (mass, beam, deadrise, x, z, speed) => {
        const hull = hullOf({
          mass: kilograms(mass),
          beam: metres(beam),
          deadrise: radians(deadrise),
          centre: { x: metres(x), z: metres(z) },
        });
        for (const state of [
          planeAt({ hull, water: SEA_WATER }, metresPerSecond(speed), radians(0.07)),
          runAt({ hull, water: SEA_WATER }, metresPerSecond(speed)),
        ]) {
          const values = Object.values(state).flat();
          expect(values.every((one) => typeof one === 'string' || Number.isFinite(one))).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('say "not computed" for what is no boat', () => {
    expect(because(at(0))).toMatch(/above zero/);
    expect(because(at(20, hullOf({ mass: kilograms(Number.NaN) })))).toMatch(/above zero/);
    expect(because(held(100, 4, hullOf({ deadrise: radians(0) })))).toMatch(/so little/);
    expect(because(at(20, hullOf({ deadrise: radians(-0.1) })))).toMatch(/deadrise/);
    expect(because(at(20, hullOf({ centre: { x: metres(9), z: metres(0.4) } })))).toMatch(/trim/);
  });
});
