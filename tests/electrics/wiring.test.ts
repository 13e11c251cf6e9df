import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cableRun,
  cableToPick,
  chooseFuse,
  type Circuit,
  conductorsFor,
  copperForDrop,
  mainFuse,
  METRIC_AREAS,
  planWiring,
  starterCable,
  WIRE_SIZES,
  type WiringRules,
} from '../../src/electrics/index.ts';
import { amperes, metres } from '../../src/units/index.ts';

const RULES: WiringRules = { nominalVolts: 12, insulation: 105, thinnest: '16' };
const circuit = (some: Partial<Circuit> = {}): Circuit => ({
  name: 'Live-well pump',
  purpose: 'pump',
  current: amperes(4),
  run: metres(3),
  drop: 'critical',
  hoursADay: 6,
  continuous: true,
  engineSpace: false,
  bundled: 2,
  ...some,
});

const circuits = fc.record({
  name: fc.constant('any'),
  purpose: fc.constantFrom('pump' as const, 'accessory' as const),
  current: fc.double({ min: 0.05, max: 200, noNaN: true }).map(amperes),
  run: fc.double({ min: 0.1, max: 12, noNaN: true }).map(metres),
  drop: fc.constantFrom('critical' as const, 'general' as const),
  hoursADay: fc.double({ min: 0, max: 24, noNaN: true }),
  continuous: fc.boolean(),
  engineSpace: fc.boolean(),
  bundled: fc.integer({ min: 2, max: 40 }),
});
const rules = fc.record({
  nominalVolts: fc.constantFrom(12, 24),
  insulation: fc.constantFrom(60 as const, 75 as const, 90 as const, 105 as const),
  thinnest: fc.constantFrom('16' as const, '18' as const),
});

describe('a wiring schedule', () => {
  it('gives every circuit a fuse that protects its wire and lets the load through', () => {
    fc.assert(
      fc.property(fc.array(circuits, { maxLength: 12 }), rules, (list, by) => {
        const { rows, refused } = planWiring(list, by);
        expect(rows.length + refused.length).toBe(list.length);
        for (const { fuse, conductor, circuit: one } of rows) {
          expect(fuse).toBeLessThanOrEqual(conductor.ampacity);
          expect(fuse).toBeGreaterThanOrEqual(one.current);
        }
      }),
    );
  });

  it('never loses more voltage than the class of the circuit allows', () => {
    fc.assert(
      fc.property(circuits, rules, (one, by) => {
        for (const { conductor } of planWiring([one], by).rows) {
          expect(conductor.dropShare).toBeLessThanOrEqual(
            (one.drop === 'critical' ? 0.03 : 0.1) + 1e-12,
          );
        }
      }),
    );
  });

  it('never uses a thinner wire for a longer run, a hotter place or a fuller bundle', () => {
    const copperOf = (one: Circuit, by: WiringRules): number =>
      planWiring([one], by).rows[0]?.conductor.areaMm2 ?? Number.POSITIVE_INFINITY;
    fc.assert(
      fc.property(circuits, rules, (one, by) => {
        const here = copperOf(one, by);
        expect(copperOf({ ...one, run: metres(one.run * 1.5) }, by)).toBeGreaterThanOrEqual(here);
        expect(copperOf({ ...one, bundled: one.bundled + 3 }, by)).toBeGreaterThanOrEqual(here);
        expect(copperOf({ ...one, engineSpace: true }, by)).toBeGreaterThanOrEqual(
          copperOf({ ...one, engineSpace: false }, by),
        );
      }),
    );
  });

  it('numbers labels and places from one, and cuts cable for there and back', () => {
    const { rows } = planWiring([circuit(), circuit({ name: 'Bilge pump' })], RULES);
    expect(rows.map(({ label, position, cable }) => [label, position, cable])).toEqual([
      ['01', 1, 6],
      ['02', 2, 6],
    ]);
  });

  it('cuts from the shelf’s own sizes, and sums what to pick', () => {
    const far = circuit({ name: 'Bilge pump', run: metres(8) });
    const light = circuit({ name: 'Side lights', purpose: 'navigation-lights' });
    const { rows } = planWiring([circuit(), far, light], { ...RULES, stockMm2: [16, 6, 2.5] });
    expect(rows.map(({ conductor, colour }) => [conductor.metricMm2, colour])).toEqual([
      [2.5, 'brown'],
      [6, 'brown'],
      [2.5, 'dark {grey}'],
    ]);
    expect(cableToPick([...rows, ...rows])).toEqual([
      { metricMm2: 2.5, awg: '16', colour: 'brown', length: 6 },
      { metricMm2: 2.5, awg: '16', colour: 'dark {grey}', length: 6 },
      { metricMm2: 6, awg: '12', colour: 'brown', length: 16 },
    ]);
  });

  it('refuses a circuit for which the shelf has no cable thick enough', () => {
    const thick = circuit({ current: amperes(60), run: metres(6) });
    expect(planWiring([thick], { ...RULES, stockMm2: [2.5, 6] })).toMatchObject({
      rows: [],
      refused: [{ circuit: thick }],
    });
  });

  it('refuses, with a reason, what no single wire can carry and what has no current or length', () => {
    const bad = [
      circuit({ current: amperes(900) }),
      circuit({ current: amperes(0) }),
      circuit({ run: metres(0) }),
      circuit({ current: amperes(Number.NaN) }),
      circuit({ run: metres(Number.POSITIVE_INFINITY) }),
    ];
    const { rows, refused } = planWiring(bad, RULES);
    expect(rows).toEqual([]);
    expect(refused.map(({ reason }) => reason)).toEqual([
      expect.stringContaining('no single conductor'),
      ...Array.from({ length: 4 }, () => 'current and run must be above 0'),
    ]);
  });

  it('takes a thicker wire when no fuse is sold between the load and the wire', () => {
    const hot = circuit({ current: amperes(21), run: metres(0.5), engineSpace: true });
    const [row] = planWiring([{ ...hot, continuous: false }], RULES).rows;
    expect(conductorsFor(hot, RULES)[0]).toMatchObject({ awg: '16', ampacity: 21.25 });
    expect(row).toMatchObject({ conductor: { awg: '14', governedBy: 'fuse' }, fuse: 25 });
  });

  it('says what governs: drop, ampacity or the thinnest that the yard uses', () => {
    const governs = (one: Circuit): unknown => conductorsFor(one, RULES)[0]?.governedBy;
    expect(governs(circuit({ current: amperes(10), run: metres(3.048) }))).toBe('drop');
    expect(governs(circuit({ current: amperes(40), run: metres(0.3) }))).toBe('ampacity');
    expect(governs(circuit({ current: amperes(0.5), run: metres(1) }))).toBe('thinnest');
  });

  it('respects the fuse that the device allows', () => {
    const limited = circuit({ current: amperes(4), largestFuse: amperes(3) });
    expect(chooseFuse(limited, { ampacity: amperes(25), awg: '16' })).toHaveProperty('notComputed');
  });
});

