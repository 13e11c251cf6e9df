import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { stripArea, transomArea } from '../../src/laminate/index.ts';
import { hullSchema } from '../../src/schema/index.ts';
import { metres, type Station } from '../../src/units/index.ts';

/** A half-cylinder of radius 1 lying along x, its keel down, in so many straight strips. */
const cylinder = (strips: number): readonly Station[] =>
  [2, 0, 1].map((x) => ({
    x: metres(x),
    points: Array.from({ length: strips + 1 }, (_, index) => {
      const angle = (index / strips) * (Math.PI / 2);
      return [metres(Math.sin(angle)), metres(1 - Math.cos(angle))] as const;
    }),
  }));

describe('the area of a shell', () => {
  it('comes ever nearer to half a cylinder, from below, whatever order the sections stand in', () => {
    const exact = 2 * Math.PI;
    expect(stripArea(cylinder(4), 0, 4)).toBeLessThan(exact);
    expect(stripArea(cylinder(400), 0, 400)).toBeCloseTo(exact, 4);
  });

  it('is the sum of its strips', () => {
    const hull = cylinder(6);
    expect(stripArea(hull, 0, 2) + stripArea(hull, 2, 6)).toBeCloseTo(stripArea(hull, 0, 6), 12);
  });

  it('closes the transom with half a circle', () => {
    expect(transomArea(cylinder(400))).toBeCloseTo(Math.PI / 2, 4);
    expect(transomArea([])).toBe(0);
  });

  it.each([
    ['teal-370', 7.7],
    ['dunlin-430', 10.3],
    ['curlew-560', 16.8],
  ])('finds on the %s the %f m2 that her builders laminate, within 2 %%', (name, laminated) => {
    const text = readFileSync(`catalogue/hulls/${name}.yaml`, 'utf8');
    const { lines } = hullSchema.parse(parse(text));
    const area = stripArea(lines, 0, 3) + transomArea(lines);
    expect(area / laminated).toBeGreaterThan(0.98);
    expect(area / laminated).toBeLessThan(1.02);
  });
});
