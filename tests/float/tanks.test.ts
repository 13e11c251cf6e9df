import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ballastEffect,
  drainTime,
  fillTime,
  immerse,
  surfaceAreas,
  swampedBalance,
  tankForm,
} from '../../src/float/index.ts';
import { areaUnder } from '../../src/maths/index.ts';
import {
  cubicMetres,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  radians,
  squareMetres,
} from '../../src/units/index.ts';
import { afloat, box, demonstrationHulls, loadAt, plane } from './boats.ts';

const BARGE = box(5, 2, 0.8);
const DUNLIN = demonstrationHulls().find(({ id }) => id === 'dunlin-430');
const volumeOf = (form: ReturnType<typeof tankForm>): number =>
  form ? immerse(afloat(form), plane(5)).volume : Number.NaN;

const space = (from: number, to: number, top: number, halfBreadth?: number) => ({
  from: metres(from),
  to: metres(to),
  top: metres(top),
  ...(halfBreadth !== undefined && { halfBreadth: metres(halfBreadth) }),
});

describe('a tank', () => {
  it('in a barge is a block, as wide and as high as it is let', () => {
    expect(volumeOf(tankForm(BARGE.hull, space(1, 3.3, 0.2)))).toBeCloseTo(2.3 * 2 * 0.2, 10);
    expect(volumeOf(tankForm(BARGE.hull, space(1, 3.3, 0.2, 0.4)))).toBeCloseTo(
      2.3 * 0.8 * 0.2,
      10,
    );
    expect(volumeOf(tankForm(BARGE.hull, space(1, 3.3, 2)))).toBeCloseTo(2.3 * 2 * 0.8, 10);
  });

  it('is none outside the hull, or without length', () => {
    expect(tankForm(BARGE.hull, space(4, 6, 0.2))).toBeUndefined();
    expect(tankForm(BARGE.hull, space(2, 2, 0.2))).toBeUndefined();
    expect(tankForm(BARGE.hull, space(1, 2, 0))).toBeUndefined();
  });

  it('and what is above and beside it make up the hull', () => {
    if (!DUNLIN) throw new Error('no hull');
    const whole = volumeOf(DUNLIN.body.hull);
    const lengths = [space(0, 1.29, 0.3), space(1.29, 3.01, 0.3)];
    const parts = lengths.map((one) => volumeOf(tankForm(DUNLIN.body.hull, one)));
    const under = immerse(DUNLIN.body, plane(0.3)).volume;
    expect(parts.every((part) => part > 0.1)).toBe(true);
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeLessThan(under);
    expect(under).toBeLessThan(whole);
    const all = tankForm(DUNLIN.body.hull, space(0, 4.17, 0.3));
    expect(Math.abs(volumeOf(all) / under - 1)).toBeLessThan(0.01);
  });

  it('has surface areas that add up to its volume', () => {
    if (!DUNLIN) throw new Error('no hull');
    const form = tankForm(DUNLIN.body.hull, space(0.8, 2.6, 0.15));
    if (!form) throw new Error('no tank');
    const areas = surfaceAreas(form, 1, { count: 200 });
    const volume = areas.slice(1).reduce((sum, [height, area], index) => {
      const [below = 0, before = 0] = areas[index] ?? [];
      return sum + ((area + before) / 2) * (height - below);
    }, 0);
    expect(volume).toBeCloseTo(volumeOf(form), 3);
  });
});

