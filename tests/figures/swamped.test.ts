import { describe, expect, it } from 'vitest';
import { computeFigures } from '../../src/figures/index.ts';
import { figuresOf as demonstration } from '../demonstration/workspace.ts';
import { ORDER } from '../read/samples.ts';
import { codes, figuresOf, present } from './box-boat.ts';

describe('what is found of foam', () => {
  const foam = (litres: number): readonly [string, string] => [
    'shaft: long\nclass: hull',
    `foam: { volume: ${litres.toFixed(2)} L }\nshaft: long\nclass: hull`,
  ];
  const needed = (): number => {
    const { rule } = present(figuresOf({ hull: [foam(1)] }).float?.afloat?.swamped);
    return 'notComputed' in rule ? Number.NaN : rule.foam.total * 1000;
  };
  it('FOAM_SHORT: less than the method asks for, not just enough', () => {
    expect(codes({ hull: [foam(needed() - 0.1)] })).toEqual(['FOAM_SHORT']);
    expect(codes({ hull: [foam(needed() + 0.1)] })).toEqual([]);
  });
  it('lifts with the fuel, and carries the loose gear', () => {
    const swamped = (order = ORDER) =>
      present(figuresOf({ order, hull: [foam(1)] }).float?.afloat?.swamped);
    const plain = swamped();
    expect(plain.uncounted.join()).toContain('core');
    const weights = Object.fromEntries(plain.counted.map(({ name, weight }) => [name, weight]));
    // 20 L of fuel at 740 kg/m3, and 30 kg of gear at 1333 kg/m3.
    expect(weights['fuel, in its closed tank']).toBeCloseTo(14.8 * (1 - 1025 / 740), 9);
    expect(weights['loose gear']).toBeCloseTo(30 * (1 - 1025 / 1333), 9);
    const dry = swamped(ORDER.replace('fuel: 20 L', 'fuel: 0 L'));
    expect(dry.counted.map(({ name }) => name)).toEqual(['loose gear']);
    expect(plain.balance.reserve - dry.balance.reserve).toBeCloseTo(14.8 * (1025 / 740 - 1), 9);
    expect(dry.rule).toEqual(plain.rule);
  });
  it('lifts with the core of the shell that the lay-up has, which the rule leaves out', () => {
    const { build } = demonstration('dunlin-430');
    const { laminate: _, ...hull } = build.hull;
    const of = (one: typeof build) => present(computeFigures(one, []).float?.afloat?.swamped);
    const [cored, plain] = [of(build), of({ ...build, hull })];
    expect(cored.uncounted).toEqual([]);
    expect(plain.uncounted.join()).toContain('core');
    const lift = cored.counted
      .filter(({ name }) => name.includes('core'))
      .reduce((sum, { weight }) => sum - weight, 0);
    // By the parts list, as bought: 7.3 m2 of 12 mm at 80 kg/m3 and 0.62 m2 of 30 mm at 200 kg/m3.
    const bought = 7.3 * 0.012 * (1025 - 80) + 0.62 * 0.03 * (1025 - 200);
    expect(Math.abs(lift / bought - 1)).toBeLessThan(0.1);
    // What is core is no longer laminate of 1500 kg/m3.
    const mass = 7.3 * 0.012 * 80 + 0.62 * 0.03 * 200;
    const gained = cored.balance.reserve - plain.balance.reserve - lift;
    expect(Math.abs(gained - mass * (1 - 1025 / 1500))).toBeLessThan(0.4);
    expect(cored.rule).toEqual(plain.rule);
  });
  it('FLOTATION_RULE_NOT_APPLICABLE: 20 ft and longer, not shorter', () => {
    const long = (length: number) => ({
      hull: [
        ['length: 4 m', `length: ${length} m`],
        [/x: 4,/, `x: ${length},`],
        foam(900),
      ] as const,
    });
    expect(codes(long(6.1))).toEqual(['FLOTATION_RULE_NOT_APPLICABLE']);
    expect(codes(long(6.09))).toEqual([]);
  });
});
