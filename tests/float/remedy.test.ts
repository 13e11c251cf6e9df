import { expect, it } from 'vitest';
import { findEquilibrium } from '../../src/float/index.ts';
import { floatRemedy } from '../../src/float/remedy.ts';
import { box, loadAt } from './boats.ts';

/** 3,075 kg float at 0.3 m with 0.5 m of freeboard. */
const BARGE = box(5, 2, 0.8);

const remedyOf = (mass: number, x: number, y: number, z: number) =>
  floatRemedy(BARGE, loadAt(mass, x, y, z), []);
const moveOf = (...load: Parameters<typeof remedyOf>) => {
  const remedy = remedyOf(...load);
  return remedy?.what === 'move' ? ([remedy.way, remedy.moment] as const) : undefined;
};

/**
 * With the deck at the transom just awash 1.5 m2 of the side are under water, a triangle 0.8 m high and 3.75 m long: its
 * middle is 1.25 m forward and 0.8/3 m up, the weight at 0.3 m stands (0.3 - 0.8/3) 0.8/3.75 forward of it.
 */
const LONG = 1.25 + (0.3 - 0.8 / 3) * (0.8 / 3.75);
/** The same across: 0.6 m2 of the section, a triangle 0.8 m high and 1.5 m wide. */
const BROAD = 0.5 - (0.3 - 0.8 / 3) * (0.8 / 1.5);

it.each([
  [0.4, 'forward'],
  [4.6, 'aft'],
])(
  'one that goes down by its end floats with its weight over that triangle: at %d m, %s',
  (x, way) => {
    const [told, moment] = moveOf(3075, x, 0, 0.3) ?? [];
    expect(told).toBe(way);
    // One bisection of a thousandth of the way to the middle.
    expect(moment).toBeGreaterThan(3075 * (LONG - 0.4));
    expect(moment).toBeLessThan(3075 * (LONG - 0.4 + 0.002));
  },
);

it.each([
  [0.8, 'to port'],
  [-0.8, 'to starboard'],
])('one that lies on its side likewise, across: at %d m, %s', (y, way) => {
  const [told, moment] = moveOf(3075, 2.5, y, 0.3) ?? [];
  expect(told).toBe(way);
  expect(moment).toBeGreaterThan(3075 * (0.8 - BROAD));
  expect(moment).toBeLessThan(3075 * (0.8 - BROAD + 0.001));
});

it('one that is top-heavy floats at its loll once its weight is low enough', () => {
  // At a heel of tangent t past the bilge the wet triangle is b = sqrt(1.2/t) wide: its metacentre is at most 1.3144 m up.
  const highest = Math.max(
    ...Array.from({ length: 200 }, (_, step) => {
      const t = 0.3 + step / 1000;
      const b = Math.sqrt(1.2 / t);
      return (1 - b / 3) / t + (b * t) / 3;
    }),
  );
  const [told, moment] = moveOf(3075, 2.5, 0, 2.5) ?? [];
  expect(told).toBe('lower');
  expect((moment ?? 0) / 3075).toBeGreaterThan(2.5 - highest);
  expect((moment ?? 0) / 3075).toBeLessThan(2.5 - highest + 0.003);
});

it('one that is too heavy floats without the mass beyond what the box can carry', () => {
  const remedy = remedyOf(9000, 2.5, 0, 0.1);
  const out = remedy?.what === 'take out' ? remedy.mass : 0;
  expect(out).toBeGreaterThan(9000 - 8 * 1025);
  expect(out).toBeLessThan(9000 - 8 * 1025 + 10);
});

it('nothing helps one of which a twentieth is still too heavy', () => {
  expect(remedyOf(200_000, 2.5, 0, 0.1)).toBeUndefined();
});

it('the move is the least: a little less of it, and the boat goes down', () => {
  const moved = (share: number) => {
    const x = 0.4 + (share * (moveOf(3075, 0.4, 0, 0.3)?.[1] ?? 0)) / 3075;
    return findEquilibrium(BARGE, loadAt(3075, x, 0, 0.3), []).outcome;
  };
  expect(moved(1)).toBe('floats');
  expect(moved(0.98)).not.toBe('floats');
});
