import { expect, it } from 'vitest';
import { derive, type DerivedBuild } from '../../src/derive/index.ts';
import { buildOf, figured } from '../demonstration/workspace.ts';

const builds = figured.map(({ build }) => [build.order.number, build] as const);
const keysIn = ({ items }: DerivedBuild): readonly string[] =>
  items.flatMap(({ instances }) => instances.map(({ key }) => key));

it.each(builds)('every item of %s is as many things as are ordered of it', (_, { items }) => {
  for (const { instances, ...item } of items) {
    expect(instances.length).toBe(item.quantity);
    const sum = (of: 'mass' | 'current') => instances.reduce((total, one) => total + one[of], 0);
    expect(sum('mass')).toBeCloseTo(item.mass, 9);
    expect(sum('current')).toBeCloseTo(item.current, 9);
    expect(instances.filter(({ at }) => at !== item.at)).toEqual([]);
    expect(instances.filter(({ size }) => size !== item.float?.size)).toEqual([]);
  }
});

it.each(builds)('every thing of %s has a key of its own', (_, build) => {
  const keys = keysIn(build);
  expect(new Set(keys).size).toBe(keys.length);
});

it('a thing that is there once has the key of its item, several are numbered', () => {
  const keys = keysIn(
    derive(
      buildOf('dunlin-430', 'options: [{ option: battery-agm-100, quantity: 2 }, dry-locker]'),
    ),
  );
  expect(keys).toContain('shell');
  expect(keys).toContain('option:dry-locker');
  expect(keys.filter((key) => key.includes('battery'))).toEqual([
    'option:battery-agm-100#1',
    'option:battery-agm-100#2',
  ]);
});

it('deriving again sees what was changed in between', () => {
  const build = derive(buildOf('dunlin-430', 'options: [dry-locker]'));
  const items = build.items.map((item) => ({ ...item, quantity: 2 }));
  expect(keysIn(derive({ ...build, items })).length).toBe(2 * items.length);
});
