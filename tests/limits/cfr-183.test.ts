import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Flotation,
  levelFlotation,
  MOTOR_WEIGHTS,
  motorWeights,
  outsideLaw,
  peopleAndGear,
  peopleFor,
  personsCapacity,
  powerCapacity,
  type RatedBoat,
  type RatedHull,
  submergedShare,
  weightCapacity,
} from '../../src/limits/index.ts';
import {
  cubicMetres,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  radians,
} from '../../src/units/index.ts';
import { boatOf, FOOT, hullOf, inFeet, POUND } from './boats.ts';

const horsepower = (hull: RatedHull): unknown => {
  const capacity = powerCapacity(hull);
  return 'notComputed' in capacity ? capacity.notComputed : capacity.horsepower;
};
const tiller = { steering: 'tiller' } as const;
const flat = { deadrise: radians(0), ...tiller } as const;

describe('horsepower by 33 CFR 183.53', () => {
  it('steps at each edge of the table: just inside and just outside', () => {
    const edges = [35, 35.49, 35.5, 39.49, 39.5, 42.49, 42.5, 45.49, 45.5, 52.4];
    expect(edges.map((factor) => horsepower(inFeet(factor / 5, 5)))).toEqual([
      3, 3, 5, 5, 7.5, 7.5, 10, 10, 15, 15,
    ]);
  });

  it('is as many watts as horsepower of 550 foot-pounds a second', () => {
    const capacity = powerCapacity(inFeet(7, 5));
    if ('notComputed' in capacity) throw new Error(capacity.notComputed);
    expect(capacity.power / capacity.horsepower).toBeCloseTo(745.6999, 3);
  });

  it('reads the table to a factor of 52.5 and the formulas above', () => {
    expect(horsepower(inFeet(10.5, 5, tiller))).toBe(15);
    expect(horsepower(inFeet(10.52, 5))).toBe(20);
    expect(horsepower(inFeet(10.52, 5, tiller))).toBe(20);
    expect(horsepower(inFeet(10.52, 5, flat))).toBe(15);
  });

  it('leaves a multiple of 5 as it is', () => {
    expect(horsepower(inFeet(14, 5, flat))).toBe(20);
    expect(horsepower(inFeet(15, 7, { steering: 'remote' }))).toBe(120);
  });

  it('wants a transom of 20 in for the remote formula', () => {
    const at = (inches: number) =>
      horsepower(inFeet(16, 6.5, { transomHeight: metres(inches * 0.0254) }));
    expect(at(20)).toBe(120);
    expect(at(19.9)).toBe(60);
  });

  it('has no step below 3 hp', () => {
    expect(horsepower(inFeet(6, 5, flat))).toMatch(/no step below 3 hp/);
    expect(horsepower(inFeet(6, 5, tiller))).toBe(3);
  });

  it('takes the beam aft where the transom is not a full one', () => {
    const narrow = { beam: metres(2), transomBeam: metres(0.99), afterBeam: metres(1.7) };
    const full = { ...narrow, transomBeam: metres(1.01) };
    expect(horsepower(hullOf({ ...narrow, length: metres(5) }))).toBe(95);
    expect(horsepower(hullOf({ ...full, length: metres(5) }))).toBe(20);
  });

  it('is not required from 20 ft on, nor for boats of several hulls', () => {
    expect(horsepower(inFeet(19.99, 7))).toBe(190);
    expect(horsepower(inFeet(20, 7))).toMatch(/^not required/);
    expect(outsideLaw(hullOf({ monohull: false }))).toMatch(/monohull/);
    expect(outsideLaw(hullOf({ length: metres(Number.NaN) }))).toMatch(/no length/);
    expect(horsepower(hullOf({ transomBeam: metres(Number.NaN) }))).toMatch(/no width/);
    expect(weightCapacity(boatOf(), Number.NaN)).toHaveProperty('notComputed');
  });

  it('never falls when the boat grows, whatever her bottom and steering', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 19, noNaN: true }),
        fc.constantFrom<Partial<RatedHull>>({}, tiller),
        (length, kind) => {
          const less = Number(horsepower(inFeet(length, 5.5, kind)));
          expect(Number(horsepower(inFeet(length + 0.5, 5.5, kind)))).toBeGreaterThanOrEqual(less);
        },
      ),
    );
  });
});

