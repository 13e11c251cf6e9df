import { describe, expect, it } from 'vitest';
import {
  brakeFaults,
  type BrakeInput,
  type BrakeNeed,
  brakesNeeded,
  type Jurisdiction,
  type TrailerBrakes,
} from '../../src/tow/index.ts';
import { kilograms } from '../../src/units/index.ts';

function need(place: Jurisdiction, total: number, more: Partial<BrakeInput> = {}): BrakeNeed {
  const input = { total: kilograms(total), onBall: kilograms(0), axles: 1, ...more };
  const result = brakesNeeded(place, input);
  if ('notComputed' in result) throw new Error(result.notComputed);
  return result;
}
const unknown = (place: Jurisdiction, total: number): boolean =>
  'notComputed' in brakesNeeded(place, { total: kilograms(total), onBall: kilograms(0), axles: 1 });

describe('brakes in Australia', () => {
  it('are counted by the mass on the axles, and advised by the stricter reading', () => {
    const loaded = need('AU', 800, { onBall: kilograms(80) });
    expect(loaded).toMatchObject({ counted: 720, braked: 'none', advised: 'one axle' });
    expect(loaded.notes.join()).toContain('with the ball load');
    const light = need('AU', 750, { onBall: kilograms(75) });
    expect(light).toMatchObject({ braked: 'none', advised: 'none', notes: [] });
  });

  it('are needed on a tandem of any mass', () => {
    expect(need('AU', 500, { axles: 2 }).braked).toBe('one axle');
    expect(need('AU', 500).braked).toBe('none');
  });

  it('must not be over-run brakes above 2,000 kg, and must come on at a breakaway', () => {
    expect(need('AU', 2000)).toMatchObject({ overRun: true, breakaway: false });
    expect(need('AU', 2000.1)).toMatchObject({ overRun: false, breakaway: true });
  });

  it('say what is left before more of them are asked for', () => {
    const left = (total: number, more: Partial<BrakeInput> = {}) =>
      need('AU', total, more).margins.map((margin) => margin.left);
    expect(left(800, { onBall: kilograms(80) })).toEqual([30]);
    expect(left(1900)).toEqual([100]);
    expect(left(500, { axles: 2 })).toEqual([1500]);
  });

  it('are in another rule book above 4,500 kg', () => {
    expect([unknown('AU', 4500), unknown('AU', 4500.1)]).toEqual([false, true]);
  });
});

describe('brakes in New Zealand', () => {
  it('are advised above three quarters of the vehicle, and not at three quarters', () => {
    const vehicle = kilograms(2000);
    expect(need('NZ', 1500, { vehicle }).advised).toBe('none');
    expect(need('NZ', 1500.1, { vehicle })).toMatchObject({ braked: 'none', advised: 'one axle' });
    expect(need('NZ', 1500.1).notes).toHaveLength(1);
  });

  it('end at 3,500 kg', () => {
    expect([unknown('NZ', 3500), unknown('NZ', 3500.1)]).toEqual([false, true]);
  });
});

describe('brakes in the United Kingdom and the Union', () => {
  it('say what is left to half the car’s mass too, while none are needed', () => {
    const vehicle = kilograms(1200);
    expect(need('UK-EU', 500, { vehicle }).margins.map(({ left }) => left)).toEqual([250, 100]);
    expect(need('UK-EU', 700, { vehicle }).margins).toHaveLength(1);
  });

  it('are needed above half the mass of the car, and not at half', () => {
    const vehicle = kilograms(1200);
    expect(need('UK-EU', 600, { vehicle }).braked).toBe('none');
    expect(need('UK-EU', 600.1, { vehicle }).braked).toBe('all wheels');
    expect(need('UK-EU', 700).notes.join()).toContain('twice the mass');
    expect(need('UK-EU', 800).notes).toEqual([]);
  });
});

describe('brakes in the United States', () => {
  const POUND = 0.45359237;

  it('are advised from 1,500 lb, since some states ask for them', () => {
    expect(need('US', 1500 * POUND - 0.01)).toMatchObject({ braked: 'none', advised: 'none' });
    expect(need('US', 1500 * POUND + 0.01)).toMatchObject({
      braked: 'none',
      advised: 'all wheels',
    });
    expect(need('US', 3001 * POUND)).toMatchObject({ braked: 'all wheels', advised: 'all wheels' });
  });
});

describe('the brakes of a trailer', () => {
  const none: TrailerBrakes = { kind: 'none', braked: 'none', breakaway: false };
  const overRun: TrailerBrakes = { kind: 'over-run', braked: 'one axle', breakaway: false };
  const electric: TrailerBrakes = { kind: 'electric', braked: 'all wheels', breakaway: true };

  it('suffice just to the threshold and not above it', () => {
    expect(brakeFaults(need('AU', 750), none)).toEqual([]);
    expect(brakeFaults(need('AU', 750.1), none)).toHaveLength(1);
    expect(brakeFaults(need('AU', 2000), overRun)).toEqual([]);
    expect(brakeFaults(need('AU', 2000.1), overRun)).toHaveLength(3);
    expect(brakeFaults(need('AU', 2000.1), electric)).toEqual([]);
  });

  it('are not judged for a trailer without mass', () => {
    expect(unknown('AU', 0)).toBe(true);
    expect(unknown('AU', Number.NaN)).toBe(true);
  });
});
