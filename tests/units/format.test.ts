import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amperes,
  createFormatter,
  kilograms,
  metres,
  squareMetres,
  type CubicMetres,
  watts,
} from '../../src/units/index.ts';

const metric = createFormatter('en-AU', 'metric');
const us = createFormatter('en-US', 'us');
const cubicMetres = (value: number): CubicMetres => value as CubicMetres;

describe('a printed quantity', () => {
  it('is metric with its unit', () => {
    expect(metric.length(metres(4.2996))).toBe('4.30 m');
    expect(metric.dimension(metres(1.25))).toBe('1,250 mm');
    expect(metric.mass(kilograms(411.6))).toBe('412 kg');
    expect(metric.mass(kilograms(0.46))).toBe('0.5 kg');
    expect(metric.power(watts(22_000))).toBe('22 kW (30 hp)');
    expect(metric.power(watts(4500))).toBe('4.5 kW (6.0 hp)');
    expect(metric.area(squareMetres(2.4))).toBe('2.40 m²');
    expect(metric.volume(cubicMetres(0.025))).toBe('25 L');
    expect(metric.current(amperes(3.5))).toBe('3.5 A');
  });
  it('is US customary when the workspace asks for it', () => {
    expect(us.length(metres(4.2926))).toBe('14 ft 1 in');
    expect(us.dimension(metres(1.25))).toBe('49.2 in');
    expect(us.mass(kilograms(412))).toBe('908 lb');
    expect(us.power(watts(22_371))).toBe('30 hp (22 kW)');
    expect(us.area(squareMetres(2.4))).toBe('25.8 ft²');
    expect(us.volume(cubicMetres(0.025))).toBe('6.6 US gal');
  });
  it('carries twelve inches into a foot', () => {
    expect(us.length(metres(3.657))).toBe('12 ft 0 in');
    expect(us.length(metres(-0.3048))).toBe('-1 ft 0 in');
    expect(us.length(metres(-0.001))).toBe('0 ft 0 in');
  });
  it('rounds half away from zero, and never prints a zero below zero', () => {
    expect(metric.number(2.5, 0)).toBe('3');
    expect(metric.number(-2.5, 0)).toBe('-3');
    expect(metric.number(-0.004, 2)).toBe('0.00');
    expect(metric.number(-0, 1)).toBe('0.0');
  });
  it('says so when there is no value', () => {
    for (const value of [Number.NaN, Infinity, -Infinity]) {
      expect(metric.mass(kilograms(value))).toBe('not computed');
      expect(metric.power(watts(value))).toBe('not computed');
      expect(metric.number(value, 1)).toBe('not computed');
      expect(us.length(metres(value))).toBe('not computed');
    }
  });
  it('never holds a word of the machine', () => {
    fc.assert(
      fc.property(fc.double(), fc.constantFrom(metric, us), (value, format) => {
        const said = [
          format.length(metres(value)),
          format.dimension(metres(value)),
          format.mass(kilograms(value)),
          format.power(watts(value)),
          format.volume(cubicMetres(value)),
        ].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|∞|undefined|null/);
      }),
    );
  });
});