describe('the table of motor weights', () => {
  it('keeps its own rules in each row', () => {
    for (const row of MOTOR_WEIGHTS) {
      expect(Math.abs(row.running - 1.05 * row.dry)).toBeLessThanOrEqual(0.5);
      expect(row.total).toBe(row.running + row.controls + row.battery + row.fuel);
      expect(row.swamped / row.running).toBeGreaterThan(0.84);
      expect(row.swamped / row.running).toBeLessThan(0.856);
    }
    expect(MOTOR_WEIGHTS).toHaveLength(14);
  });

  const total = (power: number, low = false): unknown => {
    const row = motorWeights(power, low);
    return 'notComputed' in row ? row.notComputed : row.total;
  };

  it('goes over to the next row just above the end of one', () => {
    expect([total(34.9), total(34.91), total(350), total(2), total(2.01)]).toEqual([
      350, 459, 1117, 32, 44,
    ]);
  });

  it('ends at 350 hp and begins above nothing', () => {
    expect(total(350.1)).toMatch(/350 hp/);
    expect(total(0)).toMatch(/350 hp/);
    expect(total(Number.NaN)).toMatch(/350 hp/);
  });

  it('takes a tenth off the dry weight for a low transom', () => {
    expect(motorWeights(40, true)).toMatchObject({
      dry: 257,
      running: 270,
      swamped: 230,
      total: 429,
    });
  });
});

describe('weight and persons capacity', () => {
  const inPounds = (mass: unknown): number => Number(mass) / POUND;
  const pounds = (displaced: number, boat: number, change: Partial<RatedBoat> = {}): RatedBoat =>
    boatOf({
      hull: inFeet(16, 6),
      light: kilograms(boat * POUND),
      greatestDisplacement: kilograms(displaced * POUND),
      ...change,
    });

  it('is a fifth of what is to spare, and three tenths at 2 hp', () => {
    expect(inPounds(weightCapacity(pounds(4500, 900), 40))).toBeCloseTo(720, 9);
    expect(inPounds(weightCapacity(pounds(4500, 900), 2.01))).toBeCloseTo(720, 9);
    expect(inPounds(weightCapacity(pounds(4500, 900), 2))).toBeCloseTo(1080, 9);
  });

  it('counts full permanent tanks as boat', () => {
    const fixedFuel = kilograms(100 * POUND);
    expect(inPounds(weightCapacity(pounds(4500, 900, { fixedFuel }), 40))).toBeCloseTo(700, 9);
  });

  it('is not computed for a boat that does not carry herself', () => {
    expect(weightCapacity(pounds(900, 900), 40)).toHaveProperty('notComputed');
    expect(typeof weightCapacity(pounds(901, 900), 40)).toBe('number');
  });

  it('leaves nothing for people under too heavy a motor', () => {
    expect(personsCapacity(pounds(3195, 900), 40)).toHaveProperty('notComputed');
    expect(personsCapacity(pounds(3200, 900), 40)).toHaveProperty('people');
    expect(personsCapacity(pounds(4500, 900), 400)).toHaveProperty('notComputed');
  });

  it('asks for the side test below 550 lb only, and then takes the lesser', () => {
    const capacity = (spare: number, sideTest?: number) => {
      const tested = sideTest === undefined ? {} : { sideTest: kilograms(sideTest * POUND) };
      return personsCapacity(pounds(900 + 5 * (spare + 459), 900, tested), 40);
    };
    expect(capacity(550, 100)).toMatchObject({ needsSideTest: false, people: 4 });
    expect(capacity(549.9)).toMatchObject({ needsSideTest: true, people: 4 });
    expect(capacity(549.9, 100)).toMatchObject({ needsSideTest: true, people: 1 });
    expect(capacity(549.9, 400)).toMatchObject({ needsSideTest: true, people: 4 });
  });

  it('takes 90 % less 25 lb to 2 hp', () => {
    const capacity = personsCapacity(pounds(4500, 900), 2);
    if ('notComputed' in capacity) throw new Error(capacity.notComputed);
    expect(inPounds(capacity.mass)).toBeCloseTo(0.9 * 1080 - 25, 9);
  });

  it('rounds half a person up', () => {
    expect([peopleFor(602.5), peopleFor(602.4)]).toEqual([5, 4]);
  });
});

