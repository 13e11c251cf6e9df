import { expect, it } from 'vitest';
import { derive, instancesOf } from '../../src/derive/index.ts';
import { figured, buildOf } from '../demonstration/workspace.ts';

const builds = figured.map(({ build }) => [build.order.number, build] as const);

it.each(builds)('every item of %s is as many things as are ordered of it', (_, build) => {
  for (const item of build.items) {
    const all = instancesOf(build, item);
    expect(all.length).toBe(item.quantity);
    const sum = (of: 'mass' | 'current') => all.reduce((total, one) => total + one[of], 0);
    expect(sum('mass')).toBeCloseTo(item.mass, 9);
    expect(sum('current')).toBeCloseTo(item.current, 9);
    expect(all.filter(({ at }) => at !== item.at)).toEqual([]);
    expect(all.filter(({ size }) => size !== item.float?.size)).toEqual([]);
  }
});

it.each(builds)('every thing of %s has a key of its own', (_, build) => {
  const keys = build.instances.map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
});

it('a thing that is there once has the key of its item, several are numbered', () => {
  const build = derive(
    buildOf('dunlin-430', 'options: [{ option: battery-agm-100, quantity: 2 }, dry-locker]'),
  );
  const keys = build.instances.map(({ key }) => key);
  expect(keys).toContain('shell');
  expect(keys).toContain('option:dry-locker');
  expect(keys.filter((key) => key.includes('battery'))).toEqual([
    'option:battery-agm-100#1',
    'option:battery-agm-100#2',
  ]);
});

it('deriving again sees what was changed in between', () => {
  const build = derive(buildOf('dunlin-430', 'options: [dry-locker]'));
  const items = build.items.filter(({ key }) => key !== 'option:dry-locker');
  expect(derive({ ...build, items }).instances.map(({ item }) => item)).toEqual(
    items.map(({ key }) => key),
  );
});
