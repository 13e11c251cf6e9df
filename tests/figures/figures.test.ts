import { describe, expect, it } from 'vitest';
import { computeFigures, figuresData } from '../../src/figures/index.ts';
import { moneyToText } from '../../src/money/index.ts';
import { kilograms } from '../../src/units/index.ts';
import { HULL, ORDER, YARD } from '../read/samples.ts';
import {
  catalogue,
  figuresOf as demonstration,
  footprintOf,
  hoursOf,
} from '../demonstration/workspace.ts';
import { resolveSample } from '../resolve/invented.ts';

function figuresOf(order: string, changes: Record<string, string> = {}) {
  const { build, findings } = resolveSample({ 'orders/t-1.yaml': order, ...changes });
  if (!build) throw new Error(findings.map(({ code }) => code).join(', '));
  return computeFigures(build, []);
}
const codes = (order: string, changes: Record<string, string> = {}) =>
  figuresOf(order, changes).findings.map(({ code }) => code);

describe('the rooms are called in order', () => {
  it('price, mass and trailer come of one list', () => {
    const figures = figuresOf(
      `${ORDER}outboard: { model: outboard-20, shaft: long }\ntrailer: trailer-750\n`,
    );
    // Hull 80 + 60 kg, 5 % contingency of what is fitted, outboard 60 kg, fuel 20 L at 740 kg/m3.
    expect(figures.mass.ready.mass).toBeCloseTo(140 * 1.05 + 60 + 20 * 0.74, 9);
    expect(figures.trailerLoad?.total).toBeCloseTo(figures.mass.onTrailer, 9);
    expect(figures.mass.onTrailer).toBeCloseTo(figures.mass.ready.mass + 3 * 10 + 180, 9);
    expect(figures.stageHours.map(({ stage }) => stage)).toEqual(['laminate', 'engine', 'trailer']);
  });
  it('the printed lines, tax and charges make the drive-away price to the cent', () => {
    const { price } = figuresOf(`${ORDER}discount: { share: 3.3%, reason: Season. }\n`);
    const cents = (text: string) => BigInt(text.replace('.', ''));
    const lines = price.lines.reduce(
      (sum, line) => sum + cents(moneyToText(line.priceWithTax)),
      0n,
    );
    const off = cents(moneyToText(price.discountWithTax));
    expect(lines - off + cents(moneyToText(price.charges))).toBe(
      cents(moneyToText(price.driveAway)),
    );
  });
  it('gives every figure a value, a unit and a method', () => {
    for (const [name, datum] of Object.entries(figuresData(figuresOf(ORDER)))) {
      expect(datum.method, name).not.toBe('');
      expect(datum.unit, name).not.toBe('');
      expect(String(datum.value), name).not.toMatch(/NaN|Infinity|undefined|null/);
    }
  });
});

it.each([...catalogue.hulls.keys()])(
  'a bare boat takes 9 to 20 hours a square metre of length times beam (common practice, no source): %s',
  (hull) => {
    const figures = demonstration(hull);
    const each = hoursOf(figures) / footprintOf(figures.build.hull);
    expect(each).toBeGreaterThan(9);
    expect(each).toBeLessThan(20);
  },
);

describe('what the figures find', () => {
  const rated = (field: string, value: string) => ({
    'catalogue/hulls/tern-400.yaml': HULL.replace(
      new RegExp(` ${field}: [^\\n]+`),
      ` ${field}: ${value}`,
    ),
  });
  // Three people with gear are 270 kg, 20 L of fuel 14.8 kg.
  it('load at the rating passes, just over does not', () => {
    expect(codes(ORDER, rated('load', '284.8 kg'))).toEqual([]);
    expect(codes(ORDER, rated('load', '284.7 kg'))).toEqual(['LOAD_OVER_RATING']);
  });
  it('a trailer at its rating passes, just over does not', () => {
    const order = `${ORDER}trailer: trailer-750\n`;
    // 140 kg x 1.05 + 14.8 kg of fuel + 30 kg of gear + 180 kg of trailer = 371.8 kg.
    const trailer = (rating: number) => {
      const { build, findings } = resolveSample({ 'orders/t-1.yaml': order });
      if (!build?.trailer) throw new Error(findings.map(({ code }) => code).join(', '));
      return computeFigures(
        { ...build, trailer: { ...build.trailer, rating: kilograms(rating) } },
        [],
      ).findings.map(({ code }) => code);
    };
    expect(trailer(371.8001)).toEqual([]);
    expect(trailer(371.79)).toEqual(['TRAILER_OVERLOADED']);
  });
  it('a margin under the floor is told', () => {
    const floor = (share: string) => ({
      'catalogue/yard.yaml': YARD.replace('marginFloor: 20%', `marginFloor: ${share}`),
    });
    expect(codes(ORDER, floor('27.9%'))).toEqual([]);
    expect(codes(ORDER, floor('28.1%'))).toEqual(['MARGIN_BELOW_FLOOR']);
  });
  it('a weighed shell within the contingency passes, further off does not', () => {
    const weighed = (mass: string) =>
      `${ORDER}record:\n  masses: [{ stage: release, mass: ${mass}, date: 2026-03-20, by: A. }]\n`;
    expect(codes(weighed('84 kg'))).toEqual([]);
    expect(codes(weighed('84.1 kg'))).toEqual(['MASS_OUT_OF_GATE']);
  });
});