describe('foam for level flotation', () => {
  const computed = (result: ReturnType<typeof levelFlotation>): Flotation => {
    if ('notComputed' in result) throw new Error(result.notComputed);
    return result;
  };
  const foamOf = (density: number, fitted = 0) => ({
    density: kilogramsPerCubicMetre(density),
    fitted: cubicMetres(fitted),
  });
  const flotation = (change: Partial<Parameters<typeof levelFlotation>[0]> = {}) =>
    levelFlotation({
      parts: [{ name: 'laminate', mass: kilograms(1000 * POUND), share: 0.33 }],
      horsepower: 40,
      personsCapacity: kilograms(550 * POUND),
      weightCapacity: kilograms(1000 * POUND),
      length: metres(5),
      foam: foamOf((2 * POUND) / FOOT ** 3),
      ...change,
    });

  it('carries boat, swamped motor, half the people, over 60.4 lb a cubic foot', () => {
    const result = computed(flotation());
    const lift = 330 + (255 + 14 + 25) + 275;
    expect(result.lift.total / POUND).toBeCloseTo(lift, 9);
    expect(result.foam.total / FOOT ** 3).toBeCloseTo(lift / 60.4, 9);
    expect(result.caution).toContain('verify by a swamping test');
  });

  it('is still needed as far as it is not fitted', () => {
    const needed = computed(flotation({ foam: foamOf(32) }));
    const part = computed(flotation({ foam: foamOf(32, needed.foam.total - 0.1) }));
    const whole = computed(flotation({ foam: foamOf(32, needed.foam.total + 0.1) }));
    expect([part.stillNeeded, whole.stillNeeded]).toEqual([expect.closeTo(0.1, 12), 0]);
    expect(needed.stillNeeded).toBe(needed.foam.total);
  });

  it('is outside the law from 20 ft on, and says so', () => {
    expect(computed(flotation({ length: metres(6.09) })).applies).toBe(true);
    expect(computed(flotation({ length: metres(6.096) })).applies).toBe(false);
  });

  it('is less for a transom of 20 in, by what the swamped motor weighs less', () => {
    const [high, low] = [false, true].map(
      (lowTransom) => computed(flotation({ lowTransom })).lift.propulsion / POUND,
    );
    expect((high ?? 0) - (low ?? 0)).toBeCloseTo(255 - 230, 9);
  });

  it('counts people without a jump at 550 lb', () => {
    const lift = (pounds: number) =>
      computed(
        flotation({ personsCapacity: kilograms(pounds * POUND), weightCapacity: kilograms(0) }),
      ).lift.people;
    expect(lift(550.001) - lift(549.999)).toBeLessThan(1e-3);
    expect(lift(1100) / lift(550)).toBeCloseTo(343.75 / 275, 9);
  });

  it('credits what floats', () => {
    expect(submergedShare(0.55)).toBeLessThan(0);
    expect(submergedShare(1)).toBe(0);
  });

  it('counts gear only while capacity is left for it', () => {
    expect(peopleAndGear(700, 700)).toBe(peopleAndGear(700, -500));
    expect(peopleAndGear(700, 704)).toBe(peopleAndGear(700, 700) + 1);
  });

  it('is not computed for foam as heavy as water, nor for a motor in no table', () => {
    expect(flotation({ foam: foamOf(1000) })).toHaveProperty('notComputed');
    expect(flotation({ foam: foamOf(900) })).toHaveProperty('foam');
    expect(flotation({ horsepower: 400 })).toHaveProperty('notComputed');
  });
});
