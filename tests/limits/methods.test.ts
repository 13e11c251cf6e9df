import { describe, expect, it } from 'vitest';
import {
  australianPeople,
  governingLimit,
  isoLoad,
  isoPeople,
  isoPower,
  plateFacts,
  powerCapacity,
  rateBoat,
  type RatedHull,
} from '../../src/limits/index.ts';
import { cubicMetres, kilograms, metres, radians, watts } from '../../src/units/index.ts';
import { boatOf, DEGREE, hullOf, POUND } from './boats.ts';

describe('a boat rated by several methods', () => {
  it('has a rating for each, in the order asked for, each an estimate with a test named', () => {
    const ratings = rateBoat(boatOf(), ['iso', 'cfr-183', 'australian']);
    expect(ratings.map(({ method }) => method)).toEqual(['iso', 'cfr-183', 'australian']);
    for (const { caution, source } of ratings) {
      expect(caution).toMatch(/^estimated to .*; verify by /);
      expect(source).not.toBe('');
    }
  });

  it('says what its symbols stand for', () => {
    for (const { symbols } of rateBoat(boatOf(), ['iso', 'cfr-183', 'australian'])) {
      expect(symbols.length).toBeGreaterThan(0);
      for (const [symbol, meaning] of symbols) expect([symbol, meaning]).not.toContain('');
    }
  });

  it('asks for the side test below 550 lb of people, until it is made, and not at 550 lb', () => {
    // 40 hp stand for 459 lb: 1,009 lb of weight capacity leave 550 lb, 1,008 lb leave 549.
    const besides = (capacity: number, sideTest?: number) =>
      rateBoat(
        boatOf({
          light: kilograms(500 * POUND),
          greatestDisplacement: kilograms((500 + 5 * capacity) * POUND),
          engine: { power: watts(40 * 745.699872), mass: kilograms(98) },
          ...(sideTest !== undefined && { sideTest: kilograms(sideTest * POUND) }),
        }),
        ['cfr-183'],
      )[0]?.besides;
    expect(besides(1009)).toEqual([]);
    expect(besides(1008)).toHaveLength(1);
    expect(besides(1008, 400)).toEqual([]);
  });

  it('names the seats when they bind, and what would allow more', () => {
    const [rating] = rateBoat(boatOf({ seats: 2 }), ['cfr-183']);
    expect(rating?.governing?.words).toBe('limited by seats (by buoyancy: 6)');
    expect(rating?.people).toBe(2);
  });

  it('gives what the people may weigh where the law wants that on the plate', () => {
    const [law, iso] = rateBoat(boatOf(), ['cfr-183', 'iso']);
    // (3,200 - 230) kg / 5 = 1,309.6 lb, less 459 lb for a motor of 37 kW (49.6 hp): 850.6 lb.
    expect((law?.peopleLoad ?? 0) / POUND).toBeCloseTo(850.6, 0);
    expect(iso?.peopleLoad).toBeUndefined();
  });

  it('names the buoyancy when that binds', () => {
    const [rating] = rateBoat(boatOf({ seats: 9 }), ['cfr-183']);
    expect(rating?.governing?.words).toBe('limited by buoyancy (by seats: 9)');
  });

  it('counts the motor that the boat is rated for, and at most the one that the law allows', () => {
    const people = (kilowatts: number) => {
      const engine = { power: watts(kilowatts * 1000), mass: kilograms(104) };
      return rateBoat(boatOf({ seats: 9, engine }), ['cfr-183'])[0]?.people;
    };
    expect(people(37)).toBe(6);
    expect(people(52)).toBe(5);
    expect(people(500)).toBe(5);
  });

  it('does not invent what the bought text keeps', () => {
    const [rating] = rateBoat(boatOf(), ['australian']);
    expect(rating?.power).toHaveProperty('notComputed');
  });

  it('says that the American law asks nothing of a boat of 20 ft', () => {
    const [rating] = rateBoat(boatOf({ hull: hullOf({ length: metres(6.1) }) }), ['cfr-183']);
    expect(rating?.people).toEqual({
      notComputed: 'not required by 33 CFR 183: the boat is 20 ft or longer',
    });
    expect(rating?.load).toHaveProperty('notComputed');
    expect(rating?.power).toHaveProperty('notComputed');
    expect(rating?.governing).toBeUndefined();
  });

  it('leaves less for the load when a fixed tank is full', () => {
    const loads = (litres: number) =>
      rateBoat(boatOf({ fixedFuel: kilograms(litres) }), ['iso', 'australian']).map(
        (one) => one.load,
      );
    expect(loads(0)).toEqual([1150 - 230 - 104, 1150 - 230]);
    expect(loads(40)).toEqual([1150 - 230 - 104 - 40, 1150 - 230 - 40]);
  });

  it('gives no load to a boat that has no freeboard to spare', () => {
    const sunk = boatOf({ loadedDisplacement: kilograms(334) });
    for (const { load, people } of rateBoat(sunk, ['iso', 'australian'])) {
      expect(load).toHaveProperty('notComputed');
      expect(people).toHaveProperty('notComputed');
    }
    const [floating] = rateBoat(boatOf({ loadedDisplacement: kilograms(335) }), ['iso']);
    expect(floating?.load).toBe(1);
  });
});