describe('a tank that floods at rest', () => {
  it('in a barge does what lost buoyancy says by hand', () => {
    const form = tankForm(BARGE.hull, { from: metres(2), to: metres(3), top: metres(0.1) });
    if (!form) throw new Error('no tank');
    const effect = ballastEffect(BARGE, loadAt(3075, 2.5, 0, 0.6), { form, permeability: 0.95 });
    const lost = 1 * 2 * 0.1 * 0.95;
    expect(effect.capacity).toBeCloseTo(lost, 9);
    expect(effect.water?.mass).toBeCloseTo(lost * 1025, 6);
    expect(effect.flooded.level).toBeCloseTo(0.3 + lost / 10, 9);
    const volume = 3;
    const height = ((volume + lost) ** 2 / 20 - lost * 0.05) / volume;
    const gm = height + (5 * 8) / 12 / volume - 0.6;
    expect(effect.flooded.metacentricHeight).toBeCloseTo(gm, 8);
    expect(effect.dry.metacentricHeight).toBeCloseTo(0.661111, 6);
    expect(effect.flooded.stiffness).toBeCloseTo(3075 * gm, 4);
  });

  it('holds its water at its own middle, up to the sea, and none above it', () => {
    const effectOf = (top: number, mass = 3075) => {
      const form = tankForm(BARGE.hull, space(2, 3, top));
      if (!form) throw new Error('no tank');
      const rim = [{ name: 'rim', at: loadAt(0, 2.5, 0, 0.7).centre }];
      return ballastEffect(BARGE, loadAt(mass, 2.5, 0, 0.6), { form, permeability: 1 }, rim);
    };
    const { water, dry, flooded } = effectOf(0.1);
    const { x, y, z } = water?.centre ?? {};
    expect([x, y, z]).toEqual([2.5, 0, 0.05].map((one) => expect.closeTo(one, 6)));
    expect(dry.lowestFreeboard).toBeCloseTo(0.7 - 0.3, 9);
    expect(flooded.lowestFreeboard).toBeCloseTo(0.7 - 0.32, 9);
    // To the deck: a fifth of the waterplane is lost, 0.375 m of 2 m2 stand in it.
    expect(effectOf(0.8).water?.mass).toBeCloseTo(0.375 * 2 * 1025, 6);
    const sunk = effectOf(0.1, 9000);
    expect(Object.keys({ ...sunk.dry, ...sunk.flooded })).toEqual(['equilibrium']);
    expect(sunk.water).toBeUndefined();
  });

  it('below the water gives the same moment as its water carried as weight', () => {
    const form = tankForm(BARGE.hull, { from: metres(2), to: metres(3), top: metres(0.1) });
    if (!form) throw new Error('no tank');
    const lost = ballastEffect(BARGE, loadAt(3075, 2.5, 0, 0.6), { form, permeability: 1 });
    const mass = 3075 + 205;
    const centre = (3075 * 0.6 + 205 * 0.05) / mass;
    const draught = mass / 1025 / 10;
    const gm = draught / 2 + 4 / (12 * draught) - centre;
    expect(lost.flooded.stiffness).toBeCloseTo(mass * gm, 4);
  });
});

