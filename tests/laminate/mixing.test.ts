import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  judgeWeighing,
  type MixingInput,
  mixingTable,
  weighGates,
} from '../../src/laminate/index.ts';
import { kilograms } from '../../src/units/index.ts';

const shop: MixingInput = {
  catalyst: { least: 0.01, most: 0.02, density: 1.15 },
  share: 0.015,
  celsius: 18,
  gelMinutes: [
    { celsius: 15, value: 45 },
    { celsius: 20, value: 30 },
  ],
  potShare: 0.5,
  kilogramsAMinute: 0.25,
  largestBatch: kilograms(10),
  batches: [0.5, 1, 2, 5, 8].map(kilograms),
};

describe('a mixing table', () => {
  it('weighs the catalyst, and tells millilitres apart from grams', () => {
    const table = mixingTable(shop);
    const rows = 'rows' in table ? table.rows : [];
    expect(rows.map(({ catalystGrams }) => catalystGrams)).toEqual([7.5, 15, 30, 75, 120]);
    expect(rows[1]?.catalystMillilitres).toBeCloseTo(13.04, 2);
  });

  it('allows no batch that the team cannot lay before its pot life is over', () => {
    const table = mixingTable(shop);
    const { largestBatch, potMinutes, rows } =
      'rows' in table ? table : { largestBatch: 0, potMinutes: 0, rows: [] };
    expect(potMinutes).toBeGreaterThan(15);
    expect(potMinutes).toBeLessThan(22.5);
    expect(largestBatch).toBeCloseTo(potMinutes * 0.25, 12);
    expect(rows.map(({ withinPotLife }) => withinPotLife)).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
    expect(mixingTable({ ...shop, largestBatch: kilograms(2) })).toMatchObject({ largestBatch: 2 });
  });

  it('is not printed for a share or a temperature that the maker does not give', () => {
    for (const bad of [
      { share: 0.009 },
      { share: 0.021 },
      { celsius: 12 },
      { share: Number.NaN },
    ]) {
      expect(mixingTable({ ...shop, ...bad })).toHaveProperty('notComputed');
    }
  });
});

describe('a weigh gate', () => {
  const stages = fc.array(
    fc.record({
      stage: fc.constantFrom('release', 'fit-out', 'wiring', 'engine'),
      mass: fc.double({ min: 0, max: 300, noNaN: true }).map(kilograms),
      spread: fc.double({ min: 0, max: 0.2, noNaN: true }),
    }),
    { minLength: 1, maxLength: 6 },
  );

  it('expects the whole boat at the last stage, and grows less sure on the way', () => {
    fc.assert(
      fc.property(stages, (list) => {
        const gates = weighGates(list, kilograms(0.5));
        const whole = list.reduce((sum, { mass }) => sum + mass, 0);
        expect(gates.at(-1)?.expected).toBeCloseTo(whole, 9);
        gates.reduce((before, { tolerance }) => {
          expect(tolerance).toBeGreaterThanOrEqual(before);
          return tolerance;
        }, 0.5);
      }),
    );
  });

  it('passes its own limits and sends back what is lighter or heavier', () => {
    const [release] = weighGates(
      [{ stage: 'release', mass: kilograms(80), spread: 0.05 }],
      kilograms(3),
    );
    const judge = (measured: number) => release && judgeWeighing(release, kilograms(measured));
    expect(release).toMatchObject({ expected: 80, tolerance: 5, least: 75, most: 85 });
    expect(judge(75)).toMatchObject({ verdict: 'within', difference: -5 });
    expect(judge(74.9)).toMatchObject({ verdict: 'light' });
    expect(judge(85.1)).toMatchObject({ verdict: 'heavy' });
  });
});