describe('conductors', () => {
  it('carry more the thicker they are, in both lists', () => {
    const ascends = (list: readonly number[]): boolean =>
      list.every((value, index) => index === 0 || value > (list[index - 1] ?? 0));
    expect(ascends(WIRE_SIZES.map(({ circularMils }) => circularMils))).toBe(true);
    expect(ascends(WIRE_SIZES.map(({ ampacity }) => ampacity[105]))).toBe(true);
    expect(ascends(METRIC_AREAS)).toBe(true);
  });

  it('hold at least as much copper in metric as in their gauge', () => {
    const all = conductorsFor(circuit({ current: amperes(0.2), run: metres(0.5) }), RULES);
    expect(all.length).toBeGreaterThan(10);
    expect(all.every(({ areaMm2, metricMm2 }) => metricMm2 >= areaMm2)).toBe(true);
  });

  it('need copper in proportion to current and length', () => {
    const needed = (current: number, length: number): number =>
      copperForDrop({
        current: amperes(current),
        roundTrip: metres(length),
        allowedVolts: 0.36,
      });
    expect(needed(20, 6)).toBeCloseTo(2 * needed(10, 6), 9);
    expect(needed(10, 12)).toBeCloseTo(2 * needed(10, 6), 9);
  });
});

describe('a cable run', () => {
  it('follows the axes, with its allowance', () => {
    const at = (x: number, y: number, z: number) => ({
      x: metres(x),
      y: metres(y),
      z: metres(z),
    });
    expect(cableRun(at(0.3, 0.2, 0.2), at(2, -0.3, 0.6), 1.1)).toBeCloseTo(2.6 * 1.1, 12);
  });
});

describe('the main fuse and the starter cable', () => {
  it('sits within 7 inches, or within 72 in a sheath', () => {
    const inches = (count: number) => ({ rating: 50, within: expect.closeTo(count * 0.0254, 12) });
    expect(mainFuse(amperes(45), amperes(80), false)).toEqual(inches(7));
    expect(mainFuse(amperes(45), amperes(80), true)).toEqual(inches(72));
    expect(mainFuse(amperes(76), amperes(78), false)).toHaveProperty('notComputed');
  });

  it('gets thicker with the run and gives up beyond 4/0', () => {
    const cable = (run: number) =>
      starterCable({
        cranking: amperes(175),
        run: metres(run),
        nominalVolts: 12,
        share: 0.1,
      });
    expect(cable(1.5)).toMatchObject({ awg: '8', metricMm2: 10 });
    expect(cable(4)).toMatchObject({ awg: '4', metricMm2: 25 });
    expect(cable(40)).toHaveProperty('notComputed');
  });
});
