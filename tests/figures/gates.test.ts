import { describe, expect, it } from 'vitest';
import { computeFigures, type Figures, type Gate } from '../../src/figures/index.ts';
import { kilograms, parseIsoDate } from '../../src/units/index.ts';
import { byNumber, figured, footprintOf } from '../demonstration/workspace.ts';

const gateOf = ({ gates }: Figures, stage: string): Gate | undefined =>
  gates.find((gate) => gate.stage === stage);

describe.each(byNumber)('the weigh gates of %s', (_, figures) => {
  const { build, mass } = figures;

  it('begin with the bare shell', () => {
    expect(gateOf(figures, 'release')?.expected).toBeCloseTo(mass.bareHull.mass, 9);
  });

  it('add up, stage by stage, to the boat’s mass', () => {
    const inBoat = figures.gates.filter(({ stage }) => stage !== 'trailer');
    expect(inBoat.at(-1)?.expected).toBeCloseTo(mass.ready.mass, 6);
    const wired = gateOf(figures, 'wiring') ?? gateOf(figures, 'fit-out');
    expect(wired?.expected).toBeCloseTo(mass.completed.mass, 6);
    const trailer = gateOf(figures, 'trailer');
    expect(trailer?.expected ?? 0).toBeCloseTo(
      build.trailer ? mass.ready.mass + build.trailer.tare : 0,
      6,
    );
  });

  it('expect 15 to 35 kg a square metre of length times beam once fitted out: common practice, no source', () => {
    const each = (gateOf(figures, 'fit-out')?.expected ?? 0) / footprintOf(build.hull);
    expect(each).toBeGreaterThan(15);
    expect(each).toBeLessThan(35);
  });

  it('grow in mass and in tolerance', () => {
    figures.gates.forEach((gate, index) => {
      const before = figures.gates[index - 1];
      expect(gate.expected).toBeGreaterThan(before?.expected ?? 0);
      expect(gate.tolerance).toBeGreaterThan(before?.tolerance ?? 0);
    });
  });
});

describe('what was weighed', () => {
  it('is MASS_OUT_OF_GATE just outside the gate and not on its limits', () => {
    const [figures] = figured;
    const date = parseIsoDate('2026-11-20');
    const gate = figures && gateOf(figures, 'release');
    if (!figures || !gate || !date) throw new Error('an order');
    const { build } = figures;
    const codes = (mass: number): readonly string[] => {
      const record = {
        ...build.order.record,
        masses: [{ stage: 'release', mass: kilograms(mass), date, by: 'A' }],
      };
      const order = { ...build.order, record } as typeof build.order;
      return computeFigures({ ...build, order }, []).findings.map(({ code }) => code);
    };
    expect(codes(gate.most)).not.toContain('MASS_OUT_OF_GATE');
    expect(codes(gate.least)).not.toContain('MASS_OUT_OF_GATE');
    expect(codes(gate.most + 0.01)).toContain('MASS_OUT_OF_GATE');
    expect(codes(gate.least - 0.01)).toContain('MASS_OUT_OF_GATE');
  });
});
