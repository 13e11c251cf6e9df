import { describe, expect, it } from 'vitest';
import { conditionOf, figuresData } from '../../src/figures/index.ts';
import { YARD } from '../read/samples.ts';
import { codes, figuresOf, present, weighted } from './box-boat.ts';

const allowing = (share: number, rise = 0): string =>
  YARD.replace('priceAge', `massGrowth: { share: ${share}%, rise: ${rise} mm }\npriceAge`);
const growthOf = (yard = YARD) => present(figuresOf({ yard }).float?.afloat).growth;

describe('growth over her life', () => {
  it('is no condition of its own, and nothing, where the yard allows for none', () => {
    const afloat = present(figuresOf({}).float?.afloat);
    expect(afloat.growth.allowed).toBe(0);
    expect(conditionOf(afloat, 'grown')).toBeUndefined();
  });

  it('adds a share of the completed boat, and raises the centre of that boat', () => {
    const afloat = present(figuresOf({ yard: allowing(10, 20) }).float?.afloat);
    const [full, grown] = (['fully loaded', 'grown'] as const).map((name) =>
      present(conditionOf(afloat, name)),
    );
    // 140 kg and 5 %.
    const boat = 140 * 1.05;
    expect(afloat.growth.allowed).toBeCloseTo(0.1 * boat, 9);
    const [before, after] = [present(full).load, present(grown).load];
    expect(after.mass - before.mass).toBeCloseTo(0.1 * boat, 9);
    const light = present(conditionOf(afloat, 'light')).load.centre.z;
    // The boat with her growth lies 20 mm above where she lay without.
    const moment = after.mass * after.centre.z - before.mass * before.centre.z;
    expect(moment).toBeCloseTo(1.1 * boat * (light + 0.02) - boat * light, 9);
  });

  it('sinks a box by 10 kg over her waterplane, on the mean of the ends', () => {
    const { draughtAft, draughtFore, mass } = present(growthOf().effect);
    expect(mass).toBe(10);
    expect((draughtAft + draughtFore) / 2).toBeCloseTo(10 / (1025 * 4 * 1.6), 5);
  });

  it('leaves of the rated load what the order does not use', () => {
    // 450 kg less 3 x 90 kg and 20 L at 740 kg/m3.
    const margin = growthOf().limits.find(({ name }) => name.includes('rated'))?.margin;
    expect(margin).toEqual({ outcome: 'met', growth: expect.closeTo(450 - 270 - 14.8, 9) });
  });

  it('GROWTH_OVER_LIMIT: more allowed for than there is room for, not just less', () => {
    // 120 kg more aboard leave 45.2 kg of the rated load: 16.6 % of 260 kg and 5 %.
    const order = weighted('{ x: 1.8 m, z: 0.2 m }', '120 kg');
    const share = (100 * (450 - 270 - 14.8 - 120)) / (260 * 1.05);
    const found = (more: number) => codes({ order, yard: allowing(share + more) });
    expect(found(0.1)).toEqual(['GROWTH_OVER_LIMIT']);
    expect(found(-0.1)).toEqual([]);
  });

  it('stands in the figures with the limit that it meets first', () => {
    const data = figuresData(figuresOf({ yard: allowing(10) }));
    expect(data['float.grown.mass']?.unit).toBe('kg');
    expect(data['float.growth.first']?.label).toContain('until ');
    expect(data['float.growth.allowed']?.value).toBeCloseTo(14.7, 3);
  });
});
