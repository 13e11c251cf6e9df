import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bilgeFlow,
  CHEMISTRIES,
  energyBudget,
  hoursToCharge,
  hoursUntilFlat,
  sizeBank,
} from '../../src/electrics/index.ts';
import { amperes, metres } from '../../src/units/index.ts';

const ampereHoursPerBattery = 100;

describe('a battery bank', () => {
  const bank = { ratedAmpereHours: 100, ratingHours: 20, peukert: 1.2 };

  it('lasts its rating at the rated current, and gives less the faster it is drained', () => {
    expect(hoursUntilFlat(bank, amperes(5))).toBeCloseTo(20, 12);
    fc.assert(
      fc.property(fc.double({ min: 5.01, max: 200, noNaN: true }), (current) => {
        const hours = hoursUntilFlat(bank, amperes(current));
        expect(typeof hours === 'number' && hours * current < 100).toBe(true);
      }),
    );
  });

  it('is never flat when nothing draws', () => {
    expect(hoursUntilFlat(bank, amperes(0))).toHaveProperty('notComputed');
  });

  it('is no larger than it need be and carries the days asked for', () => {
    const budget = fc.double({ min: 1, max: 400, noNaN: true });
    fc.assert(
      fc.property(budget, fc.integer({ min: 1, max: 4 }), (dailyAmpereHours, days) => {
        const choice = sizeBank({
          dailyAmpereHours,
          days,
          usable: CHEMISTRIES.lifepo4.usable,
          batteryAmpereHours: ampereHoursPerBattery,
        });
        const batteries = 'batteries' in choice ? choice.batteries : Number.NaN;
        const lasts = (count: number): number =>
          (count * ampereHoursPerBattery * 0.8) / dailyAmpereHours;
        expect(lasts(batteries)).toBeGreaterThanOrEqual(days - 1e-6);
        const oneLess = lasts(batteries - 1);
        expect(oneLess).toBeLessThan(days);
      }),
    );
  });

  it('does not grow by one for a rounding error', () => {
    const choice = { dailyAmpereHours: 80, days: 3, usable: 0.8, batteryAmpereHours: 100 };
    expect(sizeBank(choice)).toMatchObject({ batteries: 3, hoursOfAutonomy: 72 });
    expect(sizeBank({ ...choice, usable: 0 })).toHaveProperty('notComputed');
  });

  it('charges in the time that the sources leave over, or never', () => {
    const charge = { used: 40, charging: amperes(15), drawn: amperes(5), efficiency: 0.8 };
    expect(hoursToCharge(charge)).toBe(5);
    expect(hoursToCharge({ ...charge, drawn: amperes(15) })).toHaveProperty('notComputed');
  });
});

describe('the energy budget', () => {
  it('sums current times hours, and names peak and average', () => {
    const loads = [
      { current: amperes(4), hoursADay: 6 },
      { current: amperes(1), hoursADay: 24 },
    ];
    expect(energyBudget(loads, 12)).toEqual({
      ampereHours: 48,
      wattHours: 576,
      peak: 5,
      average: 2,
    });
  });
});

describe('pumps', () => {
  it('deliver less the higher they lift, and nothing from the highest head', () => {
    expect(bilgeFlow(1900, metres(3), metres(0))).toBe(1900);
    expect(bilgeFlow(1900, metres(3), metres(1.5))).toBeCloseTo(950, 9);
    expect(bilgeFlow(1900, metres(3), metres(3))).toBe(0);
    expect(bilgeFlow(1900, metres(3), metres(9))).toBe(0);
  });
});
