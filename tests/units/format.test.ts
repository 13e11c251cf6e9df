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

const NO_BREAK = '\u00A0';

/** With the spaces that no line breaks at. */
const unbroken = (text: string): string => text.replaceAll(' ', NO_BREAK);

describe('a printed quantity', () => {
  it('is metric with its unit', () => {
    expect(metric.length(metres(4.2996))).toBe(unbroken('4.30 m'));
    expect(metric.dimension(metres(1.25))).toBe(unbroken('1,250 mm'));
    expect(metric.mass(kilograms(411.6))).toBe(unbroken('412 kg'));
    expect(metric.mass(kilograms(0.46))).toBe(unbroken('0.5 kg'));
    expect(metric.power(watts(22_000))).toBe(unbroken('22 kW (30 hp)'));
    expect(metric.power(watts(4500))).toBe(unbroken('4.5 kW (6.0 hp)'));
    expect(metric.area(squareMetres(2.4))).toBe(unbroken('2.40 m²'));
    expect(metric.volume(cubicMetres(0.025))).toBe(unbroken('25 L'));
    expect(metric.current(amperes(3.5))).toBe(unbroken('3.5 A'));
    expect(metric.percent(0.1255, 1)).toBe(unbroken('12.6 %'));
    expect(metric.degrees(-Math.PI / 100)).toBe(unbroken('1.8 degrees'));
  });
  it('is US customary when the workspace asks for it', () => {
    expect(us.length(metres(4.2926))).toBe(unbroken('14 ft 1 in'));
    expect(us.dimension(metres(1.25))).toBe(unbroken('49.2 in'));
    expect(us.mass(kilograms(412))).toBe(unbroken('908 lb'));
    expect(us.power(watts(22_371))).toBe(unbroken('30 hp'));
    expect(us.area(squareMetres(2.4))).toBe(unbroken('25.8 ft²'));
    expect(us.volume(cubicMetres(0.025))).toBe(`6.6${NO_BREAK}US gal`);
  });
  it('carries twelve inches into a foot', () => {
    expect(us.length(metres(3.657))).toBe(unbroken('12 ft 0 in'));
    expect(us.length(metres(-0.3048))).toBe(unbroken('−1 ft 0 in'));
    expect(us.length(metres(-0.001))).toBe(unbroken('0 ft 0 in'));
  });
  it('rounds half away from zero, and never prints a zero below zero', () => {
    expect(metric.number(2.5, 0)).toBe('3');
    expect(metric.number(-2.5, 0)).toBe('−3');
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