describe('the limit that binds', () => {
  it('is the least, and all of them when several are', () => {
    const governing = governingLimit([
      { name: 'seats', people: 4 },
      { name: 'buoyancy', people: 6 },
      { name: 'the shop’s rating', people: 4 },
      { name: 'freeboard', people: 5 },
    ]);
    expect(governing?.words).toBe('limited by seats and the shop’s rating (by freeboard: 5)');
  });

  it('stands alone when all are equal', () => {
    expect(governingLimit([{ name: 'seats', people: 4 }])?.words).toBe('limited by seats');
  });
});

describe('load and people in the manner of ISO', () => {
  const input = {
    people: 4,
    gear: kilograms(50),
    fixedFuel: cubicMetres(0.06),
    portableFuel: cubicMetres(0.025),
    fuelDensity: 740,
    ballastWater: kilograms(100),
  };

  it('counts fixed fuel in the load and not on the plate', () => {
    const { greatest, onPlate } = isoLoad(input);
    expect(greatest - onPlate).toBeCloseTo(0.95 * 60 * 0.74, 9);
    expect(onPlate).toBeCloseTo(300 + 50 + 0.95 * 25 * 0.74 + 100, 9);
  });

  it('counts a child half', () => {
    expect(isoLoad({ ...input, children: 2 }).greatest - isoLoad(input).greatest).toBe(75);
  });

  it('takes another person just at 95 kg more and not just below', () => {
    expect([isoPeople(kilograms(380)), isoPeople(kilograms(379.9))]).toEqual([4, 3]);
    expect(isoPeople(kilograms(-10))).toBe(0);
  });

  it('takes another person of the Australian reckoning just at 90 kg more', () => {
    expect(australianPeople(kilograms(530), kilograms(260))).toBe(3);
    expect(australianPeople(kilograms(529.9), kilograms(260))).toBe(2);
    expect(australianPeople(kilograms(100), kilograms(260))).toBe(0);
  });
});

describe('power in the manner of ISO 11592-1', () => {
  const kilowatts = (change: Partial<RatedHull>): number => {
    const result = isoPower(hullOf(change));
    return 'notComputed' in result ? Number.NaN : result.power / 1000;
  };
  const of = (factor: number, change: Partial<RatedHull> = {}) =>
    kilowatts({ length: metres(factor / 1.7), ...change });

  it('changes its formula just above a factor of 5.1', () => {
    expect(of(5.1)).toBeCloseTo(5.4762 * 5.1 - 12.929, 9);
    expect(of(5.11)).toBeCloseTo(16 * 5.11 - 67, 9);
    expect(of(5.11, { steering: 'tiller' })).toBeCloseTo(6.4 * 5.11 - 19, 9);
  });

  it('asks for the avoidance test above 7 knots times the root of the length, and for no boat without size', () => {
    const fast = isoPower(hullOf({ length: metres(5.5) }));
    if ('notComputed' in fast) throw new Error(fast.notComputed);
    expect(fast.testAbove / (1852 / 3600)).toBeCloseTo(7 * Math.sqrt(5.5), 9);
    expect(isoPower(hullOf({ length: metres(0) }))).toHaveProperty('notComputed');
    expect(isoPower(hullOf({ length: metres(8) }))).toHaveProperty('notComputed');
  });

  it('takes a bottom of less than 5° for flat', () => {
    const flat = { steering: 'tiller', deadrise: radians(4.99 * DEGREE) } as const;
    expect(of(7, flat)).toBeCloseTo(4.2 * 7 - 11, 9);
    expect(of(7, { ...flat, deadrise: radians(5 * DEGREE) })).toBeCloseTo(6.4 * 7 - 19, 9);
    expect(of(5, flat)).toBeCloseTo(6 * 5 - 18.1, 9);
  });

  it('is computed just below 8 m and not at 8 m, nor where the formula gives none', () => {
    expect(kilowatts({ length: metres(7.99) })).toBeGreaterThan(0);
    expect(kilowatts({ length: metres(8) })).toBeNaN();
    expect(of(2.3)).toBeNaN();
  });

  it('is within a kilowatt of the American formula, whose twin it is', () => {
    for (const [length, transom] of [
      [4.5, 1.7],
      [5, 1.9],
      [6, 2.2],
    ] as const) {
      const hull = { length: metres(length), transomBeam: metres(transom) };
      const american = powerCapacity(hullOf(hull));
      if ('notComputed' in american) throw new Error(american.notComputed);
      expect(Math.abs(kilowatts(hull) - american.computed * 0.745699872)).toBeLessThan(1);
    }
  });
});

describe('the facts of a capacity plate', () => {
  it('state the buoyancy in Australia just below 6 m and not at 6 m', () => {
    expect(plateFacts('australian', metres(5.99))).toContain('buoyancy: basic or level');
    expect(plateFacts('australian', metres(6))).not.toContain('buoyancy: basic or level');
  });

  it('are none in America from 20 ft on', () => {
    expect(plateFacts('cfr-183', metres(6.09))).toHaveLength(3);
    expect(plateFacts('cfr-183', metres(6.1))).toEqual([]);
  });

  it('keep the outboard apart from the load in the manner of ISO', () => {
    expect(plateFacts('iso', metres(5)).join('; ')).toContain('without outboard');
    expect(rateBoat(boatOf({ engine: { power: watts(1), mass: kilograms(1) } }), [])).toEqual([]);
  });
});
