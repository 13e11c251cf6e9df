import { describe, expect, it } from 'vitest';
import {
  type BallLoad,
  couplingForce,
  type Margin,
  roadLength,
  roadLengthMargin,
  roomMargins,
  roadWidth,
  roofMargins,
  runningGearMargins,
  type VehicleLimits,
  vehicleMargins,
  winchPostMargins,
} from '../../src/tow/index.ts';
import { kilograms, metres } from '../../src/units/index.ts';

const holds = (margins: readonly Margin[]) => margins.map((margin) => margin.holds);

describe('axles and tyres', () => {
  const gear = { axles: 2, axleRating: kilograms(700), tyreRating: kilograms(340) };
  const at = (mass: number) => {
    const margins = runningGearMargins(kilograms(mass), gear);
    if ('notComputed' in margins) throw new Error(margins.notComputed);
    return margins;
  };

  it('hold at their ratings and not just above', () => {
    expect(holds(at(1360))).toEqual([true, true]);
    expect(holds(at(1360.5))).toEqual([true, false]);
    expect(holds(at(1400))).toEqual([true, false]);
    expect(holds(at(1400.5))).toEqual([false, false]);
  });

  it('are not computed for a trailer without axles', () => {
    expect(runningGearMargins(kilograms(1), { ...gear, axles: 0 })).toHaveProperty('notComputed');
  });
});

describe('the road', () => {
  it('takes a width of 2.5 m in Australia and no more, of boat or trailer', () => {
    expect(roadWidth(metres(2.5), metres(2), 'AU').holds).toBe(true);
    expect(roadWidth(metres(2.501), metres(2), 'AU').holds).toBe(false);
    expect(roadWidth(metres(2), metres(2.501), 'AU').holds).toBe(false);
  });

  it('is taken up to the outboard where that stands out behind the trailer', () => {
    expect(roadLength(metres(6), metres(0.2), metres(5.4), metres(0.6))).toBeCloseTo(6.2, 12);
    expect(roadLength(metres(7), metres(0.2), metres(5.4), metres(0.6))).toBe(7);
  });
});

describe('length and winch post', () => {
  it('hold at the road’s limit and at the room that there is, and not above', () => {
    expect(holds([12.5, 12.501].map((length) => roadLengthMargin(length, 'AU')))).toEqual([
      true,
      false,
    ]);
    expect(holds([6.5, 6.501].flatMap((length) => roomMargins(length, metres(6.5))))).toEqual([
      true,
      false,
    ]);
    expect(roomMargins(6.5, undefined)).toEqual([]);
  });

  it('hold where the trailer lets the post stand, both ends among them', () => {
    const range = { from: metres(0.8), to: metres(1.5) };
    expect([0.79, 0.8, 1.5, 1.51].map((at) => holds(winchPostMargins(metres(at), range)))).toEqual([
      [false, true],
      [true, true],
      [true, true],
      [true, false],
    ]);
  });
});

describe('the towing vehicle', () => {
  const load = (total: number, onBall: number): BallLoad => ({
    total: kilograms(total),
    onBall: kilograms(onBall),
    onAxles: kilograms(total - onBall),
    share: onBall / total,
  });
  const limits: VehicleLimits = {
    braked: kilograms(1600),
    unbraked: kilograms(750),
    onBall: kilograms(100),
    together: { limit: kilograms(3400), vehicle: kilograms(1900) },
  };

  it('may tow its limits and no more', () => {
    expect(holds(vehicleMargins(load(1500, 100), true, limits))).toEqual([true, true, true]);
    expect(holds(vehicleMargins(load(1500.1, 100.1), true, limits))).toEqual([true, false, false]);
    expect(holds(vehicleMargins(load(1600.1, 100), true, limits))).toEqual([false, true, false]);
  });

  it('may tow less without brakes', () => {
    expect(holds(vehicleMargins(load(750, 70), false, limits))).toEqual([true, true, true]);
    expect(holds(vehicleMargins(load(750.1, 70), false, limits))).toEqual([false, true, true]);
  });

  it('is not held to what is not known', () => {
    const { braked, unbraked, onBall } = limits;
    expect(vehicleMargins(load(1500, 100), true, { braked, unbraked, onBall })).toHaveLength(2);
  });

  it('and its trailer share the coupling’s force alike', () => {
    const [one, other] = [kilograms(2000), kilograms(1400)];
    expect(couplingForce(one, other)).toBe(couplingForce(other, one));
    expect(couplingForce(one, kilograms(0))).toHaveProperty('notComputed');
  });
});

describe('a boat on the roof', () => {
  it('counts the rack, and holds at the limit and not just above', () => {
    const input = { boat: kilograms(60), rack: kilograms(15), roof: kilograms(75) };
    expect(holds(roofMargins(input))).toEqual([true]);
    expect(holds(roofMargins({ ...input, boat: kilograms(60.1) }))).toEqual([false]);
    expect(holds(roofMargins({ ...input, bars: kilograms(60) }))).toEqual([true, true]);
    expect(holds(roofMargins({ ...input, bars: kilograms(59.9) }))).toEqual([true, false]);
  });
});
