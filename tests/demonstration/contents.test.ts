import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { hasErrors } from '../../src/findings/index.ts';
import { emitJsonSchemas, STATUSES } from '../../src/schema/index.ts';
import { decimalToNumber } from '../../src/units/index.ts';
import { catalogue, footprintOf, hoursOf, loaded, orders, ROOT } from './workspace.ts';

const { findings, sources } = loaded;

const { hulls, options, outboards, trailers, parts } = catalogue;
const valuesOf = <T>(entries: ReadonlyMap<string, { readonly value: T }>): readonly T[] =>
  [...entries.values()].map(({ value }) => value);

describe('the demonstration', () => {
  it('is sound: no file or entry of it has a finding, and no order an error', () => {
    expect(findings).toEqual([]);
    expect(orders.filter((one) => hasErrors(one.findings) || !one.figures)).toEqual([]);
  });

  it('has the hulls, options, trailers and parts that it promises', () => {
    expect([...hulls.keys()].toSorted()).toEqual(['curlew-560', 'dunlin-430', 'teal-370']);
    expect(options.size).toBeGreaterThanOrEqual(45);
    expect(trailers.size).toBe(5);
    expect(parts.size).toBeGreaterThanOrEqual(180);
    const suppliers = new Set([...parts.values()].map(({ supplier }) => supplier));
    expect([...suppliers].toSorted()).toEqual(
      Object.keys(catalogue.yard.value.suppliers).toSorted(),
    );
    expect(suppliers.size).toBe(4);
  });

  it('has fourteen outboards from 4.5 to 85 kW', () => {
    const powers = valuesOf(outboards).map(({ power }) => power / 1000);
    expect(powers).toEqual([4.5, 6, 7.3, 11, 14.7, 18, 22, 29.4, 37, 44, 51.5, 59, 66, 85]);
  });

  it.each(valuesOf(outboards).map((outboard) => [outboard.id, outboard] as const))(
    'has the mass of each shaft as its supplier lists it, the longer the heavier: %s',
    (_, { shafts }) => {
      const inOrder = (['short', 'long', 'extra-long'] as const).flatMap(
        (shaft) => shafts[shaft] ?? [],
      );
      expect(inOrder.length).toBeGreaterThan(0);
      const masses = inOrder.map(({ mass }) => mass);
      expect(masses).toEqual([...new Set(masses)].toSorted((a, b) => a - b));
      expect(masses).toEqual(inOrder.map(({ part }) => parts.get(part)?.value.mass));
    },
  );

  it('uses every margin class, and names the wastage of every class of material', () => {
    const { margins, wastage } = catalogue.yard.value;
    const used = [
      ...valuesOf(hulls),
      ...valuesOf(options),
      ...valuesOf(outboards),
      ...valuesOf(trailers),
    ].map((entry) => entry.class);
    expect([...new Set(used)].toSorted()).toEqual(Object.keys(margins).toSorted());
    const materials = new Set(valuesOf(parts).map((part) => part.class));
    expect([...materials].toSorted()).toEqual(Object.keys(wastage).toSorted());
  });

  it('names in the first line of every YAML file a schema that stands there', () => {
    const folders = ['catalogue', 'catalogue/hulls', 'catalogue/options', 'orders'];
    const files = folders.flatMap((folder) =>
      readdirSync(path.join(ROOT, folder))
        .filter((name) => name.endsWith('.yaml'))
        .map((name) => `${folder}/${name}`),
    );
    expect(files.length).toBeGreaterThanOrEqual(26);
    const astray = files.filter((file) => {
      const schema = /^# yaml-language-server: \$schema=(\S+)\n/.exec(sources.get(file) ?? '')?.[1];
      return !schema || !existsSync(path.join(ROOT, path.dirname(file), schema));
    });
    expect(astray).toEqual([]);
  });

  it.each([...emitJsonSchemas(catalogue)])(
    'has schemas that know its names; if not, run npm run schema: %s',
    (name, text) => {
      expect(readFileSync(path.join(ROOT, 'catalogue/schema', name), 'utf8')).toBe(text);
    },
  );
});

describe('the orders of the demonstration', () => {
  const all = orders.map(({ order }) => order.value);

  it('are eight, each in a file of its number, over three hulls and all states', () => {
    expect(orders.map(({ order }) => order.file)).toEqual(
      all.map((one) => `orders/${one.number}.yaml`),
    );
    expect(all).toHaveLength(8);
    expect(new Set(all.map(({ status }) => status))).toEqual(new Set(STATUSES));
    const count = (hull: string): number => all.filter((one) => one.hull === hull).length;
    expect([count('teal-370'), count('dunlin-430'), count('curlew-560')]).toEqual([2, 2, 4]);
  });

  it('use every part of an order file', () => {
    const lines = all.flatMap((one) => one.options);
    expect(lines.some((line) => 'at' in line && line.at)).toBe(true);
    expect(lines.some(({ quantity }) => quantity > 1)).toBe(true);
    expect(all.filter(({ extras }) => extras.length > 0).length).toBeGreaterThanOrEqual(2);
    expect(all.filter(({ discount }) => discount && 'amount' in discount)).toHaveLength(1);
    expect(all.filter(({ discount }) => discount && 'share' in discount)).toHaveLength(1);
    expect(all.some(({ leaveOutCharges }) => leaveOutCharges.length > 0)).toBe(true);
    expect(all.some(({ outboard }) => !outboard)).toBe(true);
    expect(all.some(({ trailer }) => !trailer)).toBe(true);
  });

  it('take 17 to 39 hours a square metre of length times beam, wired and with a trailer: common practice, no source', () => {
    const whole = orders.flatMap(({ figures }) =>
      figures?.build.trailer && !('notComputed' in figures.electrics) ? [figures] : [],
    );
    expect(whole.length).toBeGreaterThan(3);
    for (const figures of whole) {
      const each = hoursOf(figures) / footprintOf(figures.build.hull);
      expect(each).toBeGreaterThan(17);
      expect(each).toBeLessThan(39);
    }
  });

  it('show a few of the findings that stop nothing', () => {
    const codes = new Set<string>(orders.flatMap((one) => one.findings.map(({ code }) => code)));
    for (const code of ['ITEM_NOT_PLACED', 'PART_PRICE_OLD', 'MASS_OUT_OF_GATE'])
      expect(codes).toContain(code);
  });

  it.each(
    orders.flatMap(({ figures }) =>
      figures?.build.order.record ? [[figures.build.order.number, figures] as const] : [],
    ),
  )('have records near what was computed, with one stage well over: %s', (_, figures) => {
    const { masses = [], hours = [], batches = [] } = figures.build.order.record ?? {};
    expect(batches.length).toBeGreaterThan(0);
    const computed = {
      release: figures.mass.bareHull.mass,
      wiring: figures.mass.completed.mass,
      engine: figures.mass.ready.mass,
    };
    const near = masses.flatMap(({ stage, mass }) =>
      stage in computed ? [mass / computed[stage as keyof typeof computed]] : [],
    );
    expect(near.length).toBeGreaterThan(0);
    for (const share of near) expect(Math.abs(share - 1)).toBeLessThan(0.07);
    const over = hours.filter(({ stage, hours: worked }) => {
      const planned = figures.stageHours.find((one) => one.stage === stage)?.hours;
      return planned && decimalToNumber(worked) > 1.1 * decimalToNumber(planned);
    });
    expect(over).toHaveLength(1);
  });
});
