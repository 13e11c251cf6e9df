import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity, UNIT_KINDS, type UnitKind, unitsOf } from '../../src/units/index.ts';

const kinds = Object.keys(UNIT_KINDS) as UnitKind[];
const every = kinds.flatMap((kind) => unitsOf(kind).map((unit) => [kind, unit] as const));
const bare = (kind: UnitKind): string => unitsOf(kind)[0] ?? '';
const si = (kind: UnitKind, text: string): number | undefined =>
  parseQuantity(kind, text, bare(kind)).value;
const problem = (kind: UnitKind, text: string): string | undefined =>
  parseQuantity(kind, text, bare(kind)).problem;

/**
 * Values of one of each unit, typed here apart from the table that is tested. Those that NIST SP 811 (2008), appendix
 * B.8, prints as exact are from there; horsepower (550 ft.lbf/s, and 75 kgf.m/s for PS), knot, km/h and lb/ft3, which it
 * rounds to seven figures, are worked out from its exact ones.
 */
const PUBLISHED: Readonly<Record<string, number>> = {
  'length m': 1,
  'length mm': 0.001,
  'length cm': 0.01,
  'length km': 1000,
  'length ft': 0.3048,
  'length in': 0.0254,
  'length yd': 0.9144,
  'area m2': 1,
  'area m²': 1,
  'area cm2': 0.0001,
  'area mm2': 0.000001,
  'area ft2': 0.09290304,
  'area ft²': 0.09290304,
  'area yd2': 0.83612736,
  'area yd²': 0.83612736,
  'volume m3': 1,
  'volume m³': 1,
  'volume L': 0.001,
  'volume l': 0.001,
  'volume mL': 0.000001,
  'volume US gal': 0.003785411784,
  'volume imp gal': 0.00454609,
  'mass kg': 1,
  'mass g': 0.001,
  'mass t': 1000,
  'mass lb': 0.45359237,
  'mass oz': 0.028349523125,
  'force N': 1,
  'force kN': 1000,
  'force lbf': 4.4482216152605,
  'power W': 1,
  'power kW': 1000,
  'power hp': 745.6998715822702,
  'power PS': 735.49875,
  'current A': 1,
  'current mA': 0.001,
  'voltage V': 1,
  'angle rad': 1,
  'angle deg': 0.017453292519943295,
  'angle °': 0.017453292519943295,
  'speed m/s': 1,
  'speed kn': 0.5144444444444445,
  'speed km/h': 0.2777777777777778,
  'speed mph': 0.44704,
  'density kg/m3': 1,
  'density kg/m³': 1,
  'density lb/ft3': 16.01846337396014,
  'density lb/US gal': 119.82642731689663,
  'duration s': 1,
  'duration min': 60,
  'duration h': 3600,
  'duration d': 86400,
  'areal mass kg/m2': 1,
  'areal mass kg/m²': 1,
  'areal mass g/m2': 0.001,
  'areal mass g/m²': 0.001,
  'pressure Pa': 1,
  'pressure kPa': 1000,
  'pressure MPa': 1_000_000,
  'pressure mbar': 100,
  'pressure bar': 100_000,
  'viscosity Pa.s': 1,
  'viscosity mPa.s': 0.001,
  'charge Ah': 3600,
  'flow L/s': 0.001,
  'flow L/h': 2.777777777777778e-7,
  'flow L/min': 0.000016666666666666667,
};

describe('a quantity as typed', () => {
  it('is in the documented unit when it is a bare number', () => {
    expect(parseQuantity('length', '450', 'mm').value).toBeCloseTo(0.45, 12);
    expect(si('mass', ' 45 ')).toBe(45);
  });
  it('may be feet and inches', () => {
    expect(Math.abs((si('length', '14 ft 9 in') ?? 0) - 4.4958)).toBeLessThan(1e-12);
    expect(Math.abs((si('length', '14ft 9in') ?? 0) - 4.4958)).toBeLessThan(1e-12);
    expect(Math.abs((si('length', '-1 ft 6 in') ?? 0) + 0.4572)).toBeLessThan(1e-12);
  });
  it.each(every)('of %s in %s has the published factor', (kind, unit) => {
    const published = PUBLISHED[`${kind} ${unit}`] ?? Number.NaN;
    expect(Math.abs((si(kind, `1 ${unit}`) ?? 0) / published - 1)).toBeLessThan(1e-14);
  });
  it('has a published factor for every unit of the table and no other', () => {
    expect(every.map(([kind, unit]) => `${kind} ${unit}`).toSorted()).toEqual(
      Object.keys(PUBLISHED).toSorted(),
    );
  });
  it('comes back from any unit to the number that was typed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...every),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter((value) => Math.abs(value) > 1e-6),
        ([kind, unit], value) => {
          const factors: Readonly<Record<string, number>> = UNIT_KINDS[kind];
          const back = (si(kind, `${value} ${unit}`) ?? Number.NaN) / (factors[unit] ?? 0);
          expect(Math.abs(back / value - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });
  it('may have an exponent, a sign, and no space before the unit', () => {
    expect(si('mass', '1.5e3 g')).toBeCloseTo(1.5, 12);
    expect(si('mass', '+2kg')).toBe(2);
    expect(si('mass', '.5 t')).toBe(500);
    expect(si('volume', '6.6 US gal')).toBeCloseTo(0.0249837177744, 12);
  });
});

describe('what is no quantity', () => {
  it.each([
    ['', 'not-a-quantity'],
    ['heavy', 'not-a-quantity'],
    ['kg', 'not-a-quantity'],
    ['1.2.3 kg', 'not-a-quantity'],
    ['10 - 20 kg', 'not-a-quantity'],
    ['1 kg -2 g', 'not-a-quantity'],
    ['1 kg 2', 'not-a-quantity'],
    ['1 2 kg', 'not-a-quantity'],
    ['1e999 kg', 'not-a-quantity'],
    ['NaN kg', 'not-a-quantity'],
    ['Infinity', 'not-a-quantity'],
    ['45 stone', 'unknown-unit'],
    ['45 KG', 'unknown-unit'],
    ['45 constructor', 'unknown-unit'],
    ['45 m', 'wrong-kind'],
    ['12,5 kg', 'decimal-comma'],
    ['1,250 kg', 'decimal-comma'],
  ])('is told apart: %j is %s', (text, expected) => {
    expect(problem('mass', text)).toBe(expected);
  });
  it('says what kind the unit that was typed is of, and the units that would do', () => {
    const parsed = parseQuantity('mass', '3 ft', 'kg');
    expect(parsed).toMatchObject({ problem: 'wrong-kind', unit: 'ft', kind: 'length' });
    expect(parsed.problem && parsed.expected).toContain('lb');
  });
  it('is answered at once, however long the text', () => {
    const started = performance.now();
    expect(problem('mass', `1 a${' '.repeat(400_000)}b`)).toBe('not-a-quantity');
    expect(problem('mass', '1 kg '.repeat(100_000))).toBe('not-a-quantity');
    expect(performance.now() - started).toBeLessThan(200);
  });
  it('never throws and never gives a number that is not finite', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.string(), (kind, text) => {
        const value = si(kind, text);
        expect(value === undefined || Number.isFinite(value)).toBe(true);
      }),
    );
  });
});