describe('draining', () => {
  const prism = [
    [0, 0.6],
    [0.25, 0.6],
  ] as const;
  const drain = (changes: Partial<Parameters<typeof drainTime>[0]> = {}) =>
    drainTime({
      areas: prism,
      from: metres(0.25),
      to: metres(0),
      outletHeight: metres(0),
      outlet: squareMetres(0.0005),
      discharge: 0.6,
      ...changes,
    });
  const timeOf = (result: ReturnType<typeof drainTime>): number =>
    result.outcome === 'flows' ? result.time : Number.NaN;

  it('to half the depth takes 29.29 % of the whole time', () => {
    expect(timeOf(drain({ to: metres(0.125) })) / timeOf(drain())).toBeCloseTo(1 - Math.SQRT1_2, 9);
  });

  it('takes as long as stepping through it does, for a tank with sloping sides', () => {
    const areas = [
      [0, 0],
      [0.1, 0.5],
      [0.25, 0.8],
    ] as const;
    const steps = 20_000;
    let slow = 0;
    for (let index = 0; index < steps; index++) {
      const height = (0.25 * (index + 0.5)) / steps;
      const area = height < 0.1 ? 5 * height : 0.5 + 2 * (height - 0.1);
      slow += (area * (0.25 / steps)) / (0.6 * 0.0005 * Math.sqrt(2 * 9.80665 * height));
    }
    expect(Math.abs(timeOf(drain({ areas })) / slow - 1)).toBeLessThan(1e-4);
  });

  it('is slower with less air and quicker with more head', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e-4, noNaN: true }), (area) => {
        const less = drain({ vent: { area: squareMetres(area), discharge: 0.6 } });
        const more = drain({ vent: { area: squareMetres(2 * area), discharge: 0.6 } });
        expect(timeOf(less)).toBeGreaterThan(timeOf(more));
        expect(timeOf(more)).toBeGreaterThan(timeOf(drain()));
      }),
    );
    expect(timeOf(drain({ outletHeight: metres(-0.3) }))).toBeLessThan(timeOf(drain()));
  });

  it('empties 70 litres in about two seconds through a wide outlet as she gathers way', () => {
    const result = drain({
      areas: [
        [0, 0.58],
        [0.12, 0.58],
      ],
      from: metres(0.12),
      outlet: squareMetres(0.3 * 0.07),
      outletHeight: metres(-0.35),
      vent: { area: squareMetres(0.002), discharge: 0.6 },
    });
    expect(result.outcome === 'flows' && result.volume).toBeCloseTo(0.0696, 4);
    expect(timeOf(result)).toBeGreaterThan(1.5);
    expect(timeOf(result)).toBeLessThan(2.5);
  });

  it('of a tank against a V-bottom moves what the tank holds, and ever more slowly', () => {
    const form =
      DUNLIN &&
      tankForm(DUNLIN.body.hull, { from: metres(0.6), to: metres(2.2), top: metres(0.16) });
    if (!form) throw new Error('no tank');
    const areas = surfaceAreas(form, 0.9, { count: 100 });
    const run = (to: number) => drain({ areas, from: metres(0.16), to: metres(to) });
    const [all, half] = [run(0), run(0.08)];
    const held = immerse(afloat(form), plane(5)).volume * 0.9;
    expect(all.outcome === 'flows' && all.volume / held).toBeCloseTo(1, 2);
    expect(timeOf(half)).toBeLessThan(timeOf(all));
    expect(timeOf(half)).toBeGreaterThan(0.5 * timeOf(all));
  });

  it('does not happen without head, outlet or air, and says which is wanting', () => {
    const noHead = { outcome: 'does not flow', why: 'no head' };
    expect(drain({ outletHeight: metres(0.1) })).toEqual(noHead);
    expect(drain({ from: metres(0), to: metres(0.1) })).toEqual(noHead);
    expect(drain({ outlet: squareMetres(0) })).toEqual({
      outcome: 'does not flow',
      why: 'no way out',
    });
    const shut = { vent: { area: squareMetres(0), discharge: 0.6 } };
    expect(drain(shut)).toEqual({ outcome: 'does not flow', why: 'no air' });
  });

  it('by the bow up begins at the aft end and moves what the level tank holds', () => {
    // A box of 1 x 0.8 x 0.2 m: tilted by 4 degrees its aft corner fills as a wedge.
    const form = tankForm(BARGE.hull, space(1, 2, 0.2, 0.4));
    if (!form) throw new Error('no tank');
    const trim = radians((4 * Math.PI) / 180);
    const areas = surfaceAreas(form, 1, { trim, count: 400 });
    const rise = Math.tan(trim);
    expect(areas[0]?.[0]).toBeCloseTo(0, 9);
    expect(areas.at(-1)?.[0]).toBeCloseTo(0.2 + rise, 9);
    // As a wedge to the height h at its end it holds 0.8 h2 / (2 tan), and in all what it holds level.
    expect(areaUnder(areas, 0, 0.05)).toBeCloseTo((0.8 * 0.05 ** 2) / (2 * rise), 4);
    expect(areaUnder(areas)).toBeCloseTo(0.16, 4);
  });

  it('and filling take longer where the sea outside begins lower', () => {
    const into = (begins: number) =>
      timeOf(
        fillTime({
          areas: prism,
          from: metres(0),
          to: metres(0.2),
          outside: [metres(begins), metres(0.25)],
          outlet: squareMetres(0.0005),
          discharge: 0.6,
        }),
      );
    // The head falls evenly from 0.15 m to 0.05 m: t = 2 A dh / ((sqrt h1 + sqrt h2) Cd a sqrt 2g).
    const hand =
      (2 * 0.6 * 0.2) /
      ((Math.sqrt(0.15) + Math.sqrt(0.05)) * 0.6 * 0.0005 * Math.sqrt(2 * 9.80665));
    expect(into(0.15)).toBeCloseTo(hand, 6);
    expect(into(0.25)).toBeLessThan(into(0.15));
    expect(into(0)).toBeNaN();
  });

  it('and filling to the level of the sea take the same time in a tank of upright sides', () => {
    const filled = fillTime({
      areas: prism,
      from: metres(0),
      to: metres(0.25),
      outside: [metres(0.25), metres(0.25)],
      outlet: squareMetres(0.0005),
      discharge: 0.6,
    });
    expect(timeOf(filled)).toBeCloseTo(timeOf(drain()), 9);
  });
});

describe('swamped buoyancy', () => {
  const foam = { density: kilogramsPerCubicMetre(32), fitted: cubicMetres(0) };
  const part = (mass: number, density: number, submerged = true) => ({
    name: 'part',
    mass: kilograms(mass),
    density: kilogramsPerCubicMetre(density),
    submerged,
  });

  it('of the needed foam leaves no reserve and no want', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.double({ min: 1, max: 300, noNaN: true }),
            fc.double({ min: 300, max: 8000, noNaN: true }),
            fc.boolean(),
          ),
          { minLength: 1, maxLength: 8 },
        ),
        (list) => {
          const parts = list.map(([mass, density, submerged]) => part(mass, density, submerged));
          const water = kilogramsPerCubicMetre(1000);
          const { stillNeeded } = swampedBalance(parts, foam, water);
          const mended = swampedBalance(parts, { ...foam, fitted: stillNeeded }, water);
          expect(mended.reserve).toBeGreaterThan(-1e-9);
          expect(mended.stillNeeded).toBeLessThan(1e-9);
        },
      ),
    );
  });
});
