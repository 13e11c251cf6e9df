import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  atTemperature,
  fillTime,
  type InfusionInput,
  planInfusion,
  radialFillTime,
  reachIn,
  RESIN_DENSITY,
} from '../../src/laminate/index.ts';
import { kilograms, metres } from '../../src/units/index.ts';

const flow = { porosity: 0.5, viscosity: 0.2, permeability: 1e-9, pressure: 95_000 };
const hull: InfusionInput = {
  flow: { porosity: 0.6, viscosity: 0.25, permeability: 1.2e-9, pressure: 90_000 },
  girth: metres(3.1),
  feedLength: metres(5.1),
  laminateResin: kilograms(33),
  mesh: { area: 14.2, uptake: 0.4 },
  lines: { bore: metres(0.012), hose: metres(18.5) },
  gelSeconds: 45 * 60,
  gelShare: 0.7,
};

describe('resin in a dry stack', () => {
  it('needs four times as long for twice the way, twice as long when twice as thick', () => {
    const half = fillTime(flow, metres(0.5));
    expect(fillTime(flow, metres(1))).toBeCloseTo(4 * half, 9);
    expect(fillTime({ ...flow, viscosity: 0.4 }, metres(0.5))).toBeCloseTo(2 * half, 9);
  });

  it('gets in a time as far as that time fills', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 5, noNaN: true }), (length) => {
        expect(reachIn(flow, fillTime(flow, metres(length)))).toBeCloseTo(length, 9);
      }),
    );
  });

  it('spreads from a point as a fine sum of rings does', () => {
    const [radius, inlet, rings] = [0.8, 0.02, 200_000];
    // dt = porosity mu r ln(r / r0) dr / (K p): the front's speed by Darcy's law, ring by ring.
    let seconds = 0;
    const step = (radius - inlet) / rings;
    for (let ring = 0; ring < rings; ring += 1) {
      const r = inlet + (ring + 0.5) * step;
      seconds +=
        (flow.porosity * flow.viscosity * r * Math.log(r / inlet) * step) /
        (flow.permeability * flow.pressure);
    }
    expect(radialFillTime(flow, metres(radius), metres(inlet))).toBeCloseTo(seconds, 3);
    expect(radialFillTime(flow, metres(0.01), metres(0.02))).toHaveProperty('notComputed');
  });
});

describe('an infusion plan', () => {
  it('leaves resin in every feed line that is laid', () => {
    const lost = (laid: number) => {
      const plan = planInfusion({ ...hull, lines: { ...hull.lines, laid } });
      return 'lost' in plan ? plan.lost : Number.NaN;
    };
    // 5.1 m of 12 mm bore are 0.577 L.
    const aLine = Math.PI * 0.006 ** 2 * 5.1 * RESIN_DENSITY;
    expect(lost(3) - lost(1)).toBeCloseTo(2 * aLine, 9);
    const plan = planInfusion(hull);
    expect(plan).toMatchObject({ feedLines: 1, lost: lost(1) });
    // With a quarter of the gel time she takes two.
    const short = planInfusion({ ...hull, gelSeconds: hull.gelSeconds / 4 });
    expect(short).toMatchObject({ feedLines: 2, lost: lost(2) });
  });

  it('fills within its share of the gel time, with no feed line more than needed', () => {
    const anyHull = fc.record({
      girth: fc.double({ min: 0.2, max: 5, noNaN: true }).map(metres),
      gelSeconds: fc.double({ min: 600, max: 7200, noNaN: true }),
      gelShare: fc.double({ min: 0.4, max: 0.9, noNaN: true }),
    });
    fc.assert(
      fc.property(anyHull, (some) => {
        const plan = planInfusion({ ...hull, ...some });
        const { feedLines, fillSeconds, limitSeconds, spacing } =
          'feedLines' in plan
            ? plan
            : { feedLines: 0, fillSeconds: 1, limitSeconds: 0, spacing: 0 };
        expect(fillSeconds).toBeLessThanOrEqual(limitSeconds * (1 + 1e-6));
        expect(spacing * feedLines).toBeCloseTo(some.girth, 9);
        const fewer = some.girth / (2 * (feedLines - 1));
        expect(feedLines === 1 || fillTime(hull.flow, metres(fewer)) > limitSeconds).toBe(true);
      }),
    );
  });

  it('shares the resin out over the feeds and leaves room in the catch-pot', () => {
    const plan = planInfusion({ ...hull, gelSeconds: 15 * 60 });
    expect(plan).toMatchObject({ feedLines: 2, leakDown: { minutes: 5 } });
    const inLines = Math.PI * 0.006 ** 2 * (18.5 + 2 * 5.1) * 1200;
    const resin = 33 + 14.2 * 0.4 + inLines;
    expect(plan).toHaveProperty('resin', expect.closeTo(resin, 9));
    expect(plan).toHaveProperty('resinPerFeed', expect.closeTo(resin / 2, 9));
    expect(plan).toHaveProperty('catchPotLitres', expect.closeTo((0.15 * resin) / 1.2, 9));
  });

  it('is not computed for a flow that cannot be or a resin that gels at once', () => {
    for (const bad of [
      { flow: { ...flow, permeability: 0 } },
      { flow: { ...flow, porosity: 1.5 } },
      { girth: metres(Number.NaN) },
      { gelSeconds: 0.01 },
    ]) {
      expect(planInfusion({ ...hull, ...bad })).toHaveProperty('notComputed');
    }
  });
});

describe('a data sheet between its temperatures', () => {
  const points = [
    { celsius: 25, value: 0.2 },
    { celsius: 15, value: 0.4 },
    { celsius: 20, value: 0.28 },
  ];

  it('meets its points, lies between them and is never carried on beyond', () => {
    expect(atTemperature(points, 20)).toBe(0.28);
    const between = atTemperature(points, 22);
    expect(between).toBeGreaterThan(0.2);
    expect(between).toBeLessThan(0.28);
    expect(atTemperature(points, 30)).toHaveProperty('notComputed');
    expect(atTemperature(points, 5)).toHaveProperty('notComputed');
    expect(atTemperature([], 20)).toHaveProperty('notComputed');
  });
});
